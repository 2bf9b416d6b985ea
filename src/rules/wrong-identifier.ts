import {readDoi, readIsbn, readIssn} from '../references/identifiers.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

const readers = {ISBN: readIsbn, ISSN: readIssn, DOI: readDoi} as const;

/**
 * The ISBN, ISSN and DOI of a source are numbers that can exist.
 *
 * Why: whoever looks the source up types the number; one wrong digit leads to another book or to none. The last digit
 * of an ISBN and an ISSN is computed from the others, so a slip shows.
 *
 * Example: `ISBN: 978-0-306-40615-3`; its other digits ask for `7` (ISO 2108). A DOI has no check digit, only a form
 * (ISO 26324).
 */
export const wrongIdentifier: Rule = {
  id: 'wrong-identifier',
  summary: 'the ISBN, ISSN and DOI of a source are numbers that can exist',
  severity: 'error',
  check(binder, report) {
    for (const {source, file, places, path} of binder.library) {
      for (const name of ['ISBN', 'ISSN', 'DOI'] as const) {
        const text = source[name];
        const result = text === undefined ? null : readers[name](text);
        if (text === undefined || !result || result.ok) continue;
        for (const {message, hint, span} of result.problems) {
          report({file, ...scalarAt(places, [...path, name], text, span), message, hint});
        }
      }
    }
  },
};
