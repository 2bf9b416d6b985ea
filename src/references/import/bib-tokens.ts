/** A pattern for the beginning of an entry on a line of its own: no value runs past it. */
export const entryStart = String.raw`\n[ \t]*@[ \t]*[A-Za-z]+[ \t]*[{(]`;

const space = /\s*/y;
const remark = /%[^\n]*/y;

/** The offset behind space and `%` remarks at `start`. */
export function spaceAt(text: string, start: number): number {
  let at = start;
  for (;;) {
    space.lastIndex = at;
    at += space.exec(text)?.[0].length ?? 0;
    if (text.charAt(at) !== '%') return at;
    remark.lastIndex = at;
    at += remark.exec(text)?.[0].length ?? 1;
  }
}

/** Looks up what a `@string` stands for; undefined when there is none of that name. */
export type BibMacros = (name: string) => string | undefined;
