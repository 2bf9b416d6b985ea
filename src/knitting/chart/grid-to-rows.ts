import type {Dialect, Stitch} from '../rows/stitch.ts';
import {writeSteps} from '../rows/write-rows.ts';
import {cellsToSteps} from './cells-to-steps.ts';
import type {ChartGrid, ChartRow} from './chart-grid.ts';
import {inWorkingOrder} from './working-order.ts';

/**
 * A chart as a `rows` block. Reading and charting it again gives the same chart. What a chart does not show is not in
 * it: markers, yarn that is only moved, stated counts.
 */
export function gridToRows(grid: ChartGrid, dialect: Dialect = 'american'): string {
  const lines = [...headerLines(grid), grid.isRound ? 'in the round' : ''].filter((line) => line !== '');
  let block = 0;
  grid.rows.forEach((row, index) => {
    const next = grid.rows[index + 1];
    if (row.goesOn) {
      const before = grid.rows[index - 1];
      // The end of a row turns the work by itself, the end of a part of one does not.
      const turn = before && inWorkingOrder(before).turn === null ? ', turn' : '';
      lines.push(`${(lines.pop() ?? '').slice(0, -1)}${turn}, ${writeRowSteps(row, dialect)}.`);
    } else {
      if (grid.rows[index - 1]?.times !== row.times) block = index;
      lines.push(`${labelOf(row, grid)}: ${writeRowSteps(row, dialect)}.`);
    }
    const first = grid.rows[block];
    const isEnd = row.times > 1 && next?.times !== row.times;
    if (isEnd && first && first.number !== null && row.number !== null) {
      lines.push(`Rep rows ${first.number}–${row.number} ${row.times - 1} more times.`);
    }
  });
  return `${lines.join('\n')}\n`;
}

/** What stands above rows and above a chart alike. */
export function headerLines({multiple, start, ownAbbreviations}: ChartGrid): string[] {
  return [
    ...(multiple ? [`multiple: ${multiple.of} + ${multiple.plus}`] : []),
    `stitches: ${start}`,
    ...ownAbbreviations.map(ownLine),
  ];
}

/** The row in words, without its label. */
export function writeRowSteps(row: ChartRow, dialect: Dialect = 'american'): string {
  return writeSteps(cellsToSteps(inWorkingOrder(row)), dialect);
}

function ownLine({id, uses, makes, names}: Stitch): string {
  return `${id}: uses ${uses}, makes ${makes}, "${names.american.words}"`;
}

function labelOf({number, side}: ChartRow, {isRound}: ChartGrid): string {
  const word = isRound ? 'Rnd' : 'Row';
  if (number === null) return `Next ${word.toLowerCase()}`;
  return isRound ? `${word} ${number}` : `${word} ${number} (${side})`;
}
