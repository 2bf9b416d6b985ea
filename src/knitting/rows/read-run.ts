import type {Cursor} from './cursor.ts';
import {readExtent} from './read-extent.ts';
import type {Extent} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';

const between = ['next', 'last', 'remain', 'edge', 'up', 'st', 'other', 'made', 'plain', 'of', 'only'];

/**
 * How often the stitch just named is worked: `k5`, `knit the next three stitches`, `k to last 3 sts`, `k the edge
 * stitch`. A bare `k` is one stitch; at the end of a row `settleBare` makes it all that are left.
 */
export function readRun(cursor: Cursor, stitch: Stitch, from: number): Extent {
  const extent = readExtent(cursor);
  if (extent) return extent;
  const takesNumber =
    ['plain', 'slip', 'as set'].includes(stitch.kind) || (stitch.kind === 'own' && isAttached(cursor));
  const before = cursor.at;
  if (takesNumber) {
    let passed = 0;
    while (passed < 4 && (cursor.take(...between) || takeOrdinal(cursor))) passed += 1;
    const token = cursor.peek();
    if (token?.kind === 'number' && !(passed === 0 && cursor.is('time', 1))) {
      cursor.at += 1;
      const count = cursor.sizedAt(cursor.at - 1);
      cursor.take('edge', 'more', 'remain');
      cursor.take('st', 'loop');
      cursor.take('plain', 'remain');
      return {kind: 'times', count};
    }
    if (passed > 0) {
      const late = readExtent(cursor);
      if (late) return late;
      cursor.take('plain');
      return {kind: 'times', count: {values: [1], span: cursor.spanFrom(before)}};
    }
  }
  return {kind: 'times', count: {values: [1], span: cursor.spanFrom(from)}};
}

/** `B2`, where the pattern's own B is one stitch. */
function isAttached(cursor: Cursor): boolean {
  const token = cursor.peek();
  return token?.kind === 'number' && !token.isApart;
}

function takeOrdinal(cursor: Cursor): boolean {
  if (cursor.peek()?.kind !== 'ordinal') return false;
  cursor.at += 1;
  return true;
}
