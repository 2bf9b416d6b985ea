import type {Cursor} from './cursor.ts';
import type {StatedCount} from './row-syntax.ts';

const openings = ['break', 'cut', 'fasten', 'secure', 'weave', 'sew'];

/** Words by which a sentence that begins so is about the end of the yarn, and not about stitches. */
const ends = ['through', 'off', 'tail', 'end', 'ends', 'tight', 'tightly', 'securely'];

/**
 * Steps over `Break yarn and draw through remaining 8 sts.`, `Cut yarn, thread through rem 8 sts and fasten off.` The
 * count that it names is one that the row states. False, and nothing read, when something else begins here.
 */
export function readClosing(cursor: Cursor, stated: StatedCount[]): boolean {
  if (!openings.includes(cursor.peek()?.text ?? '')) return false;
  const from = cursor.at;
  let isAboutEnd = false;
  let count: StatedCount | null = null;
  for (let token = cursor.peek(); token && token.text !== '.'; token = cursor.peek()) {
    if (ends.includes(token.text)) isAboutEnd = true;
    if (token.text === 'remain' && cursor.peek(1)?.kind === 'number') {
      cursor.at += 1;
      const number = cursor.peek();
      if (number) {
        const {values} = cursor.sizedAt(cursor.at);
        const span = {start: number.start, end: number.end};
        count = {kind: 'total', count: {values, span}, span};
      }
    }
    cursor.at += 1;
  }
  if (!isAboutEnd) {
    cursor.at = from;
    return false;
  }
  if (count) stated.push(count);
  return true;
}
