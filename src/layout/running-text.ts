/** Letters that fit on one line of the head of the narrower paper: beside a draft mark in the middle, and without one. */
const longest = {besideMark: 48, alone: 80};

/** A title short enough for one line of the running head: cut between words, the cut shown by an ellipsis. */
export function shortenForHead(title: string, beside: keyof typeof longest): string {
  const oneLine = title.replace(/\s+/g, ' ').trim();
  const most = longest[beside];
  if (oneLine.length <= most) return oneLine;
  const cut = oneLine.slice(0, most);
  const lastSpace = cut.lastIndexOf(' ');
  return `${(lastSpace > most / 2 ? cut.slice(0, lastSpace) : cut).replace(/[\s,;:–-]+$/, '')}…`;
}
