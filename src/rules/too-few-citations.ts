import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {citationShortage, missingInTechniques} from './parts/citation-shortage.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * An item cites as many different sources as the syllabus asks (`at-least`).
 *
 * Why: the certificate asks for research, and one book is one opinion. Citing the same source twice counts once. What
 * `technique-without-citation` asks for already is not asked for again here.
 *
 * Example: `references: {at-least: 2}` in the syllabus, and an item that cites `@ashdown2011` only.
 */
export const tooFewCitations: Rule = {
  id: 'too-few-citations',
  summary: 'an item cites as many different sources as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      const shortage = citationShortage(item, binder);
      const {sources, missingSources, missingBooks} = shortage;
      if (missingSources <= missingInTechniques(shortage)) continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` cites \`${plural(sources, 'source')}\`; the syllabus asks for \`${sources + missingSources}\``,
        hint: `Cite ${plural(missingSources, 'more source')}${amongThem(missingSources, missingBooks)}, such as \`[@key, p. 57]\`.`,
        lacks: {count: missingSources, inShort: plural(missingSources, 'citation')},
        atMost,
      });
    }
  },
};

function amongThem(sources: number, books: number): string {
  if (books === 0) return '';
  return books >= sources ? ', from a book' : `, ${books} of them from a book`;
}
