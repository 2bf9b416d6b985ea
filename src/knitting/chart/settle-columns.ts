import type {ChartCell} from './chart-grid.ts';

type Cell = Pick<ChartCell, 'uses' | 'makes' | 'squares' | 'face'>;

/**
 * The square, counted from the left, in which each cell of each row begins, so that all rows fill the same width and
 * stitches stand as nearly above one another as the changing counts allow. `rows` from the first worked, cells from
 * left to right. Rows wider than `width` begin at 0.
 *
 * The widest row has no choice; from it upwards and downwards each row is placed with the least sum of sideways moves
 * against its neighbour (dynamic programming over cells and empty squares to their left).
 */
export function settleColumns(
  rows: readonly (readonly Cell[])[],
  width: number,
): readonly (readonly number[])[] {
  const widths = rows.map(squaresOf);
  const widest = widths.indexOf(Math.max(...widths));
  const starts: (readonly number[])[] = rows.map(() => []);
  const settle = (index: number, cost: Cost) => {
    const row = rows[index];
    if (row) starts[index] = place(row, width, cost);
  };
  settle(widest, () => 0);
  for (let index = widest + 1; index < rows.length; index++) {
    settle(index, costAbove(rows[index] ?? [], liveColumns(rows[index - 1] ?? [], starts[index - 1] ?? [])));
  }
  for (let index = widest - 1; index >= 0; index--) {
    settle(index, costBelow(rows[index] ?? [], footColumns(rows[index + 1] ?? [], starts[index + 1] ?? [])));
  }
  return starts;
}

export function squaresOf(cells: readonly Cell[]): number {
  return cells.reduce((sum, {squares}) => sum + squares, 0);
}

/** What it costs to let the cell begin in the square. */
type Cost = (cell: number, start: number) => number;

/** The columns of the stitches that the row leaves on the needle. */
function liveColumns(cells: readonly Cell[], starts: readonly number[]): number[] {
  return cells.flatMap(({makes}, index) =>
    Array.from({length: makes}, (_, made) => (starts[index] ?? 0) + made),
  );
}

/** For each stitch that the row uses, the column in which it should have stood. */
function footColumns(cells: readonly Cell[], starts: readonly number[]): number[] {
  return cells.flatMap(({uses, squares, face}, index) => {
    const middle = (starts[index] ?? 0) + (squares - 1) / 2 - drift(face);
    return Array.from({length: uses}, (_, used) => middle + used - (uses - 1) / 2);
  });
}

/** Of the squares of the stitches worked together, a decrease tends to the one that it leans to. */
function drift(face: ChartCell['face']): number {
  if (face.shape !== 'decrease' || face.lean === 'centre') return 0;
  return face.lean === 'right' ? 0.25 : -0.25;
}

function costAbove(cells: readonly Cell[], below: readonly number[]): Cost {
  let used = 0;
  const middles = cells.map(({uses, face}) => {
    const feet = below.slice(used, used + uses);
    used += uses;
    return feet.length === 0
      ? null
      : feet.reduce((sum, column) => sum + column, 0) / feet.length + drift(face);
  });
  return (index, start) => {
    const middle = middles[index] ?? null;
    const {squares = 1} = cells[index] ?? {};
    return middle === null ? 0 : Math.abs(start + (squares - 1) / 2 - middle);
  };
}

function costBelow(cells: readonly Cell[], feet: readonly number[]): Cost {
  let made = 0;
  const wanted = cells.map(({makes}) => {
    made += makes;
    return feet.slice(made - makes, made);
  });
  return (index, start) =>
    (wanted[index] ?? []).reduce((sum, column, offset) => sum + Math.abs(start + offset - column), 0);
}

function place(cells: readonly Cell[], width: number, cost: Cost): number[] {
  const slack = Math.max(0, width - squaresOf(cells));
  const choices: Uint32Array[] = [];
  let best = new Float64Array(slack + 1);
  let taken = 0;
  cells.forEach(({squares}, index) => {
    const next = new Float64Array(slack + 1);
    const choice = new Uint32Array(slack + 1);
    let cheapest = 0;
    for (let empty = 0; empty <= slack; empty++) {
      // Of equals the one without a gap to the left.
      if ((best[empty] ?? 0) <= (best[cheapest] ?? 0)) cheapest = empty;
      choice[empty] = cheapest;
      next[empty] = (best[cheapest] ?? 0) + cost(index, taken + empty);
    }
    choices.push(choice);
    best = next;
    taken += squares;
  });
  return backtrack(cells, choices, best, taken);
}

function backtrack(
  cells: readonly Cell[],
  choices: readonly Uint32Array[],
  costs: Float64Array,
  squares: number,
): number[] {
  let empty = costs.reduce((least, value, index) => (value < (costs[least] ?? 0) ? index : least), 0);
  let at = squares;
  const starts: number[] = [];
  for (let index = cells.length - 1; index >= 0; index--) {
    at -= cells[index]?.squares ?? 0;
    starts[index] = at + empty;
    empty = choices[index]?.[empty] ?? 0;
  }
  return starts;
}
