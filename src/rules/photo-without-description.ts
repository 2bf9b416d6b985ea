import {isStubText} from '../model/stub-text.ts';
import type {Rule} from './define-rule.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {photoUsesOf} from './parts/photo-uses.ts';

/**
 * Every photo has a description that says what it shows.
 *
 * Why: it is printed as the caption and read aloud to whoever cannot see the picture; an assessor must know which side
 * of the swatch they look at.
 *
 * Example: `photos: [s07-front.jpg]` instead of `photos: [{file: s07-front.jpg, description: Right side, blocked}]`,
 * or `![](s07-front.jpg)` in the text.
 */
export const photoWithoutDescription: Rule = {
  id: 'photo-without-description',
  summary: 'every photo has a description that says what it shows',
  severity: 'warning',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      for (const {from, written, description, place, actual} of photoUsesOf(item)) {
        if (!isStubText(description)) continue;
        report({
          file: item.file,
          place,
          message: `the photo \`${written}\` has no description`,
          hint:
            from === 'text'
              ? 'Write between the square brackets what the picture shows.'
              : `Write it as \`{file: ${written}, description: …}\` with what the picture shows.`,
          ...(actual === undefined ? {} : {actual}),
          lacks: {count: 1, inShort: "a photo's description"},
          atMost,
        });
      }
    }
  },
};
