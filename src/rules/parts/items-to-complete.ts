import type {Binder, Item} from '../../model/binder.ts';
import {areFieldsRead} from './is-unread.ts';

/** An item with the weight of what it still lacks. */
export interface ItemToComplete {
  readonly item: Item;
  readonly atMost: 'info' | undefined;
}

/**
 * The items that laws about completeness look at: nothing is asked of a planned item, what one in work still lacks is
 * only worth knowing, and everything is asked of the rest. An item without a status counts as in work; that it is not
 * finished is the finding of `unfinished-item`. Of an item whose front matter could not be taken apart nothing is asked
 * either: what was lost there is not missing.
 */
export function itemsToComplete(binder: Binder): readonly ItemToComplete[] {
  return binder.items
    .filter((item) => item.fields.status !== 'planned' && areFieldsRead(binder, item))
    .map((item) => ({item, atMost: isUnfinished(item) ? 'info' : undefined}));
}

/** Whether the candidate has not yet called the item finished. An item to rework was finished once. */
export function isUnfinished(item: Item): boolean {
  return [undefined, 'planned', 'in work'].includes(item.fields.status);
}
