import {type Binder, itemsById} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {nearestName} from '../support/nearest-name.ts';
import {notComputed} from './define-table.ts';

/** The attribute `attribute` names an item that the binder does not hold. */
export function noSuchItem(binder: Binder, attribute: string, id: string): ComputedTable {
  const near = nearestName(id, itemsById(binder).keys());
  return notComputed(
    `no item answers the requirement \`${id}\``,
    near
      ? `Write \`${attribute}=${near}\` if that is what was meant.`
      : `Write the id of an item, such as \`${attribute}=S-07\`.`,
  );
}
