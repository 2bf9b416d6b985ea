import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {citationShortage} from './parts/citation-shortage.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * Every technique has as many citations of its own as the syllabus asks (`per-technique`).
 *
 * Why: each method must be researched; a list of books at the end does not say which of them teaches the bind-off.
 *
 * Example: `techniques: [{name: ssk}]` without `cite: "@ashdown2011, p. 57"`.
 */
export const techniqueWithoutCitation: Rule = {
  id: 'technique-without-citation',
  summary: 'every technique has as many citations of its own as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      for (const {index, name, missing} of citationShortage(item, binder).techniques) {
        report({
          file: item.file,
          ...scalarAt(item.places, ['techniques', index, 'name'], name),
          message: `the technique \`${name}\` lacks \`${plural(missing, 'citation')}\` of its own`,
          hint: 'Add `cite:` with the source and page, such as `cite: "@key, p. 57"`.',
          lacks: {count: missing, inShort: `${plural(missing, 'citation')} for ${name}`},
          atMost,
        });
      }
    }
  },
};
