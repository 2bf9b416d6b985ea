import type {Span} from '../../support/result.ts';
import type {Extent, Sized, StatedCount, Step, WrittenRow} from './row-syntax.ts';
import {makeTogether} from './stitch-makers.ts';
import {writeExtent, writeSteps} from './write-rows.ts';

/** One count of a row changed, as it is written and as it would be. */
export interface SlipChange {
  readonly row: WrittenRow;
  readonly span: Span;
  readonly was: string;
  /** Null: left out. */
  readonly would: string | null;
  /** The count stands there in the text; otherwise a stitch is left out or worked twice. */
  readonly isWritten: boolean;
}

/** Every way of changing one count of the row by `by`, up or down, one by one as they are asked for. */
export function* slipChanges(row: WrittenRow, by: number): Generator<SlipChange> {
  for (const step of everyStep(row.steps)) {
    for (const distance of [-by, by]) {
      for (const {other, isWritten, was, would} of changesOf(step, distance)) {
        const steps = replaced(row.steps, step, other);
        yield {row: {...row, steps}, span: step.span, was, would, isWritten};
      }
    }
  }
  for (const stated of row.stated) yield* changedStatements(row, stated, by);
}

interface StepChange {
  /** Null: left out. */
  readonly other: Step | null;
  readonly isWritten: boolean;
  readonly was: string;
  readonly would: string | null;
}

function changesOf(step: Step, distance: number): StepChange[] {
  const put = (other: Step, isWritten = true): StepChange => ({
    other,
    isWritten,
    was: writeSteps([step]),
    would: writeSteps([other]),
  });
  const changes: StepChange[] = [];
  if (step.kind === 'work') changes.push(...changedStitch(step, distance).map((other) => put(other)));
  if ('extent' in step) {
    const isWritten = step.kind !== 'work' || isNumberWritten(step);
    for (const extent of changedExtents(step.extent, distance)) {
      const other = {...step, extent};
      const isShort = step.kind === 'work' || step.kind === 'bind off';
      const words = {was: writeExtent(step.extent), would: writeExtent(extent)};
      changes.push(isShort ? put(other, isWritten) : {other, isWritten: true, ...words});
    }
    if (step.kind === 'work' && distance === -1 && isOnce(step.extent)) {
      changes.push({other: null, isWritten: false, was: writeSteps([step]), would: null});
    }
  }
  if (step.kind === 'cast on' || step.kind === 'evenly') {
    changes.push(...changedCounts(step.count, distance).map((count) => put({...step, count})));
  }
  return changes;
}

/** `k2tog` is one letter from `k3tog`. */
function changedStitch(step: Extract<Step, {kind: 'work'}>, distance: number): Step[] {
  const {uses, hand, face, id} = step.stitch;
  if (!/^[kp]\d+tog( tbl)?$/.test(id) || uses + distance < 2 || face.shape !== 'decrease') return [];
  if (hand !== 'knit' && hand !== 'purl') return [];
  return [{...step, stitch: makeTogether(hand, uses + distance, face.twisted)}];
}

function changedExtents(extent: Extent, distance: number): Extent[] {
  switch (extent.kind) {
    case 'times':
    case 'more':
    case 'to last':
      return changedCounts(extent.count, distance).map((count) => ({...extent, count}));
    case 'to landmark': {
      const {before, past} = extent;
      return [
        ...(before ? changedCounts(before, distance).map((count) => ({...extent, before: count})) : []),
        ...(past ? changedCounts(past, distance).map((count) => ({...extent, past: count})) : []),
      ];
    }
    case 'to end':
    case 'as fits':
      return [];
  }
}

/** The count of every size changed alone; of a single number, that number. */
function changedCounts(count: Sized, distance: number): Sized[] {
  return count.values.flatMap((value, index) => {
    if (value + distance < 1) return [];
    return [{...count, values: count.values.with(index, value + distance)}];
  });
}

function changedStatements(row: WrittenRow, stated: StatedCount, by: number): SlipChange[] {
  return [-by, by].flatMap((distance) =>
    changedCounts(stated.count, distance).map((count) => ({
      row: {...row, stated: row.stated.map((each) => (each === stated ? {...stated, count} : each))},
      span: stated.span,
      was: `${stated.count.values.join(', ')} sts`,
      would: `${count.values.join(', ')} sts`,
      isWritten: true,
    })),
  );
}

function* everyStep(steps: readonly Step[]): Generator<Step> {
  for (const step of steps) {
    yield step;
    if (step.kind === 'again') continue;
    if ('steps' in step) yield* everyStep(step.steps);
    if (step.kind === 'either') yield* everyStep(step.ways[0]);
  }
}

/** The steps with one of them put differently, wherever it stands; without it where `other` is null. */
function replaced(steps: readonly Step[], target: Step, other: Step | null): readonly Step[] {
  return steps.flatMap((step): readonly Step[] => {
    if (step === target) return other ? [other] : [];
    if ('steps' in step) return [{...step, steps: replaced(step.steps, target, other)}];
    if (step.kind !== 'either') return [step];
    const [first, second] = step.ways;
    return [{...step, ways: [replaced(first, target, other), replaced(second, target, other)]}];
  });
}

function isOnce(extent: Extent): boolean {
  return extent.kind === 'times' && extent.count.values.length === 1 && extent.count.values[0] === 1;
}

/** A bare stitch has the place of the whole step for the place of its count. */
function isNumberWritten({extent, span}: Extract<Step, {kind: 'work'}>): boolean {
  return extent.kind !== 'times' || extent.count.span.start !== span.start;
}
