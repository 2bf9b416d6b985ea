import {expect} from 'vitest';
import {expandRow} from '../../../src/knitting/rows/expand-row.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';

/** Both texts prove, and work the same stitches in the same order, row by row; `text` is worked `passes` times in a row of `other`. */
export function worksSame(text: string, other: string, passes = 1): void {
  const once = stitchesOf(text);
  expect(once.map((row) => Array.from({length: passes}, () => row).flat())).toEqual(stitchesOf(other));
}

function stitchesOf(text: string): string[][] {
  const proved = proveRows(readRows(text).pattern, {isPlanned: true});
  expect(proved.problems).toEqual([]);
  return (proved.sizes[0]?.rows ?? []).map((row) =>
    [...expandRow(row)]
      .filter(({uses, makes}) => uses > 0 || makes > 0)
      // The loop that binding off leaves has been knitted, whether the text counts it with the next stitches or not.
      .map(
        ({stitch, step, makes}) => stitch?.id ?? (step.kind === 'bind off' && makes > 0 ? 'k' : step.kind),
      ),
  );
}
