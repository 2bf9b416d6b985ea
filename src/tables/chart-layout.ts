import type {SquareRange} from '../knitting/chart/chart-grid.ts';
import {mm} from './chart-path.ts';

/** Width of a leaf's text, in millimetres. */
export const textWidth = 118;
/** Room for the row numbers on each side. */
export const numberWidth = 7;

const widest = 5;
const narrowest = 2.8;
const lowest = 2.2;

export interface ChartScale {
  /** Millimetres of paper. */
  readonly square: number;
  readonly rowHeight: number;
  /** The squares of each part, the right-hand one first: that is where right-side rows begin. */
  readonly parts: readonly SquareRange[];
}

/**
 * Squares as large as the leaf allows, in the proportion of the gauge. `ratio` is the width of a stitch over the height
 * of a row. A chart that would need squares too small to read is split, at `edges` where that can be.
 */
export function chartScale(width: number, ratio: number, edges: ReadonlySet<number>): ChartScale {
  const room = textWidth - 2 * numberWidth;
  const least = Math.max(narrowest, lowest * ratio);
  const fitting = Math.min(Math.max(room / Math.max(width, 1), least), Math.max(widest, least));
  // Rounded down: many squares of a hundredth too much would not fit.
  const square = Math.floor(fitting * 100 + 1e-9) / 100;
  const most = Math.max(1, Math.floor(room / square + 1e-9));
  const parts: SquareRange[] = [];
  for (let to = width; to > 0; ) {
    const from = width <= most ? 0 : cut(to, most, edges);
    parts.push({from, to});
    to = from;
  }
  return {square, rowHeight: mm(square / ratio), parts};
}

/** The furthest place to the left at which no stitch is cut through, else as far as there is room. */
function cut(to: number, most: number, edges: ReadonlySet<number>): number {
  const furthest = Math.max(0, to - most);
  for (let from = furthest; from < to; from++) if (from === 0 || edges.has(from)) return from;
  return furthest;
}
