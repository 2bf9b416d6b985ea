import type {Binder, Item} from '../../model/binder.ts';
import type {Rework} from '../../model/schema/item-fields.ts';

/** The latest rework that the item's front matter records; null for a first submission. */
export function latestRework(item: Item): Rework | null {
  return item.fields.rework.reduce<Rework | null>(
    (latest, rework) => (latest === null || rework.round > latest.round ? rework : latest),
    null,
  );
}

/** The round in which the item is posted again: its own latest one, or the one after the assessors' last answer to it. */
export function resubmissionRound(binder: Binder, item: Item): number {
  const answered = binder.assessments
    .filter(({results}) => results[item.id] !== undefined)
    .map(({round}) => round + 1);
  return latestRework(item)?.round ?? Math.max(1, ...answered);
}
