import {libraryPath} from '../model/read-binder-files.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Rule} from './define-rule.ts';
import {areFieldsRead} from './parts/is-unread.ts';
import {entriesByKey} from './parts/library.ts';

/**
 * Every citation names a source of the library.
 *
 * Why: a reference that leads nowhere cannot be printed, and the assessor cannot follow it.
 *
 * Example: `[@ashdwn2011, p. 57]` for the entry `ashdown2011`. While the library holds a fault that may have cost it an
 * entry, only a key that is a slip away from a known one is reported; and in a front matter that could not be taken
 * apart, none.
 */
export const unknownSource: Rule = {
  id: 'unknown-source',
  summary: 'every citation names a source of the library',
  severity: 'error',
  check(binder, report) {
    const entries = entriesByKey(binder);
    const isLibraryRead = !binder.readFindings.some(({file}) => file === libraryPath);
    for (const item of binder.items) {
      for (const {citation, from, keyPlace} of item.citations) {
        const isRead = from === 'body' || areFieldsRead(binder, item);
        if (entries.has(citation.key) || !isRead) continue;
        const nearest = nearestName(citation.key, entries.keys());
        if (!isLibraryRead && !nearest) continue;
        report({
          file: item.file,
          place: keyPlace,
          message: `the library has no source \`${citation.key}\``,
          hint: nearest
            ? `Write \`${nearest}\` if that is the source, or add \`${citation.key}\` to the library.`
            : `Add \`${citation.key}\` to the library, or cite a source that is there.`,
          actual: citation.key,
          ...(nearest === null ? {} : {expected: [nearest]}),
        });
      }
    }
  },
};
