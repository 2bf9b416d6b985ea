import type {Rule} from './define-rule.ts';
import {missingPhotos} from './parts/missing-photos.ts';

/**
 * Every photo that an item names is in the folder `content/photos`.
 *
 * Why: a sheet without its picture is an incomplete sheet; and a file elsewhere on this computer would be missing on
 * the next one.
 *
 * Example: `photos: [s07-frnt.jpg]` for a file named `s07-front.jpg`, or `![Front](../../Desktop/front.jpg)`.
 */
export const missingPhoto: Rule = {
  id: 'missing-photo',
  summary: 'every photo that an item names is in the folder of photos',
  severity: 'error',
  check(binder, report) {
    for (const {use, isElsewhere, meant} of missingPhotos(binder)) {
      report({
        file: use.item.file,
        place: use.place,
        message: isElsewhere
          ? `\`${use.written}\` lies outside the folder \`content/photos\``
          : `there is no photo \`${use.name}\` in \`content/photos\``,
        hint: meant
          ? `Write \`${meant}\` if that is the photo; it is in the folder and not used yet.`
          : 'Put the file into the folder `content/photos` and write its name as it is spelt there.',
        ...(use.actual === undefined ? {} : {actual: use.actual}),
        ...(meant === null ? {} : {expected: [meant]}),
      });
    }
  },
};
