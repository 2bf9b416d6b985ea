import {constant, type LinearForm} from './linear-form.ts';
import {sizedFor} from './row-order.ts';
import type {WrittenRow} from './row-syntax.ts';

/**
 * The counts that may have been meant behind a row that does not come out: the one that is stated, the one that came
 * out, the one before, then all others, the nearest first.
 */
export function* likelyCounts(
  {stated}: WrittenRow,
  {in: before, out}: {readonly in: LinearForm; readonly out: LinearForm},
  size: number,
): Generator<LinearForm> {
  for (const {kind, count} of stated) if (kind === 'total') yield constant(sizedFor(count, size));
  yield out;
  yield before;
  if (out.each !== 0 || before.each !== 0) return;
  for (let distance = 1; distance <= Math.max(before.fixed, 12); distance++) {
    yield constant(before.fixed + distance);
    if (distance < before.fixed) yield constant(before.fixed - distance);
  }
}
