import type {EdgeStep, Where} from './piece-syntax.ts';

/** What happens at one edge of one row. `evenly` happens across the row: the count is that of the whole row. */
export interface EdgeWork {
  readonly kind:
    | 'plain'
    | 'bind off'
    | 'leave'
    | 'decrease'
    | 'increase'
    | 'evenly decrease'
    | 'evenly increase';
  readonly count: number;
}

/** After `row` rows of a step the edge lies `inward` half stitches nearer the middle than at its start. */
export interface Corner {
  readonly row: number;
  readonly inward: number;
}

/** One edge of a step: its work row by row, and the corners of its outline, in order. */
export interface EdgePlan {
  readonly work: readonly EdgeWork[];
  readonly corners: readonly Corner[];
}

export type Edge = 'left' | 'right';

/** Where a step begins: the number of its first row, whether it goes round, and which edge faces the divide. */
export interface Setting {
  readonly firstRow: number;
  readonly isRound: boolean;
  readonly inner: Edge | null;
}

/** A step whose length is already counted in rows. */
export type CountedStep = Exclude<EdgeStep, {readonly kind: 'work length'}>;

const plain: EdgeWork = {kind: 'plain', count: 0};

/**
 * How `step` goes along `edge`, the edges being those seen from the right side, where right-side rows (the odd ones)
 * begin at the right. Stitches are bound off at the beginning of a row, so an edge is bound off in one of two rows, and
 * both edges of the outline are drawn at the first. Shaping every k-th row falls on the last right-side row of each k
 * rows, or on the last row when k is odd or the work is round. Common practice, no source.
 */
export function planEdge(step: CountedStep, edge: Edge, setting: Setting): EdgePlan {
  switch (step.kind) {
    case 'work':
      return {work: Array.from({length: step.rows}, () => plain), corners: [{row: step.rows, inward: 0}]};
    case 'shape':
      return planShape(step, edge, setting);
    case 'bind off at beginnings':
      return planBeginnings(step, edge, setting);
    case 'bind off at edge': {
      const isHere = takesPart(step.where, edge, setting.inner);
      const inward = isHere ? step.count * 2 : 0;
      return {
        work: pairOf({kind: 'bind off', count: step.count}, edge, setting, isHere),
        corners: [
          {row: 0, inward},
          {row: 2, inward},
        ],
      };
    }
    case 'steps': {
      const isHere = takesPart(step.where, edge, setting.inner);
      const kind = step.how === 'bind off' ? 'bind off' : 'leave';
      const inward = isHere ? step.steps.reduce((sum, count) => sum + count * 2, 0) : 0;
      return {
        work: step.steps.flatMap((count) => pairOf({kind, count}, edge, setting, isHere)),
        corners: [{row: step.steps.length * 2, inward}],
      };
    }
  }
}

/** How many rows the step takes. */
export function rowsOf(step: CountedStep): number {
  switch (step.kind) {
    case 'work':
      return step.rows;
    case 'shape':
      return step.times === 0
        ? 0
        : step.isOnNext
          ? (step.times - 1) * step.every + 1
          : step.times * step.every;
    case 'bind off at beginnings':
      return step.rows;
    case 'bind off at edge':
      return 2;
    case 'steps':
      return step.steps.length * 2;
  }
}

export function takesPart(where: Where, edge: Edge, inner: Edge | null): boolean {
  if (where === 'each edge' || where === 'evenly' || where === edge) return true;
  if (where === 'neck') return edge === inner;
  return where === 'side' && edge !== inner;
}

function planShape(step: CountedStep & {kind: 'shape'}, edge: Edge, setting: Setting): EdgePlan {
  const length = rowsOf(step);
  const isHere = takesPart(step.where, edge, setting.inner);
  const kind = step.where === 'evenly' ? (`evenly ${step.change}` as const) : step.change;
  // Half of what an even spread takes goes to each edge of the outline.
  const each =
    (step.where === 'evenly' ? step.count : step.count * 2) * (step.change === 'decrease' ? 1 : -1);
  const shaped = new Set(isHere ? shapingRows(step, setting) : []);
  return {
    work: Array.from({length}, (_, row) => (shaped.has(row) ? {kind, count: step.count} : plain)),
    corners: [{row: length, inward: shaped.size * each}],
  };
}

function shapingRows(step: CountedStep & {kind: 'shape'}, {firstRow, isRound}: Setting): readonly number[] {
  const {every, times, isOnNext} = step;
  if (isOnNext) return Array.from({length: times}, (_, index) => index * every);
  const isLastRight = (firstRow + every - 1) % 2 === 1;
  const back = isRound || every % 2 === 1 || isLastRight ? 1 : 2;
  return Array.from({length: times}, (_, index) => (index + 1) * every - back);
}

function planBeginnings(
  {count, rows: length}: CountedStep & {kind: 'bind off at beginnings'},
  edge: Edge,
  {firstRow}: Setting,
): EdgePlan {
  const corners: Corner[] = [];
  const work: EdgeWork[] = [];
  let inward = 0;
  for (let row = 0; row < length; row++) {
    const isHere = beginsAt(edge, firstRow + row);
    work.push(isHere ? {kind: 'bind off', count} : plain);
    const isPairStart = row % 2 === 0;
    if (isPairStart && (row + 1 < length || isHere)) {
      inward += count * 2;
      corners.push({row, inward});
    }
    if (!isPairStart || row + 1 === length) corners.push({row: row + 1, inward});
  }
  return {work, corners};
}

function pairOf(work: EdgeWork, edge: Edge, {firstRow}: Setting, isHere: boolean): readonly EdgeWork[] {
  // A bind-off begins a row, a short row ends one before its edge.
  const isFirst = beginsAt(edge, firstRow) === (work.kind === 'bind off');
  return [isHere && isFirst ? work : plain, isHere && !isFirst ? work : plain];
}

/** Right-side rows begin at the right edge, wrong-side rows at the left. */
function beginsAt(edge: Edge, row: number): boolean {
  return (row % 2 === 1) === (edge === 'right');
}
