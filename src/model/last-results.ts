import type {Assessment, Binder} from './binder.ts';

/** What the last answer that names an item says of it. */
export interface LastResult {
  readonly assessment: Assessment;
  readonly result: 'passed' | 'rework';
}

/** The last answer about each item that an answer names, by id. */
export function lastResults(binder: Binder): ReadonlyMap<string, LastResult> {
  const last = new Map<string, LastResult>();
  for (const assessment of [...binder.assessments].sort((a, b) => a.round - b.round)) {
    for (const [id, {result}] of Object.entries(assessment.results)) {
      if (result !== 'open') last.set(id, {assessment, result});
    }
  }
  return last;
}
