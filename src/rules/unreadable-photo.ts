import type {PhotoFacts} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';
import {photoUses} from './parts/photo-uses.ts';

type Reason = Extract<PhotoFacts, {ok: false}>['reason'];

const faults: Partial<Record<Reason, {message: string; hint: string}>> = {
  empty: {
    message: 'is an empty file',
    hint: 'Copy the picture from the camera again.',
  },
  unreadable: {
    message: 'cannot be read as a picture',
    hint: 'Open it in a picture viewer and save it anew as JPEG, PNG or WebP.',
  },
  'too large': {
    message: 'is too large a picture to be read',
    hint: 'Save it smaller: 3000 pixels along the longer side print sharply across a whole page.',
  },
};

/**
 * Every photo that an item uses can be read, as JPEG, PNG or WebP.
 *
 * Why: a half-copied or empty file would print as a blank frame.
 *
 * Example: a file of 0 bytes, left by a copy that was broken off. 3000 pixels across the 210 mm of a page are more
 * than 300 to the inch: plain arithmetic, no source needed.
 */
export const unreadablePhoto: Rule = {
  id: 'unreadable-photo',
  summary: 'every photo that an item uses can be read',
  severity: 'error',
  check(binder, report) {
    for (const {item, name, place, actual} of photoUses(binder)) {
      const facts = name === null ? undefined : binder.photos.get(name);
      const fault = facts && !facts.ok ? faults[facts.reason] : undefined;
      if (!fault) continue;
      report({
        file: item.file,
        place,
        message: `the photo \`${name}\` ${fault.message}`,
        hint: fault.hint,
        ...(actual === undefined ? {} : {actual}),
      });
    }
  },
};
