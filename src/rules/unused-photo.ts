import {fileStart} from '../diagnostics/finding.ts';
import type {Rule} from './define-rule.ts';
import {areItemsRead} from './parts/is-unread.ts';
import {missingPhotos, unusedPhotos} from './parts/missing-photos.ts';
import {missingPhotoCount} from './parts/photo-uses.ts';

/**
 * Every photo in the folder is used by an item.
 *
 * Why: a picture taken for a sheet and then forgotten is easily overlooked among a hundred files. While an item
 * cannot wholly be read, has fewer photos than asked, or names one that is a slip away from this, that is the finding
 * and this is silent.
 *
 * Example: `content/photos/s07-back.jpg`, which no item names.
 */
export const unusedPhoto: Rule = {
  id: 'unused-photo',
  summary: 'every photo in the folder is used by an item',
  severity: 'info',
  check(binder, report) {
    if (!areItemsRead(binder) || binder.items.some((item) => missingPhotoCount(item) > 0)) return;
    const meant = new Set(missingPhotos(binder).map((missing) => missing.meant));
    for (const name of unusedPhotos(binder)) {
      if (meant.has(name)) continue;
      report({
        file: `content/photos/${name}`,
        place: fileStart,
        message: `no item uses the photo \`${name}\``,
        hint: 'Name it under `photos` in the item it belongs to, or move it out of the folder.',
      });
    }
  },
};
