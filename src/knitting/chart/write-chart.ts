import type {Face} from '../rows/face.ts';
import type {ChartCell, ChartGrid, ChartRow} from './chart-grid.ts';
import {chartKey, type KeyEntry} from './chart-key.ts';
import {marks} from './chart-text.ts';
import {headerLines} from './grid-to-rows.ts';

const letters = [...'abcdefghijklmnpqrstuwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'];

/** The chart as the text of a `chart` block; see `read-chart.ts` for its form. */
export function writeChart(grid: ChartGrid): string {
  const key = chartKey(grid);
  const symbols = new Map<KeyEntry, string>();
  const taken = new Set<string>();
  for (const entry of key.entries) {
    const wanted = [symbolOf(entry.face), ...letters].find((symbol) => symbol !== null && !taken.has(symbol));
    const symbol = wanted ?? `x${taken.size}`;
    taken.add(symbol);
    symbols.set(entry, symbol);
  }
  const widest = Math.max(0, ...[...taken].map((symbol) => symbol.length));
  const keyLines = key.entries.map((entry) => `${symbols.get(entry) ?? ''} = ${meaningOf(entry)}`);
  const symbolFor = (cell: ChartCell, row: ChartRow) => {
    const entry = key.entryOf(cell, row);
    return (entry && symbols.get(entry)) ?? marks.noStitch;
  };
  const rowLines = grid.rows.map((row) => {
    const squares = row.cells.flatMap((cell) => squaresOf(cell, symbolFor(cell, row)));
    return numbered(row, grid, withBars(row, squares, widest));
  });
  const first = grid.rows[0];
  const header = [
    ...headerLines(grid),
    ...(grid.isRound ? ['in the round'] : []),
    ...(first?.side === 'WS' ? ['first row: WS'] : []),
  ];
  return `${[...header, ...keyLines, '', ...rowLines.reverse()].join('\n')}\n`;
}

function squaresOf(cell: ChartCell, symbol: string): string[] {
  if (cell.kind === 'no stitch') return [marks.noStitch];
  if (cell.kind === 'unworked') return [marks.unworked];
  return [symbol, ...Array.from({length: cell.squares - 1}, () => marks.goesOn)];
}

function withBars({repeat}: ChartRow, squares: readonly string[], widest: number): string {
  const padded = squares.map((square) => square.padEnd(widest));
  if (!repeat) return padded.join(' ');
  const parts = [padded.slice(0, repeat.from), padded.slice(repeat.from, repeat.to), padded.slice(repeat.to)];
  return parts.map((part) => part.join(' ')).join(` ${marks.bar} `);
}

/** The number stands where the row begins. */
function numbered({number, side}: ChartRow, {rows}: ChartGrid, squares: string): string {
  const room = String(Math.max(0, ...rows.map((row) => row.number ?? 0))).length;
  const left = side === 'WS' && number !== null ? String(number) : '';
  const right = side === 'RS' && number !== null ? `  ${number}` : '';
  return `${left.padStart(room)}  ${squares.trimEnd()}${right}`.trimEnd();
}

function meaningOf({worked: {RS, WS}}: KeyEntry): string {
  if (RS === WS) return RS ?? '';
  return [...(RS === null ? [] : [`${RS} (RS)`]), ...(WS === null ? [] : [`${WS} (WS)`])].join(', ');
}

/** A plain character that looks a little like the stitch. */
function symbolOf(face: Face): string | null {
  switch (face.shape) {
    case 'loop':
      return face.twisted ? null : face.surface === 'knit' ? '.' : '-';
    case 'hole':
      return 'o';
    case 'slip':
      return 'v';
    case 'decrease':
      return face.lean === 'right' ? '/' : face.lean === 'left' ? '\\' : '^';
    case 'bobble':
      return '*';
    case 'increase':
      return '+';
    default:
      return null;
  }
}
