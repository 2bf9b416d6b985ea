import {plural} from '../../support/plural.ts';
import type {Corner, Edge, EdgePlan, EdgeWork, Setting} from './edge-plan.ts';
import type {Ending} from './piece-syntax.ts';
import type {Point, Run, WorkedPieceRow} from './worked-piece.ts';

/** Why a step cannot be worked, without its place. */
export interface Trouble {
  readonly message: string;
  readonly hint: string;
}

/** A run while it is worked. `stitches` counts all on the needle; between the edges lie those not left waiting. */
export interface RunBuilder {
  readonly name: string | null;
  readonly startRow: number;
  readonly inner: Edge | null;
  startStitches: number;
  stitches: number;
  leftX: number;
  rightX: number;
  row: number;
  readonly rows: WorkedPieceRow[];
  left: Point[];
  right: Point[];
  ending: Ending | null;
  /** A step before could not be worked, so that nothing after it can be judged. */
  isBroken: boolean;
}

/** Edges in half stitches from the middle of the panel. */
export function startRun(
  leftX: number,
  rightX: number,
  row: number,
  name: string | null = null,
  inner: Edge | null = null,
): RunBuilder {
  const stitches = (rightX - leftX) / 2;
  return {
    name,
    inner,
    stitches,
    leftX,
    rightX,
    row,
    startRow: row,
    startStitches: stitches,
    rows: [],
    left: [{x: leftX, row}],
    right: [{x: rightX, row}],
    ending: null,
    isBroken: false,
  };
}

export function settingOf(run: RunBuilder, isRound: boolean): Setting {
  return {firstRow: run.row + 1, isRound, inner: run.inner};
}

/** Works both edges row by row, as many rows as both have. Stops at the first row that cannot be worked. */
export function workRows(run: RunBuilder, left: EdgePlan, right: EdgePlan): Trouble | null {
  const start = {row: run.row, leftX: run.leftX, rightX: run.rightX};
  for (const [index, rightWork] of right.work.entries()) {
    const leftWork = left.work[index] ?? rightWork;
    const trouble = workRow(run, leftWork, rightWork);
    if (trouble) {
      run.isBroken = true;
      return trouble;
    }
  }
  run.left.push(...left.corners.map((corner) => pointOf(corner, start.leftX, 1, start.row)));
  run.right.push(...right.corners.map((corner) => pointOf(corner, start.rightX, -1, start.row)));
  if (run.stitches === 0) run.ending = 'bound off';
  return null;
}

/** Stitches come or go at once along the whole row, half of them at each edge of the outline. */
export function widen(run: RunBuilder, count: number): void {
  run.stitches += count;
  run.leftX -= count;
  run.rightX += count;
  if (run.rows.length === 0 && run.row === run.startRow) {
    run.startStitches = run.stitches;
    run.left = [];
    run.right = [];
  }
  run.left.push({x: run.leftX, row: run.row});
  run.right.push({x: run.rightX, row: run.row});
}

export function finishRun(run: RunBuilder): Run {
  const {name, inner, startRow, startStitches, rows, left, right, ending, stitches} = run;
  return {name, inner, startRow, startStitches, rows, left, right, ending, endStitches: stitches};
}

function pointOf({row, inward}: Corner, x: number, towards: 1 | -1, from: number): Point {
  return {x: x + towards * inward, row: from + row};
}

function workRow(run: RunBuilder, left: EdgeWork, right: EdgeWork): Trouble | null {
  const live = (run.rightX - run.leftX) / 2;
  const works = left.kind.startsWith('evenly') ? [left] : [left, right];
  const gone = sum(works, ['bind off', 'leave']);
  const decreases = sum(works, ['decrease', 'evenly decrease']);
  const increases = sum(works, ['increase', 'evenly increase']);
  if (gone > live)
    return tooMany(live, gone, works.some(({kind}) => kind === 'leave') ? 'left waiting' : 'bound off');
  if (gone + decreases * 2 > live) return tooManyDecreases(live - gone, decreases);
  if (live === 0 && increases > 0) {
    return {message: '`0` stitches are left to increase on', hint: 'Check the steps before it.'};
  }
  const before = run.stitches;
  run.leftX += inwardOf(left);
  run.rightX -= inwardOf(right);
  run.stitches += increases - decreases - sum(works, ['bind off']);
  run.row += 1;
  run.rows.push({
    number: run.row,
    left,
    right,
    before,
    after: run.stitches,
    leftX: run.leftX,
    rightX: run.rightX,
  });
  return null;
}

/** Half stitches by which the edge moves towards the middle. */
function inwardOf({kind, count}: EdgeWork): number {
  if (kind === 'plain') return 0;
  if (kind === 'evenly decrease') return count;
  if (kind === 'evenly increase') return -count;
  return kind === 'increase' ? -2 * count : 2 * count;
}

function sum(works: readonly EdgeWork[], kinds: readonly EdgeWork['kind'][]): number {
  return works.filter(({kind}) => kinds.includes(kind)).reduce((total, {count}) => total + count, 0);
}

function tooMany(live: number, gone: number, done: string): Trouble {
  return {
    message: `\`${plural(live, 'stitch', 'stitches')}\` ${live === 1 ? 'is' : 'are'} left, \`${gone}\` are to be ${done}`,
    hint: 'Take fewer here, or check the counts of the steps before it.',
  };
}

function tooManyDecreases(live: number, decreases: number): Trouble {
  return {
    message: `\`${plural(live, 'stitch', 'stitches')}\` ${live === 1 ? 'is' : 'are'} left, and \`${plural(decreases, 'decrease')}\` would take \`${decreases * 2}\``,
    hint: 'Decrease fewer times, or check the counts of the steps before it.',
  };
}
