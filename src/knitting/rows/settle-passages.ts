import {type SettledReadings, waysToRead} from './readings.ts';
import type {Step, WrittenPattern} from './row-syntax.ts';

/** The pattern with every passage that can be meant in two ways put as the readings have it; itself where none is. */
export function settlePassages(pattern: WrittenPattern, readings: SettledReadings): WrittenPattern {
  if (!pattern.entries.some((entry) => entry.kind === 'row' && hasEither(entry.steps))) return pattern;
  const entries = pattern.entries.map((entry) =>
    entry.kind === 'row' && hasEither(entry.steps)
      ? {...entry, steps: settled(entry.steps, readings)}
      : entry,
  );
  return {...pattern, entries};
}

function hasEither(steps: readonly Step[]): boolean {
  return steps.some((step) => step.kind === 'either' || ('steps' in step && hasEither(step.steps)));
}

function settled(steps: readonly Step[], readings: SettledReadings): readonly Step[] {
  return steps.flatMap((step): readonly Step[] => {
    if (step.kind === 'either') {
      const isOther = readings[step.doubt] !== waysToRead[step.doubt][0];
      return settled(step.ways[isOther ? 1 : 0], readings);
    }
    return 'steps' in step ? [{...step, steps: settled(step.steps, readings)}] : [step];
  });
}
