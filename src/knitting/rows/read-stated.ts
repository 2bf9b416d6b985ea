import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import type {StatedCount} from './row-syntax.ts';

const remaining = ['remain', 'leave', 'on', 'needle', 'total', 'in', 'all', 'now', 'you', 'have', 'should'];

/**
 * Reads what the text says of the count: `29 sts`, `(29 sts)`, `23 (24, 25) sts rem`, `[29]` at the end of the row,
 * `2 sts increased`. Null, and nothing read, when something else stands there.
 */
export function readStated(cursor: Cursor): StatedCount | null {
  const from = cursor.at;
  const bracketed = isOpening(cursor.peek()?.text);
  if (bracketed) cursor.at += 1;
  cursor.take('=');
  // Outside of brackets a dash only parts the count from the row.
  const isLess = bracketed && cursor.take('—', '-');
  const sign = isLess ? 'decrease' : cursor.take('+') ? 'increase' : null;
  const number = cursor.peek();
  const isCount = number?.kind === 'number' && (bracketed || sign !== null || cursor.is('st', 1));
  if (!isCount) return givenUp(cursor, from);
  const numberAt = cursor.at;
  cursor.at += 1;
  const hasStitches = cursor.take('st');
  const kind = sign ?? readChange(cursor);
  if (kind === null) while (cursor.take(...remaining));
  const closes = isClosing(cursor.peek()?.text);
  if (bracketed) {
    if (!closes || (!hasStitches && !isAtEnd(cursor, 1))) return givenUp(cursor, from);
    cursor.at += 1;
  } else if (!isAtEnd(cursor, 0) && !closes) {
    return givenUp(cursor, from);
  }
  return {kind: kind ?? 'total', count: cursor.sizedAt(numberAt), span: cursor.spanFrom(from)};
}

function readChange(cursor: Cursor): 'increase' | 'decrease' | null {
  if (cursor.take('inc', 'incd')) return 'increase';
  return cursor.take('dec', 'decd') ? 'decrease' : null;
}

function isAtEnd(cursor: Cursor, ahead: number): boolean {
  const text = cursor.peek(ahead)?.text;
  return text === undefined || text === '.' || text === ';' || text === ',' || text === '—';
}

function givenUp(cursor: Cursor, from: number): null {
  cursor.at = from;
  return null;
}
