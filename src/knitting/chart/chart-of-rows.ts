import type {Problem} from '../../support/result.ts';
import {proofOf} from '../rows/known-rows.ts';
import {type ProvedPattern, proveRows} from '../rows/prove-rows.ts';
import {type ReadRows, readRows} from '../rows/read-rows.ts';
import type {WrittenPattern} from '../rows/row-syntax.ts';
import type {ChartGrid} from './chart-grid.ts';
import {rowsToGrid} from './rows-to-grid.ts';

export interface ChartedRows {
  /** Null when nothing can be drawn. */
  readonly grid: ChartGrid | null;
  /** What is wrong in the rows; the grid shows what could be worked all the same. */
  readonly problems: readonly Problem[];
  /** The name of the size that is shown, its number where sizes have none, or empty where there is one. */
  readonly size: string;
  readonly sizeCount: number;
}

/** So many repeats are tried to find the narrowest chart. */
const mostRepeats = 3;

/**
 * The chart of a `rows` block, its text or what was read in it, in one of its sizes, counted from 1. With a stated multiple it is charted on as few stitches as the rows can be
 * worked on, so that the repeat stands once.
 */
export function chartOfRows(rows: string | ReadRows, size = 1): ChartedRows {
  const {pattern, problems} = typeof rows === 'string' ? readRows(rows) : rows;
  const proved = proveNarrowest(pattern, problems.length === 0) ?? proveRows(pattern, {isPlanned: true});
  const shown = proved.sizes[size - 1];
  const grid = shown && shown.rows.length > 0 ? rowsToGrid(shown, pattern.header) : null;
  const sizeCount = proved.sizes.length;
  const name = shown?.name || (sizeCount > 1 ? `${size} of ${sizeCount}` : '');
  return {grid, problems: [...problems, ...proved.problems], size: name, sizeCount};
}

function proveNarrowest(pattern: WrittenPattern, isRead: boolean): ProvedPattern | null {
  const {multiple, start, sizes} = pattern.header;
  if (!multiple || !isRead || sizes.length > 0 || (start?.values.length ?? 1) > 1) return null;
  if (start && proofOf(pattern).problems.length > 0) return null;
  for (let repeats = 1; repeats <= mostRepeats; repeats++) {
    const stitches = multiple.of * repeats + multiple.plus;
    if (start && stitches > (start.values[0] ?? 0)) return null;
    const narrow = {values: [stitches], span: multiple.span, isCastOn: false};
    const header = {...pattern.header, start: narrow};
    const proved = proveRows({...pattern, header}, {isPlanned: true});
    if (proved.problems.length === 0) return proved;
  }
  return null;
}
