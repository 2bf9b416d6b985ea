const tag = /<(?:[^<>"']|"[^"]*"|'[^']*')*>/g;

/** Elements whose text stays as it is: those that can hold no element, and code. */
const leftAlone = ['title', 'style', 'textarea', 'code', 'pre'];

/**
 * Changes the text of a document between its tags. `change` is told which of the elements `within` are open around it;
 * it is not asked about titles, styles and code.
 */
export function mapText<Name extends string>(
  html: string,
  within: readonly Name[],
  change: (text: string, open: ReadonlySet<Name>) => string,
): string {
  const open: string[] = [];
  const inText = (text: string) =>
    text === '' || open.some((name) => leftAlone.includes(name))
      ? text
      : change(text, new Set(within.filter((name) => open.includes(name))));
  let changed = '';
  let end = 0;
  for (const match of html.matchAll(tag)) {
    changed += inText(html.slice(end, match.index)) + match[0];
    end = match.index + match[0].length;
    const name = /^<\/?([a-z]+\d?)/.exec(match[0])?.[1] ?? '';
    if (!leftAlone.includes(name) && !within.some((each) => each === name)) continue;
    if (match[0].startsWith('</')) open.splice(open.lastIndexOf(name), 1);
    else if (!match[0].endsWith('/>')) open.push(name);
  }
  return changed + inText(html.slice(end));
}
