import type {Problem, Span} from '../../support/result.ts';
import type {ChartFrame, FramedLine} from './chart-frame.ts';
import {type ChartCell, type ChartGrid, type ChartRow, noStitch, unworked} from './chart-grid.ts';
import type {KeyLine, Square} from './chart-lines.ts';
import {marks} from './chart-text.ts';
import {type KeyMeaning, readKey} from './read-key.ts';
import {reportUnknownSign} from './unknown-sign.ts';

export function readStitchChart(
  key: readonly KeyLine[],
  {header, lines}: ChartFrame,
  problems: Problem[],
): ChartGrid {
  const {isRound, multiple, ownAbbreviations} = header;
  const signs = new Map<string, KeyMeaning | null>();
  for (const line of key) signs.set(line.symbol, readKey(line, ownAbbreviations, problems));
  const rows = lines.map((line): ChartRow => {
    const {row, side, repeat} = line;
    const cells = new CellReader(line, signs, problems).read();
    const label = `${isRound ? 'Rnd' : 'Row'} ${row}`;
    return {label, number: row, side, times: 1, isSound: true, cells, repeat, goesOn: false, turn: null};
  });
  const shown = sum(rows[0]?.cells ?? [], 'uses');
  const stated = header.start?.values[0] ?? shown;
  const times = rows[0] ? timesOfRepeat(rows[0], stated) : 1;
  if (problems.length === 0) checkCounts(rows, lines, {start: stated, times}, problems);
  // Where the repeat is the whole chart, the chart is one of so many equal parts.
  const isAll = rows[0] !== undefined && within(rows[0], 'uses') === shown;
  const passes = isAll ? times : 1;
  const start = times === 1 ? stated : shown;
  return {width: lines[0]?.squares.length ?? 0, isRound, start, passes, multiple, ownAbbreviations, rows};
}

class CellReader {
  private readonly line: FramedLine;
  private readonly signs: ReadonlyMap<string, KeyMeaning | null>;
  private readonly problems: Problem[];

  constructor(line: FramedLine, signs: ReadonlyMap<string, KeyMeaning | null>, problems: Problem[]) {
    this.line = line;
    this.signs = signs;
    this.problems = problems;
  }

  read(): ChartCell[] {
    const {squares} = this.line;
    const cells: ChartCell[] = [];
    for (let at = 0; at < squares.length; ) {
      const square = squares[at];
      if (!square) break;
      const cell = this.cellOf(square);
      if (cell) cells.push(cell);
      at += 1;
      let wide = 1;
      for (; squares[at]?.symbol === marks.goesOn; at++) wide += 1;
      if (cell && wide !== cell.squares) this.complainOfWidth(square, cell.squares, wide);
    }
    return cells;
  }

  private cellOf({symbol, span}: Square): ChartCell | null {
    if (symbol === marks.noStitch) return noStitch;
    if (symbol === marks.unworked) return unworked;
    const meaning = this.signs.get(symbol);
    if (meaning === undefined) {
      if (symbol === marks.goesOn)
        this.complain('`>` has no stitch to its left', 'Write the stitch first.', span);
      else reportUnknownSign(symbol, [...this.signs.keys()], span, this.problems);
      return null;
    }
    const {side} = this.line;
    const cell = meaning?.[side] ?? null;
    if (meaning && !cell) {
      const words = `\`${symbol}\` stands in a ${side} row, but the key does not say how it is worked there`;
      this.complain(words, `Add it to the key, such as \`${symbol} = k (RS), p (WS)\`.`, span);
    }
    return cell;
  }

  private complainOfWidth({symbol, span}: Square, wanted: number, found: number): void {
    this.complain(
      `\`${symbol}\` takes \`${wanted}\` squares, the chart gives it \`${found}\``,
      wanted === 1
        ? 'Take the `>` behind it away.'
        : `Write \`${symbol}${' >'.repeat(Math.min(wanted, 12) - 1)}\`.`,
      span,
    );
  }

  private complain(message: string, hint: string, span: Span): void {
    this.problems.push({message, hint, span});
  }
}

/** Each row must find as many stitches as the row below it leaves. */
function checkCounts(
  rows: readonly ChartRow[],
  lines: readonly FramedLine[],
  {start, times}: {readonly start: number; readonly times: number},
  problems: Problem[],
): void {
  let found = start;
  rows.forEach((row, index) => {
    const {cells, number} = row;
    const count = (what: 'uses' | 'makes') => sum(cells, what) + (times - 1) * within(row, what);
    const uses = count('uses');
    if (uses !== found) {
      problems.push({
        message: `row \`${number}\` of the chart works \`${uses}\` stitches, but there are \`${found}\``,
        hint: 'Check the increases and decreases of this row and of the row below it.',
        span: lines[index]?.span ?? {start: 0, end: 0},
      });
    }
    found = count('makes');
  });
}

/** How often the repeat of the first row is worked on `stitches`; 1 where it does not come out. */
function timesOfRepeat(row: ChartRow, stitches: number): number {
  const each = within(row, 'uses');
  const times = each === 0 ? 1 : (stitches - sum(row.cells, 'uses')) / each + 1;
  return Number.isInteger(times) && times > 1 ? times : 1;
}

/** Stitches between the bars. */
function within({cells, repeat}: ChartRow, what: 'uses' | 'makes'): number {
  if (repeat === null) return 0;
  let at = 0;
  return cells.reduce((total, cell) => {
    const isIn = at >= repeat.from && at < repeat.to;
    at += cell.squares;
    return isIn ? total + cell[what] : total;
  }, 0);
}

function sum(cells: readonly ChartCell[], what: 'uses' | 'makes'): number {
  return cells.reduce((total, cell) => total + cell[what], 0);
}
