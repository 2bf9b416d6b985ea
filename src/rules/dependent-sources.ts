import {independentSources} from '../references/independence.ts';
import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {citationShortage, missingInTechniques} from './parts/citation-shortage.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {entriesByKey} from './parts/library.ts';

/**
 * An item rests on as many independent sources as the syllabus asks (`independent`).
 *
 * Why: two books of one author, or two editions of one book, say the same thing twice. Sources are independent when they
 * share no author and are not editions of one work. Where sources are missing anyway, that is the finding.
 *
 * Example: `references: {at-least: 2, independent: 2}` in the syllabus, and an item that cites two books of one author.
 */
export const dependentSources: Rule = {
  id: 'dependent-sources',
  summary: 'an item rests on as many independent sources as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    const entries = entriesByKey(binder);
    for (const {item, atMost} of itemsToComplete(binder)) {
      const asked = item.requirement?.limits.references?.independent ?? 0;
      const keys = [...new Set(item.citations.map(({citation}) => citation.key))];
      const known = keys.flatMap((key) => entries.get(key)?.source ?? []);
      const there = independentSources(known) + (keys.length - known.length);
      const shortage = citationShortage(item, binder);
      const missing = asked - there;
      if (missing <= Math.max(shortage.missingSources, shortage.missingBooks, missingInTechniques(shortage)))
        continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` rests on \`${plural(there, 'independent source')}\`; the syllabus asks for \`${asked}\``,
        hint: `Cite ${plural(missing, 'source')} of another author; a second edition or a second book of the same author does not count.`,
        lacks: {
          count: missing,
          inShort: plural(missing, 'source of another author', 'sources of other authors'),
        },
        atMost,
      });
    }
  },
};
