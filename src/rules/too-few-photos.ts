import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {isUnread} from './parts/is-unread.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {missingPhotoCount} from './parts/photo-uses.ts';

/**
 * An item has as many photos as the syllabus asks.
 *
 * Why: a photo that is asked for and not there sends the item back. Different files count, in the front matter and in
 * the text; a photo that is named but missing counts, as `missing-photo` reports it.
 *
 * Example: `photos: {at-least: 2}` in the syllabus, and an item with one photo.
 */
export const tooFewPhotos: Rule = {
  id: 'too-few-photos',
  summary: 'an item has as many photos as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      const missing = missingPhotoCount(item);
      if (missing === 0 || isUnread(binder, item, ['photos'])) continue;
      const asked = item.requirement?.limits.photos?.['at-least'] ?? 0;
      report({
        file: item.file,
        ...(item.places.has(['photos'])
          ? {place: item.places.key(['photos'])}
          : scalarAt(item.places, ['requirement'], item.id)),
        message: `\`${item.id}\` has \`${plural(asked - missing, 'photo')}\`; the syllabus asks for \`${asked}\``,
        hint: `Add ${plural(missing, asked === missing ? 'photo' : 'more photo')} under \`photos\`.`,
        lacks: {count: missing, inShort: plural(missing, 'photo')},
        atMost,
      });
    }
  },
};
