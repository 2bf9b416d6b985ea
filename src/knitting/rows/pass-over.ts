import type {Cursor} from './cursor.ts';
import type {Step, WorkStep} from './row-syntax.ts';
import type {StepList} from './step-list.ts';
import type {Stitch} from './stitch.ts';
import {s2kp, s2pp, sk2p, skp, spp} from './stitches.ts';

/** `sl1, k1, psso` and its like, by what is slipped and what is worked before it is passed over. */
const known: Readonly<Record<string, Stitch>> = {
  '1 k': skp,
  '1 p': spp,
  '1 k2tog': sk2p,
  '2 k': s2kp,
  '2 p': s2pp,
};

/**
 * Gathers what was worked since the slip (or the yarn over) into one step that loses `over` stitches again. `said` is
 * one, or as many as were slipped where the text speaks of stitches.
 */
export function passOver(cursor: Cursor, list: StepList, how: number | 'said', from: number): void {
  const {steps} = list;
  const isMany =
    how === 'said' &&
    /\b(?:both|all|them|st(?:itche)?s)\s+(?:back\s+)?over/i.test(cursor.written(cursor.spanFrom(from)));
  const start = passedFrom(steps, how === 'said' ? 1 : how);
  const first = steps[start];
  const over = how !== 'said' ? how : isMany && first?.kind === 'work' ? Math.max(1, countOf(first)) : 1;
  if (first?.kind !== 'work') {
    const span = cursor.spanFrom(from);
    cursor.complain(
      `\`${cursor.written(span)}\` finds no slipped stitch before it`,
      'Write the slip first, such as `sl1, k1, psso`.',
      span,
    );
    return;
  }
  const passage = splitSlip(first, over).concat(steps.slice(start + 1));
  steps.length = start;
  const spare = passage.length > 1 && countOf(first) > over ? passage.shift() : undefined;
  if (spare) steps.push(spare);
  const span = {start: passage[0]?.span.start ?? 0, end: cursor.spanFrom(from).end};
  const stitch = knownStitch(passage, over);
  steps.push(
    stitch
      ? {kind: 'work', stitch, extent: once(span), yarn: null, isDoubtful: false, span}
      : {kind: 'pass over', steps: passage, over, span},
  );
  list.clauseStart = Math.min(list.clauseStart, start);
}

function passedFrom(steps: readonly Step[], over: number): number {
  const slipped = steps.findLastIndex((step) => step.kind === 'work' && step.stitch.kind === 'slip');
  if (slipped >= 0) return slipped;
  const made = steps.findLastIndex((step) => step.kind === 'work' && step.stitch.id === 'yo');
  if (made >= 0 && made < steps.length - 1) return made;
  return steps.findLastIndex((step) => step.kind === 'work' && countOf(step) > over);
}

function splitSlip(step: WorkStep, over: number): Step[] {
  const spare = countOf(step) - over;
  if (step.stitch.kind !== 'slip' || spare <= 0) return [step];
  const of = (count: number): WorkStep => ({
    ...step,
    extent: {kind: 'times', count: {values: [count], span: step.span}},
  });
  return [of(spare), of(over)];
}

function knownStitch(passage: readonly Step[], over: number): Stitch | null {
  const [slipped, worked, ...more] = passage;
  if (slipped?.kind !== 'work' || worked?.kind !== 'work' || more.length > 0) return null;
  if (slipped.stitch.kind !== 'slip' || countOf(slipped) !== over || countOf(worked) !== 1) return null;
  return known[`${over} ${worked.stitch.id}`] ?? null;
}

function countOf(step: WorkStep): number {
  const {extent} = step;
  return extent.kind === 'times' && extent.count.values.length === 1 ? (extent.count.values[0] ?? 0) : 0;
}

function once(span: Step['span']): WorkStep['extent'] {
  return {kind: 'times', count: {values: [1], span}};
}
