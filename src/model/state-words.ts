import type {RequirementStatus} from './binder-status.ts';
import type {ItemState, StateCounts} from './item-state.ts';

/** The states as they are shown: those nearest to the end of the work first. */
export const statesFromTheEnd: readonly ItemState[] = [
  'passed',
  'sent',
  'printed',
  'finished',
  'in work',
  'rework',
  'planned',
];

export function stateInWords(state: ItemState): string {
  return state === 'rework' ? 'to rework' : state;
}

/** `16 passed, 2 to rework`. */
export function countsInWords(counts: StateCounts): string {
  const parts = statesFromTheEnd
    .filter((state) => counts[state] > 0)
    .map((state) => `${counts[state]} ${stateInWords(state)}`);
  return parts.join(', ') || 'nothing asked';
}

/** `40 words, 1 citation`; where nothing is missing, that and what to do next. */
export function missingInWords({state, missing}: Pick<RequirementStatus, 'state' | 'missing'>): string {
  if (missing.length > 0) return missing.map(({inShort}) => inShort).join(', ');
  const next = nextStep(state);
  return next === null ? 'nothing' : `nothing: ${next}`;
}

/** The same with the state before it: `to rework, missing: 40 words`. Of an item that is not open, the state alone. */
export function stateAndMissing(status: Pick<RequirementStatus, 'state' | 'missing'>): string {
  const words = stateInWords(status.state);
  if (status.missing.length > 0) return `${words}, missing: ${missingInWords(status)}`;
  const next = nextStep(status.state);
  return next === null ? words : `${words}, nothing missing: ${next}`;
}

/** What to do with an item that lacks nothing; null where nothing is to be done. */
export function nextStep(state: ItemState): string | null {
  if (state === 'in work') return 'write `status: finished`';
  return state === 'rework' ? 'print it and send it again' : null;
}
