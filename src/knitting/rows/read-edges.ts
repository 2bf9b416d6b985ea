import type {Cursor} from './cursor.ts';
import {readExtent} from './read-extent.ts';
import type {CastOnStep, Extent} from './row-syntax.ts';
import {skipClause} from './skip-clause.ts';
import type {StepList} from './step-list.ts';

const adverbs = [
  'loosely',
  'firmly',
  'kwise',
  'pwise',
  'evenly',
  'next',
  'first',
  '1',
  'last',
  'remain',
  'st',
  'center',
  'centre',
];

/** Reads the rest of `bind off 3 sts`, `cast off all but seven`, `BO rem sts`, `BO`. */
export function readBindOff(cursor: Cursor, list: StepList, from: number): void {
  list.push({kind: 'bind off', extent: readCount(cursor, from), span: cursor.spanFrom(from)});
  skipClause(cursor);
}

function readCount(cursor: Cursor, from: number): Extent {
  for (;;) {
    const extent = readExtent(cursor);
    if (extent) return extent;
    const token = cursor.peek();
    if (token?.kind === 'number') {
      const count = cursor.sizedAt(cursor.at);
      cursor.at += 1;
      cursor.take('st', 'loop');
      return {kind: 'times', count};
    }
    if (!cursor.take(...adverbs)) break;
    if (cursor.at - from > 8) break;
  }
  return {kind: 'to end'};
}

/** Reads the rest of `cast on 3 sts`, `pick up and knit 12 sts`. */
export function readCastOn(cursor: Cursor, list: StepList, how: CastOnStep['how'], from: number): void {
  while (cursor.take('a', 'next', 'further', 'another', 'extra', 'on'));
  const token = cursor.peek();
  if (token?.kind !== 'number') {
    const span = cursor.spanFrom(from);
    cursor.complain(
      `\`${cursor.written(span)}\` does not say how many stitches`,
      'Write the number, such as `cast on 3 sts`.',
      span,
    );
    skipClause(cursor);
    return;
  }
  cursor.at += 1;
  const count = cursor.sizedAt(cursor.at - 1);
  cursor.take('st', 'loop');
  list.push({kind: 'cast on', how, count, span: cursor.spanFrom(from)});
  skipClause(cursor);
}
