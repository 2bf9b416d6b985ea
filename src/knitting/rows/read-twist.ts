import {isClosing} from './brackets.ts';
import {leftTwist, rightTwist} from './crossings.ts';
import type {Cursor} from './cursor.ts';
import type {Stitch} from './stitch.ts';

/**
 * Reads what follows `k2tog` in `k2tog but leave them on the needle, then knit the first again, slip both off`: two in,
 * two out. Null, and nothing read, when no such words follow.
 */
export function readTwistBehind(cursor: Cursor): Stitch | null {
  const from = cursor.at;
  cursor.take(',');
  if (!cursor.take('but', 'leave', 'without', 'do', 'dont', 'not')) {
    cursor.at = from;
    return null;
  }
  if (!takeThrough(cursor, ['again'])) {
    cursor.at = from;
    return null;
  }
  takeOffNeedle(cursor);
  return rightTwist;
}

/** Reads `knit the second stitch through the back loop, then the first, slip both off`; null when it is not that. */
export function readTwistFromSecond(cursor: Cursor): Stitch | null {
  const start = cursor.at;
  if (cursor.take('skip', 'sk') && cursor.is('1') && cursor.is('st', 1)) {
    cursor.at += 2;
    cursor.take('&', ',');
  }
  const second = cursor.peek(1);
  const isLikely = second?.kind === 'ordinal' || second?.text === 'in' || second?.text === 'into';
  const twist = isLikely && cursor.is('k') ? readFromSecond(cursor) : null;
  if (!twist) cursor.at = start;
  return twist;
}

function readFromSecond(cursor: Cursor): Stitch | null {
  let isBehind = false;
  for (let ahead = 1; ahead < 8; ahead++) {
    const token = cursor.peek(ahead);
    if (!token || token.text === ',' || token.text === '.' || token.text === ';') return null;
    isBehind ||= token.text === 'back' || token.text === 'tbl' || token.text === 'behind';
    if (token.kind !== 'ordinal' || token.value !== 2) continue;
    const from = cursor.at;
    cursor.at += ahead + 1;
    isBehind ||= cursor.is('tbl', 1) || cursor.is('back', 3) || cursor.is('back', 2);
    if (takeThrough(cursor, ['1'])) {
      cursor.take('st');
      takeOffNeedle(cursor);
      return isBehind ? leftTwist : rightTwist;
    }
    cursor.at = from;
    return null;
  }
  return null;
}

function takeThrough(cursor: Cursor, words: readonly string[]): boolean {
  for (let ahead = 0; ahead < 24; ahead++) {
    const text = cursor.peek(ahead)?.text;
    if (text === undefined || isClosing(text) || text === '*') return false;
    if (!words.includes(text)) continue;
    cursor.at += ahead + 1;
    return true;
  }
  return false;
}

function takeOffNeedle(cursor: Cursor): void {
  for (let ahead = 0; ahead < 12; ahead++) {
    const text = cursor.peek(ahead)?.text;
    if (text === undefined || isClosing(text) || text === ';' || text === '.') return;
    if (text !== 'off') continue;
    cursor.at += ahead + 1;
    cursor.take('needle');
    cursor.take('tog');
    return;
  }
}
