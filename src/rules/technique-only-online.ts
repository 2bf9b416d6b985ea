import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {entriesByKey, isOnline} from './parts/library.ts';

/**
 * Where the syllabus asks for books, no technique rests on online sources alone.
 *
 * Why: the book that was asked for may stand under another technique; the assessor who doubts this one finds only pages
 * that may be gone. Online are web pages and blog posts, and what the library says is on the shelf `online`.
 *
 * Example: `references: {at-least: 2, books: 1}` in the syllabus, and a technique with nothing but a web page.
 */
export const techniqueOnlyOnline: Rule = {
  id: 'technique-only-online',
  summary: 'where the syllabus asks for books, no technique rests on online sources alone',
  severity: 'warning',
  check(binder, report) {
    const entries = entriesByKey(binder);
    for (const {item, atMost} of itemsToComplete(binder)) {
      if ((item.requirement?.limits.references?.books ?? 0) === 0) continue;
      const techniques = 'techniques' in item.fields ? item.fields.techniques : [];
      for (const [index, {name}] of techniques.entries()) {
        const own = item.citations
          .filter(({technique}) => technique === name)
          .map(({citation}) => entries.get(citation.key)?.source);
        if (own.length === 0 || !own.every((source) => source !== undefined && isOnline(source))) continue;
        report({
          file: item.file,
          ...scalarAt(item.places, ['techniques', index, 'name'], name),
          message: `only online sources describe the technique \`${name}\``,
          hint: 'Look it up in a book too, and add the page under `cite:`.',
          atMost,
        });
      }
    }
  },
};
