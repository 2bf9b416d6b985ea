import {spellFractions} from './compose-fractions.ts';

/** Letters that fit on one line of the head of the narrower paper: beside a draft mark in the middle, and without one. */
const longest = {besideMark: 48, alone: 80};

/** Letters of name and number that fit, with the leaf number beside them, on the two lines that the foot has room for. */
const longestInFoot = {name: 60, number: 40};

/** A title short enough for one line of the running head: cut between words, the cut shown by an ellipsis. */
export function shortenForHead(title: string, beside: keyof typeof longest): string {
  return shorten(spellFractions(title), longest[beside]);
}

/** The candidate as the foot of every leaf names them; the title page has what does not fit there. */
export function candidateForFoot(name: string, number: string | undefined): string {
  return [shorten(name, longestInFoot.name), shorten(number ?? '', longestInFoot.number)]
    .filter(Boolean)
    .join(' · ');
}

/** A word longer than any may break after so many letters: the browser breaks it nowhere else in a page's margin. */
const longestWord = /\S{25}(?=\S)/g;

function shorten(text: string, most: number): string {
  const oneLine = text.replace(/\s+/g, ' ').trim();
  return (oneLine.length <= most ? oneLine : cutBetweenWords(oneLine, most)).replace(longestWord, '$&\u200b');
}

function cutBetweenWords(oneLine: string, most: number): string {
  const cut = oneLine.slice(0, most);
  const lastSpace = cut.lastIndexOf(' ');
  return `${(lastSpace > most / 2 ? cut.slice(0, lastSpace) : cut).replace(/[\s,;:–-]+$/, '')}…`;
}
