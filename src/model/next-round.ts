import type {Binder} from './binder.ts';

/** The round that is posted next: one more than the last that was sent or answered; 0 is the first submission. */
export function nextRound({sentRounds, assessments}: Binder): number {
  const known = [...sentRounds, ...assessments].map(({round}) => round + 1);
  return Math.max(0, ...known);
}

/** The last posting that the assessors have not answered; null when all are. */
export function unansweredRound({sentRounds, assessments}: Binder) {
  const answered = new Set(assessments.map(({round}) => round));
  return sentRounds.findLast(({round}) => !answered.has(round)) ?? null;
}
