import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {isUnread} from './parts/is-unread.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * A review says which source it reviews.
 *
 * Why: the head of the printed review, author, title and publisher, is made from that source.
 *
 * Example: a review without `reviews: "@ashdown2011"`. Where the syllabus lists `reviews` among the fields that must be
 * filled, this is the finding of `missing-field`.
 */
export const reviewWithoutSource: Rule = {
  id: 'review-without-source',
  summary: 'a review says which source it reviews',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      if (item.kind !== 'review' || item.fields.reviews || isUnread(binder, item, ['reviews'])) continue;
      if (item.requirement?.limits.fields?.includes('reviews')) continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` does not say which source it reviews`,
        hint: 'Write `reviews:` and the source\'s key between quotes, such as `reviews: "@key"`.',
        lacks: {count: 1, inShort: 'the source reviewed'},
        atMost,
      });
    }
  },
};
