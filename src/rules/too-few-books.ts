import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {citationShortage, missingInTechniques} from './parts/citation-shortage.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * As many of the sources that an item cites are books as the syllabus asks (`books`).
 *
 * Why: a book was edited and can be found again; a web page may be gone when the assessor looks. Chapters and entries
 * of an encyclopedia count as books. Where sources are missing anyway, `too-few-citations` or
 * `technique-without-citation` says so and this is silent.
 *
 * Example: `references: {at-least: 2, books: 1}` in the syllabus, and an item that cites a film and a web page.
 */
export const tooFewBooks: Rule = {
  id: 'too-few-books',
  summary: 'as many of the sources that an item cites are books as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      const shortage = citationShortage(item, binder);
      const {missingSources, missingBooks} = shortage;
      if (missingBooks <= Math.max(missingSources, missingInTechniques(shortage))) continue;
      const asked = item.requirement?.limits.references?.books ?? 0;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` cites \`${plural(asked - missingBooks, 'book')}\`; the syllabus asks for \`${asked}\``,
        hint: `Cite ${plural(missingBooks, 'more book')}, such as \`[@key, p. 57]\`.`,
        lacks: {count: missingBooks, inShort: plural(missingBooks, 'book to cite', 'books to cite')},
        atMost,
      });
    }
  },
};
