import type {Face} from '../rows/face.ts';
import type {ProvedRow, ProvedSize} from '../rows/prove-rows.ts';
import type {RowsHeader, WrittenRow} from '../rows/row-syntax.ts';
import {alignRepeat} from './align-repeat.ts';
import {type ChartCell, type ChartGrid, type ChartRow, noStitch, type SquareRange} from './chart-grid.ts';
import {equalParts} from './equal-parts.ts';
import {cellsOfRow, type NeedleState} from './row-cells.ts';
import {settleColumns, squaresOf} from './settle-columns.ts';

/** More rows, or squares in a row, than any chart that is read from paper. */
export const mostAcross = 400;

type LooseRow = ChartRow & {readonly pass: SquareRange | null};

/**
 * The rows, proved with `isPlanned`, as a chart seen from the right side; squares without a stitch stand where the
 * count is below the largest. Null when it would be wider or higher than `mostAcross`.
 */
export function rowsToGrid(
  size: ProvedSize,
  header: Pick<RowsHeader, 'isRound' | 'multiple' | 'ownAbbreviations'>,
): ChartGrid | null {
  if (size.rows.some((row) => Math.max(row.in, row.made) > mostAcross)) return null;
  const rows: LooseRow[] = [];
  let needles: NeedleState = {left: size.start, right: 0};
  for (const row of withoutEcho(size.rows)) {
    if (rows.length > mostAcross) return null;
    const worked = cellsOfRow(row, needles);
    needles = worked.needles;
    worked.parts.forEach(({side, cells, repeat, turn}, part) => {
      const {label, number, times, isSound} = row;
      const isReversed = side === 'RS';
      const {length} = cells;
      const pass = repeat && isReversed ? {from: length - repeat.to, to: length - repeat.from} : repeat;
      const goesOn = part > 0;
      const numbered = goesOn ? null : number;
      const seen = isReversed ? cells.toReversed() : cells;
      rows.push({
        label,
        number: numbered,
        side,
        times,
        isSound,
        cells: seen,
        repeat: null,
        pass,
        goesOn,
        turn,
      });
    });
  }
  const whole = Math.max(0, ...rows.map(({cells}) => squaresOf(cells)));
  const passes = header.multiple
    ? 1
    : equalParts(
        rows.map(({cells}) => cells),
        whole,
      );
  const drawn = passes === 1 ? rows : rows.map((row) => lastPass(row, passes));
  const width = Math.max(0, ...drawn.map(({cells}) => squaresOf(cells)));
  if (width > mostAcross || rows.length > mostAcross) return null;
  const {multiple, ownAbbreviations} = header;
  const isRound = header.isRound || size.rows.every(({row}) => row.label.isRound);
  const start = size.start / passes;
  return {width, isRound, start, passes, multiple, ownAbbreviations, rows: fill(drawn, width)};
}

/** The part in which a right-side row begins; it is the repeat. */
function lastPass(row: LooseRow, passes: number): LooseRow {
  const length = row.cells.length / passes;
  return {...row, cells: row.cells.slice(-length), pass: {from: 0, to: length}};
}

/** A row that is worked again on the same stitches is drawn once. */
function withoutEcho(rows: readonly ProvedRow[]): readonly ProvedRow[] {
  const drawn = new Map<string, ProvedRow>();
  const written = new Map<WrittenRow, number>();
  for (const row of rows) {
    const index = written.get(row.row) ?? written.size;
    written.set(row.row, index);
    const key = [index, row.number ?? `at ${drawn.size}`, row.side, row.in, row.used, row.out].join(' ');
    const before = drawn.get(key);
    drawn.set(key, before ? {...before, times: before.times + row.times} : row);
  }
  return [...drawn.values()];
}

function fill(rows: readonly LooseRow[], width: number): ChartRow[] {
  const starts = settleColumns(
    rows.map(({cells}) => cells),
    width,
  );
  const filled: ChartRow[] = [];
  let surfaces: ('knit' | 'purl')[] = [];
  rows.forEach(({pass, ...row}, index) => {
    const begins = starts[index] ?? [];
    const cells = withSurfaces(row.cells, surfaces);
    surfaces = cells.flatMap(({makes, face}) => Array.from({length: makes}, () => surfaceOf(face)));
    const below = filled.at(-1)?.repeat ?? null;
    const shifted = pass && alignRepeat(pass, cells, begins, below);
    filled.push({
      ...row,
      cells: spread(cells, begins, width),
      repeat: shifted && edges(shifted, row, begins, width, below),
    });
  });
  return filled;
}

/** `As set` looks like the stitch that it is worked into. */
function withSurfaces(cells: readonly ChartCell[], below: readonly ('knit' | 'purl')[]): ChartCell[] {
  let used = 0;
  return cells.map((cell) => {
    const surface = below[used] ?? 'knit';
    used += cell.uses;
    if (cell.kind !== 'worked' || cell.face.shape !== 'as below') return cell;
    return {...cell, face: {shape: 'loop', surface, twisted: false}};
  });
}

function surfaceOf(face: Face): 'knit' | 'purl' {
  return 'surface' in face ? face.surface : 'knit';
}

function spread(cells: readonly ChartCell[], starts: readonly number[], width: number): ChartCell[] {
  const filled: ChartCell[] = [];
  let at = 0;
  const pad = (to: number) => {
    for (; at < to; at++) filled.push(noStitch);
  };
  cells.forEach((cell, index) => {
    pad(starts[index] ?? at);
    filled.push(cell);
    at += cell.squares;
  });
  pad(width);
  return filled;
}

/** The edges of the repeat; between two stitches apart, each is put as near as may be to that of the row below. */
function edges(
  {from, to}: SquareRange,
  {cells}: ChartRow,
  starts: readonly number[],
  width: number,
  below: SquareRange | null,
): SquareRange {
  const edge = (index: number, wanted: number | undefined) => {
    const before = cells[index - 1];
    const least = before ? (starts[index - 1] ?? 0) + before.squares : 0;
    const most = starts[index] ?? width;
    return Math.min(most, Math.max(least, wanted ?? most));
  };
  return {from: edge(from, below?.from), to: edge(to, below?.to)};
}
