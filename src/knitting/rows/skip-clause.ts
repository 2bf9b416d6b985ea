import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';

/** Steps over what is left before the next `,` `;` `.` dash, bracket or mark. */
export function skipClause(cursor: Cursor): void {
  for (let token = cursor.peek(); token; token = cursor.peek()) {
    if (token.kind === 'mark' || /^[,;.:—]$/.test(token.text)) return;
    if (isOpening(token.text) || isClosing(token.text)) return;
    cursor.at += 1;
  }
}
