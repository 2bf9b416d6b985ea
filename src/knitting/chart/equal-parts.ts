import type {ChartCell} from './chart-grid.ts';
import {cellText} from './working-order.ts';

/** As many squares as stand side by side on a leaf in a size that can be read. */
const widestWhole = 36;
/** A chart of fewer squares shows no pattern. */
const narrowestPart = 4;

/**
 * Into how many equal parts, side by side, all rows of a chart can be divided so that one part tells everything: a
 * crown of eight wedges is drawn as one. 1 where the chart is narrow enough as it is.
 */
export function equalParts(rows: readonly (readonly ChartCell[])[], width: number): number {
  if (width <= widestWhole) return 1;
  const most = rows.reduce((common, cells) => greatestCommonDivisor(common, partsOf(cells)), 0);
  let parts = most;
  while (parts > 1 && (most % parts !== 0 || width / parts < narrowestPart)) parts -= 1;
  return Math.max(1, parts);
}

/** The largest number of equal parts of one row. */
function partsOf(cells: readonly ChartCell[]): number {
  if (cells.some(({kind}) => kind !== 'worked')) return 1;
  const texts = cells.map((cell) => `${cellText(cell)} ${JSON.stringify(cell.face)}`);
  for (let length = 1; length <= texts.length / 2; length++) {
    if (texts.length % length === 0 && texts.every((text, index) => text === texts[index % length])) {
      return texts.length / length;
    }
  }
  return 1;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
