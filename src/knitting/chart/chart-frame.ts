import type {Problem} from '../../support/result.ts';
import type {Side} from '../rows/face.ts';
import {readRows} from '../rows/read-rows.ts';
import type {RowsHeader} from '../rows/row-syntax.ts';
import type {SquareRange} from './chart-grid.ts';
import type {ChartLines, GridLine} from './chart-lines.ts';
import {mostAcross} from './rows-to-grid.ts';

/** What a line of the grid is, before its squares are looked at. */
export interface FramedLine extends GridLine {
  readonly row: number;
  readonly side: Side;
  readonly repeat: SquareRange | null;
}

export interface ChartFrame {
  readonly header: RowsHeader;
  readonly rowsPerLine: number;
  readonly method: 'stranded' | 'intarsia' | null;
  readonly lines: readonly FramedLine[];
}

const firstRowLine = /^[ \t]*first (?:row|line)[ \t]*:[ \t]*(RS|WS)[ \t]*$/im;
const perLine = /^[ \t]*rows per line[ \t]*:[ \t]*([1-9]\d?)[ \t]*$/im;
const methodLine = /^[ \t]*method[ \t]*:[ \t]*(stranded|intarsia)[ \t]*$/im;

/** Reads the header, numbers the lines and says on which side each is worked. */
export function chartFrame({header, lines}: ChartLines, problems: Problem[]): ChartFrame {
  let others = header;
  const take = (line: RegExp) => {
    const found = line.exec(others);
    if (found) others = others.replace(line, (text) => ' '.repeat(text.length));
    return found?.[1]?.toLowerCase() ?? null;
  };
  const [firstSide, rows, method] = [take(firstRowLine), take(perLine), take(methodLine)];
  const read = readRows(others);
  problems.push(...read.problems);
  const isRound = read.pattern.header.isRound;
  const rowsPerLine = rows === null ? 1 : Number(rows);
  return {
    header: read.pattern.header,
    rowsPerLine,
    method: method === 'stranded' || method === 'intarsia' ? method : null,
    lines: isTooLarge(lines, problems) ? [] : frame(lines, {isRound, firstSide, rowsPerLine}, problems),
  };
}

function isTooLarge(lines: readonly GridLine[], problems: Problem[]): boolean {
  const [first] = lines;
  const span = first?.span ?? {start: 0, end: 0};
  if (!first) {
    problems.push({
      message: 'the chart has no rows',
      hint: 'Write the grid below the key, one sign for each stitch with a space between them.',
      span,
    });
  }
  const most = Math.max(lines.length, ...lines.map(({squares}) => squares.length));
  if (most > mostAcross) {
    problems.push({
      message: `the chart is \`${most}\` squares long or wide, more than \`${mostAcross}\``,
      hint: 'Write the repeat once and put `|` on both sides of it.',
      span,
    });
  }
  return !first || most > mostAcross;
}

function frame(
  lines: readonly GridLine[],
  {isRound, firstSide, rowsPerLine}: {isRound: boolean; firstSide: string | null; rowsPerLine: number},
  problems: Problem[],
): FramedLine[] {
  const stated = lines.findIndex(({number}) => number !== null);
  const base = stated < 0 ? 1 : (lines[stated]?.number ?? 1) - stated;
  const beginsWrong = firstSide === null ? rowsPerLine === 1 && base % 2 === 0 : firstSide === 'ws';
  const width = lines[0]?.squares.length ?? 0;
  return lines.map((line, index) => {
    const row = base + index;
    if (line.number !== null && line.number !== row) {
      problems.push({
        message: `the line is numbered \`${line.number}\` but is row \`${row}\` counted from the lowest`,
        hint: 'Charts are read from the bottom up; number every line in turn, or none.',
        span: line.span,
      });
    }
    if (line.squares.length !== width) {
      problems.push({
        message: `row \`${row}\` has \`${line.squares.length}\` squares, the lowest row has \`${width}\``,
        hint: 'Fill squares without a stitch with `_`.',
        span: line.span,
      });
    }
    const isWrong = !isRound && ((index * rowsPerLine) % 2 === 1) !== beginsWrong;
    return {...line, row, side: isWrong ? 'WS' : 'RS', repeat: repeatOf(line, problems)};
  });
}

function repeatOf({bars, span}: GridLine, problems: Problem[]): SquareRange | null {
  const [from, to, ...more] = bars;
  if (from === undefined) return null;
  if (to !== undefined && more.length === 0 && to > from) return {from, to};
  problems.push({
    message: 'the bars do not mark one repeat',
    hint: 'Put one `|` before the repeat and one behind it.',
    span,
  });
  return null;
}
