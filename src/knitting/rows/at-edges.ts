import type {Span} from '../../support/result.ts';
import type {Extent, Step, WorkStep} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';
import {makeTogether} from './stitch-makers.ts';
import {asSet, kfb, makeOne, pfb} from './stitches.ts';

export interface EdgeWork {
  readonly change: 'increase' | 'decrease' | 'make';
  readonly where: 'start' | 'end' | 'both';
  readonly span: Span;
}

/** `Knit, dec 1 st at each end`: the steps of the row with the edge stitches put where they belong. */
export function workAtEdges(steps: readonly Step[], edges: readonly EdgeWork[]): Step[] {
  return edges.reduce<Step[]>((row, edge) => workAt(row, edge), [...steps]);
}

function workAt(row: Step[], {change, where, span}: EdgeWork): Step[] {
  const last = row.at(-1);
  const isPurled = last?.kind === 'work' && last.stitch.hand === 'purl';
  const stitch = edgeStitch(change, isPurled);
  const edge = workStep(stitch, {kind: 'times', count: {values: [1], span}}, span);
  const base = row.length > 0 ? row : [workStep(asSet, {kind: 'to end'}, span)];
  const atStart = where === 'end' ? [] : [edge];
  if (where === 'start') return [...atStart, ...base];
  return [
    ...atStart,
    ...base.map((step, index) => (index === base.length - 1 ? leave(step, stitch.uses, span) : step)),
    edge,
  ];
}

function edgeStitch(change: EdgeWork['change'], isPurled: boolean): Stitch {
  if (change === 'make') return makeOne;
  if (change === 'increase') return isPurled ? pfb : kfb;
  return makeTogether(isPurled ? 'purl' : 'knit', 2, false);
}

/** The last step, worked to the end, now leaves the edge stitches. */
function leave(step: Step, count: number, span: Span): Step {
  if (count === 0 || !('extent' in step) || step.extent.kind !== 'to end') return step;
  return {...step, extent: {kind: 'to last', count: {values: [count], span}}};
}

function workStep(stitch: Stitch, extent: Extent, span: Span): WorkStep {
  return {kind: 'work', stitch, extent, yarn: null, isDoubtful: false, span};
}
