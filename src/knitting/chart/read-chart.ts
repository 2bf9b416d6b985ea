import type {Problem} from '../../support/result.ts';
import {chartFrame} from './chart-frame.ts';
import type {ChartGrid} from './chart-grid.ts';
import {chartLines} from './chart-lines.ts';
import type {ColourGrid} from './colour-grid.ts';
import {isColourKey, readColourChart} from './read-colour-chart.ts';
import {readStitchChart} from './read-stitch-chart.ts';

export type ReadChart =
  | {readonly kind: 'stitches'; readonly grid: ChartGrid}
  | {readonly kind: 'colours'; readonly grid: ColourGrid};

/**
 * Reads a `chart` block: header lines as above written rows (`multiple: 6 + 5`, `in the round`, `first row: WS`); a key,
 * one line for each sign, `/ = k2tog (RS), p2tog (WS)` for stitches or `X = colour deep water #27414d` for colours; and
 * the grid as seen from the right side, the first row lowest, with a row number at either end or none. `|` stands on
 * both sides of the repeat, `_` where there is no stitch, `~` on a stitch left unworked, `>` behind a stitch that takes
 * several squares. A colour chart may say `method: stranded`, `method: intarsia` and `rows per line: 2`.
 *
 * Never throws. The chart is null when there are problems; their spans count from the start of `text`.
 */
export function readChart(text: string): {
  readonly chart: ReadChart | null;
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const lines = chartLines(text, problems);
  const frame = chartFrame(lines, problems);
  if (lines.key.some(isColourKey)) {
    const grid = readColourChart(lines.key, frame, problems);
    return problems.length > 0 ? {chart: null, problems} : {chart: {kind: 'colours', grid}, problems};
  }
  const grid = readStitchChart(lines.key, frame, problems);
  return problems.length > 0 ? {chart: null, problems} : {chart: {kind: 'stitches', grid}, problems};
}
