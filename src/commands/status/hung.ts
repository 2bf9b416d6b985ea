import {wrapWords} from '../../support/wrap-words.ts';

/** Below so many letters behind it, `before` gets a line of its own. */
const leastRoom = 20;

/** `before`, and `text` behind it, wrapped so that it stays to the right of it. */
export function hung(before: string, text: string, columns: number): readonly string[] {
  const width = [...before].length;
  const isNarrow = columns - width < leastRoom;
  const indent = ' '.repeat(isNarrow ? 4 : width);
  const [first = '', ...others] = wrapWords(text, columns - indent.length);
  const rest = others.map((line) => `${indent}${line}`);
  return isNarrow ? [before.trimEnd(), `${indent}${first}`, ...rest] : [`${before}${first}`, ...rest];
}
