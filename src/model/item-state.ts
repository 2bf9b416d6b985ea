import {type Binder, type Item, itemsById} from './binder.ts';
import {lastResults} from './last-results.ts';
import {leavesInBinder, sheetOfLeaf} from './leaves-in-binder.ts';

/** How far a requirement has come, in the order in which a year of work goes through them. */
export const itemStates = ['planned', 'in work', 'finished', 'printed', 'sent', 'passed', 'rework'] as const;
export type ItemState = (typeof itemStates)[number];

/**
 * The state of every requirement of the syllabus, by id. What the assessors answered and what was sent decide; then
 * what was recorded as printed; then the status in the item's front matter, which is all there is while the work goes on.
 */
export function statesOf(binder: Binder): ReadonlyMap<string, ItemState> {
  const results = lastResults(binder);
  const printed = new Set([...leavesInBinder(binder.ledger.entries).keys()].map(sheetOfLeaf));
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
    const status = item?.fields.status ?? 'planned';
    return status === 'finished' && printed.has(id) ? 'printed' : status;
  }
}
