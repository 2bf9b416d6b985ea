import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {isUnread} from './parts/is-unread.ts';
import {isUnfinished} from './parts/items-to-complete.ts';

/**
 * Every item is finished before the binder is posted.
 *
 * Why: an item in work prints like any other leaf, so nothing on paper would say that it is not ready. Until it is
 * finished, this is the one finding about it that counts: of a planned item nothing more is asked, and what one in
 * work still lacks is only worth knowing.
 *
 * Example: `status: in work`, or no status at all.
 */
export const unfinishedItem: Rule = {
  id: 'unfinished-item',
  summary: 'every item is finished before the binder is posted',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      if (!isUnfinished(item) || isUnread(binder, item, ['status'])) continue;
      const {status} = item.fields;
      const isStated = status !== undefined;
      report({
        file: item.file,
        ...(isStated
          ? scalarAt(item.places, ['status'], status)
          : {place: valueAt(item.places, ['requirement'])}),
        message: isStated ? `\`${item.id}\` is \`${status}\`` : `\`${item.id}\` does not say how far it is`,
        hint: isStated
          ? 'Write `status: finished` when it is ready to be posted.'
          : 'Write `status: planned`, `in work` or `finished`.',
      });
    }
  },
};
