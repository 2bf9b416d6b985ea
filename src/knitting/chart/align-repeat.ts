import type {ChartCell, SquareRange} from './chart-grid.ts';
import {cellText} from './working-order.ts';

/**
 * The cells of one pass of the repeat, moved along the row to stand over the repeat of the row below. A repeat may begin
 * with any of its stitches as long as the row stays the same: `p5, *k3, p5` is `*p5, k3` and p5 behind the last.
 * `pass` counts cells from the left, `to` exclusive; `starts` are their squares.
 */
export function alignRepeat(
  pass: SquareRange,
  cells: readonly ChartCell[],
  starts: readonly number[],
  below: SquareRange | null,
): SquareRange {
  if (!below) return pass;
  const length = pass.to - pass.from;
  const texts = cells.map(cellText);
  const isSame = (a: number, b: number) => texts[a] !== undefined && texts[a] === texts[b];
  const far = ({from, to}: SquareRange) => {
    const last = (starts[to - 1] ?? 0) + (cells[to - 1]?.squares ?? 0);
    return Math.abs((starts[from] ?? 0) - below.from) + Math.abs(last - below.to);
  };
  let best = pass;
  let shifted = pass;
  const consider = (by: number) => {
    shifted = {from: shifted.from + by, to: shifted.to + by};
    if (far(shifted) < far(best)) best = shifted;
  };
  while (pass.from - shifted.from < length && isSame(shifted.from - 1, shifted.to - 1)) consider(-1);
  shifted = pass;
  while (shifted.from - pass.from < length && isSame(shifted.to, shifted.from)) consider(1);
  return best;
}
