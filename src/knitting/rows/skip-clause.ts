import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';

/** With these behind `and` something new is worked: `cast off 2 and knit to end`. */
const works = ['k', 'p', 'work', 'sl', 'turn', 'rib', 'pattern'];

/** Steps over what is left before the next `,` `;` `.` dash, bracket or mark, or `and` with which the work goes on. */
export function skipClause(cursor: Cursor): void {
  for (let token = cursor.peek(); token; token = cursor.peek()) {
    if (token.kind === 'mark' || /^[,;.:—]$/.test(token.text)) return;
    if (isOpening(token.text) || isClosing(token.text)) return;
    if (token.text === '&' && works.includes(cursor.peek(1)?.text ?? '')) return;
    cursor.at += 1;
  }
}
