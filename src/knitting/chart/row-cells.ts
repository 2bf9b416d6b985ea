import {expandRow, type StitchOperation} from '../rows/expand-row.ts';
import type {Side} from '../rows/face.ts';
import type {ProvedRow} from '../rows/prove-rows.ts';
import type {Sized, Step} from '../rows/row-syntax.ts';
import {knit} from '../rows/stitches.ts';
import {type ChartCell, type ChartTurn, unworked} from './chart-grid.ts';
import {faceOfStep} from './step-face.ts';

/** The cells of one row, or of the part of it between two turns, in the order of working. */
export interface WorkedCells {
  readonly side: Side;
  readonly cells: readonly ChartCell[];
  /** Cells of one pass of the repeat, `to` exclusive. */
  readonly repeat: {readonly from: number; readonly to: number} | null;
  /** Null unless stitches are left unworked behind the last. */
  readonly turn: ChartTurn | null;
}

/** Stitches on the needles: `left` are still to be worked. */
export interface NeedleState {
  readonly left: number;
  readonly right: number;
}

/** What the row works, with the stitches that it leaves unworked, and the needles as the next row finds them. */
export function cellsOfRow(
  row: ProvedRow,
  needles: NeedleState,
): {readonly parts: readonly WorkedCells[]; readonly needles: NeedleState} {
  const parts: WorkedCells[] = [];
  let {left, right} = left0(row, needles);
  let side = row.side;
  let cells: ChartCell[] = [];
  let waiting = right;
  const endPart = (turn: ChartTurn | null) => {
    const before = Array.from({length: waiting}, () => unworked);
    const after = Array.from({length: Math.max(0, left)}, () => unworked);
    parts.push({
      side,
      cells: [...before, ...cells, ...after],
      repeat: null,
      turn: after.length > 0 ? turn : null,
    });
    cells = [];
  };
  let endsWithTurn = false;
  for (const operation of expandRow(row)) {
    endsWithTurn = operation.step.kind === 'turn';
    if (operation.step.kind === 'turn') {
      endPart(operation.step.how);
      side = side === 'RS' ? 'WS' : 'RS';
      [left, right] = [right, left];
      waiting = right;
      continue;
    }
    const cell = cellOf(operation);
    if (!cell) continue;
    cells.push(cell);
    left -= cell.uses;
    right += cell.makes;
  }
  if (!endsWithTurn) endPart(null);
  const [only] = parts;
  const isWhole = parts.length === 1 && only && !endsWithTurn && waiting === 0;
  return {
    parts: isWhole ? [{...only, repeat: repeatOf(row)}] : parts,
    needles: endsWithTurn ? {left, right} : {left: left + right, right: 0},
  };
}

/** After a row that does not come out, the proof says how many there are. */
function left0(row: ProvedRow, {left, right}: NeedleState): NeedleState {
  return left + right === row.in ? {left, right} : {left: row.in, right: 0};
}

/** Null for what makes no mark on a chart: markers, and yarn that is only moved. */
function cellOf({step: written, uses, makes, side}: StitchOperation): ChartCell | null {
  if (uses === 0 && makes === 0) return null;
  const isLoop = written.kind === 'bind off' && makes > 0;
  const step = isLoop ? loopOf(written) : written;
  const face = faceOfStep(step, side, uses, makes);
  return {kind: 'worked', step: workedOnce(step), face, uses, makes, squares: Math.max(1, makes)};
}

/** The loop that binding off leaves on the needle has been knitted. */
function loopOf({span, extent}: Extract<Step, {kind: 'bind off'}>): Step {
  return {kind: 'work', stitch: knit, extent, yarn: null, isDoubtful: false, span};
}

/** The step as it stands for one square. */
export function workedOnce(step: Step): Step {
  const count: Sized = {values: [1], span: step.span};
  if (step.kind === 'work' || step.kind === 'bind off') return {...step, extent: {kind: 'times', count}};
  return step.kind === 'cast on' ? {...step, count} : step;
}

/** The pass of `*…; rep from *` that lies furthest to the right of the chart. */
function repeatOf(row: ProvedRow): WorkedCells['repeat'] {
  let at = 0;
  let found: WorkedCells['repeat'] = null;
  for (const planned of row.plan ?? []) {
    const length = lengthOf(row, planned);
    const {step} = planned;
    if (step.kind === 'repeat' && step.style === 'star' && planned.times > 0) {
      const pass = length / planned.times;
      const from = row.side === 'RS' ? at : at + length - pass;
      if (pass > 0 && (row.side === 'WS' || !found)) found = {from, to: from + pass};
    }
    at += length;
  }
  return found;
}

function lengthOf(row: ProvedRow, planned: NonNullable<ProvedRow['plan']>[number]): number {
  let length = 0;
  for (const {uses, makes} of expandRow({...row, plan: [planned]})) if (uses > 0 || makes > 0) length += 1;
  return length;
}
