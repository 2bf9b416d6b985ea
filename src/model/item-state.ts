import {type Binder, type Item, itemsById} from './binder.ts';
import {lastResults} from './last-results.ts';
import {sheetsInBinder} from './leaves-in-binder.ts';

/** How far a requirement has come, in the order in which a year of work goes through them. */
export const itemStates = ['planned', 'in work', 'finished', 'printed', 'sent', 'passed', 'rework'] as const;
export type ItemState = (typeof itemStates)[number];

/** How many requirements are in each state. */
export type StateCounts = Readonly<Record<ItemState, number>>;

export function countStates(states: Iterable<ItemState>): StateCounts {
  const counts = {planned: 0, 'in work': 0, finished: 0, printed: 0, sent: 0, passed: 0, rework: 0};
  for (const state of states) counts[state]++;
  return counts;
}

/**
 * The state of every requirement of the syllabus, by id. What the assessors answered and what was sent decide; then
 * what was recorded as printed; then the status in the item's front matter, which is all there is while the work goes on.
 * An item that does not say how far it is counts as in work.
 */
export function statesOf(binder: Binder): ReadonlyMap<string, ItemState> {
  const results = lastResults(binder);
  const printed = sheetsInBinder(binder.ledger.entries);
  const items = itemsById(binder);
  return new Map(
    binder.syllabus.sections
      .flatMap(({requirements}) => requirements)
      .map(({id}) => [id, stateOf(items.get(id), id)] as const),
  );

  function stateOf(item: Item | undefined, id: string): ItemState {
    const result = results.get(id);
    const sent = binder.sentRounds.findLast(({items: posted}) => posted[id] !== undefined);
    if (sent && sent.round > (result?.assessment.round ?? -1)) return 'sent';
    if (result) return result.result;
    const status = item === undefined ? 'planned' : (item.fields.status ?? 'in work');
    return status === 'finished' && printed.has(id) ? 'printed' : status;
  }
}

/** The ids of the items that wait to be sent again, in the order of the syllabus. */
export function waitingItems(binder: Binder): readonly string[] {
  const items = itemsById(binder);
  return [...statesOf(binder)].filter(([id, state]) => state === 'rework' && items.has(id)).map(([id]) => id);
}
