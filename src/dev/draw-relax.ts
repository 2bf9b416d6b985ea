import type {Fabric, Loop} from './draw-fabric.ts';

const sweeps = 700;
const overRelaxation = 1.5;

export interface Stiffness {
  /** How strongly a loop stands above those it came from, against the pull of its neighbours (1). */
  readonly upright: number;
  /** How strongly neighbours in a row keep to one height, against the height of a row (1). */
  readonly level: number;
}

/**
 * Lets the loops find their places: neighbours a stitch apart, each loop a row above its parents. What shaping does to
 * cloth (slanting edges, scallops, wedges) follows from that. The rule of springs is common practice, no source.
 */
export function relax(fabric: Fabric, stiffness: Stiffness): void {
  const loops = fabric.rows.flat();
  for (let sweep = 0; sweep < sweeps; sweep++) {
    for (const loop of loops) {
      loop.x += overRelaxation * (restingX(loop, stiffness.upright) - loop.x);
      if (loop.row > 0) loop.y += overRelaxation * (restingY(loop, stiffness.level) - loop.y);
    }
  }
}

function restingX(loop: Loop, upright: number): number {
  const mean = startMean();
  if (loop.left !== null) mean.add(loop.left.x + (loop.left.width + loop.width) / 2, 1);
  if (loop.right !== null) mean.add(loop.right.x - (loop.right.width + loop.width) / 2, 1);
  if (loop.parents.length > 0 && loop.travel === 0) mean.add(middle(loop.parents), upright);
  for (const child of loop.children) {
    if (child.travel === 0)
      mean.add(child.x + (loop.x - middle(child.parents)), upright / child.parents.length);
  }
  return mean.value(loop.x);
}

function restingY(loop: Loop, level: number): number {
  const mean = startMean();
  for (const beside of [loop.left, loop.right]) if (beside !== null) mean.add(beside.y, level);
  for (const parent of loop.parents) mean.add(parent.y + loop.height, 1 / loop.parents.length);
  for (const child of loop.children) mean.add(child.y - child.height, 1 / child.parents.length);
  return mean.value(loop.y);
}

function middle(loops: readonly Loop[]): number {
  return loops.reduce((sum, loop) => sum + loop.x, 0) / loops.length;
}

function startMean() {
  let sum = 0;
  let weight = 0;
  return {
    add(value: number, share: number): void {
      sum += value * share;
      weight += share;
    },
    value: (otherwise: number): number => (weight === 0 ? otherwise : sum / weight),
  };
}
