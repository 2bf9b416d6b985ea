import {itemsById} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {isUnfinished} from './parts/items-to-complete.ts';

/**
 * An item is finished only after the items it is tied to.
 *
 * Why: an answer refers to what the swatch shows; if the swatch is worked later, the answer describes knitting that
 * does not exist, and the assessors hold the two side by side.
 *
 * Example: `Q-03` is `finished` and tied to `S-07`, which is `planned`. A tied item that does not exist, or that
 * states no status, is a finding of its own.
 */
export const tiedItemUnfinished: Rule = {
  id: 'tied-item-unfinished',
  summary: 'an item is finished only after the items it is tied to',
  severity: 'warning',
  check(binder, report) {
    const items = itemsById(binder);
    for (const item of items.values()) {
      const {status} = item.fields;
      if (status === undefined || isUnfinished(item)) continue;
      for (const id of item.requirement?.tiedTo ?? []) {
        const tied = items.get(id);
        const tiedStatus = tied?.fields.status;
        if (!tied || !tiedStatus || !isUnfinished(tied)) continue;
        report({
          file: item.file,
          ...scalarAt(item.places, ['status'], status),
          message: `\`${item.id}\` is \`${status}\`, but \`${id}\`, to which it is tied, is \`${tiedStatus}\``,
          hint: `Finish \`${id}\` first, then read this item again beside it.`,
          related: [
            {
              file: tied.file,
              place: tied.places.value(['status']),
              message: `\`${id}\` says here how far it is`,
            },
          ],
        });
      }
    }
  },
};
