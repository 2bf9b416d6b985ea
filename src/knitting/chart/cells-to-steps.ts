import {type Folded, foldRepeats} from '../fold-repeats.ts';
import type {Extent, RepeatStep, Sized, Step} from '../rows/row-syntax.ts';
import {writeSteps} from '../rows/write-rows.ts';
import type {ChartCell} from './chart-grid.ts';
import {cellText, type WorkingOrder} from './working-order.ts';

const nowhere = {start: 0, end: 0};

/** The stitches as a knitter writes them: runs counted, passages that come again in brackets, the repeat in stars. */
export function cellsToSteps({cells, repeat, turn}: WorkingOrder): Step[] {
  const steps = repeat ? withStar(cells, repeat) : fold(cells);
  return turn ? [...steps, {kind: 'turn', how: turn, span: nowhere}] : steps;
}

function withStar(
  cells: readonly ChartCell[],
  {from, to}: {readonly from: number; readonly to: number},
): Step[] {
  const pass = cells.slice(from, to);
  const uses = usesOf(pass);
  if (uses === 0) return fold(cells);
  const texts = cells.map(cellText);
  const isPass = (at: number) =>
    at >= 0 && pass.every((_, index) => texts[at + index] === texts[from + index]);
  let [first, last] = [from, to];
  while (isPass(first - pass.length)) first -= pass.length;
  while (isPass(last)) last += pass.length;
  const after = cells.slice(last);
  const left = usesOf(after);
  const star: RepeatStep = {
    kind: 'repeat',
    style: 'star',
    steps: fold(pass),
    extent: left === 0 ? {kind: 'to end'} : {kind: 'to last', count: sized(left)},
    span: nowhere,
  };
  return [...fold(cells.slice(0, first)), star, ...fold(after)];
}

function fold(cells: readonly ChartCell[]): Step[] {
  const runs = runsOf(cells);
  const steps = new Map(runs.map((step) => [writeSteps([step]), step]));
  return unfold(foldRepeats(runs.map((step) => writeSteps([step]))), steps);
}

/** Equal neighbours counted together. */
function runsOf(cells: readonly ChartCell[]): Step[] {
  const shown = cells.filter((cell, index) => !isLoop(cell, cells[index - 1]));
  const runs: Step[] = [];
  for (let at = 0; at < shown.length; ) {
    const cell = shown[at];
    if (!cell?.step) break;
    const text = cellText(cell);
    let end = at + 1;
    for (let next = shown[end]; next && cellText(next) === text; next = shown[end]) end += 1;
    runs.push(run(cell.step, end - at));
    at = end;
  }
  return runs;
}

/** The loop that binding off leaves on the needle is part of the bind-off, and not written again. */
function isLoop({step, uses, makes}: ChartCell, before: ChartCell | undefined): boolean {
  const isPlain = step?.kind === 'work' && step.stitch.kind === 'plain' && uses === 1 && makes === 1;
  return isPlain && before?.step?.kind === 'bind off';
}

function unfold(folded: readonly Folded<string>[], steps: ReadonlyMap<string, Step>): Step[] {
  return folded.flatMap((part) => {
    if (part.kind === 'one') return steps.get(part.value) ?? [];
    return [bracket(unfold(part.passage, steps), part.times)];
  });
}

function run(step: Step, times: number): Step {
  if (step.kind === 'work' || step.kind === 'bind off') return {...step, extent: timesExtent(times)};
  if (step.kind === 'cast on') return {...step, count: sized(times)};
  return times === 1 ? step : bracket([step], times);
}

function bracket(steps: readonly Step[], times: number): Step {
  return {kind: 'repeat', style: 'bracket', steps, extent: timesExtent(times), span: nowhere};
}

function timesExtent(times: number): Extent {
  return {kind: 'times', count: sized(times)};
}

function sized(value: number): Sized {
  return {values: [value], span: nowhere};
}

function usesOf(cells: readonly ChartCell[]): number {
  return cells.reduce((sum, {uses}) => sum + uses, 0);
}
