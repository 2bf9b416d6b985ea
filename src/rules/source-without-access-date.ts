import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {isOnline} from './parts/library.ts';

/**
 * An online source says on which day it was read.
 *
 * Why: a page on the web changes or goes; the day says which state of it was read, and the citation styles print it
 * (ISO 690 asks for it too).
 *
 * Example: an entry of the type `webpage` without `accessed: 2026-03-09`.
 */
export const sourceWithoutAccessDate: Rule = {
  id: 'source-without-access-date',
  summary: 'an online source says on which day it was read',
  severity: 'warning',
  check(binder, report) {
    for (const {source, file, places, path} of binder.library) {
      if (!isOnline(source) || source.accessed !== undefined || places.has([...path, 'accessed'])) continue;
      report({
        file,
        ...scalarAt(places, [...path, 'id'], source.id),
        message: `\`${source.id}\` is read online and does not say when it was read`,
        hint: `Add the day, such as \`accessed: ${binder.today}\`, if you read it today.`,
      });
    }
  },
};
