import {itemsById} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import type {Rule} from './define-rule.ts';

/**
 * What was clipped for an item is cited in it.
 *
 * Why: a place was found once and kept for this item; where its source is cited nowhere in it, it was probably forgotten.
 * Items that have no file yet, or are only planned, are passed over.
 *
 * Example: `- 2026-03-14 S-07 [@ashdown2011, p. 57] …` in `content/clippings.md`, and no `@ashdown2011` in S-07.
 */
export const clippedSourceNotCited: Rule = {
  id: 'clipped-source-not-cited',
  summary: 'what was clipped for an item is cited in it',
  severity: 'info',
  check(binder, report) {
    const items = itemsById(binder);
    const {file, entries} = binder.clippings;
    for (const {ids, citations} of entries) {
      for (const {citation, key} of citations) {
        const lacking = ids.filter((id) => {
          const item = items.get(id);
          if (!item || item.fields.status === 'planned') return false;
          return !item.citations.some((use) => use.citation.key === citation.key);
        });
        if (lacking.length === 0) continue;
        report({
          file,
          place: key,
          actual: citation.key,
          message: `${englishList(lacking.map((id) => `\`${id}\``))} ${lacking.length === 1 ? 'does' : 'do'} not cite \`${citation.key}\`, which was clipped for ${lacking.length === 1 ? 'it' : 'them'}`,
          hint: 'Cite it there, or take the id out of the clipping.',
        });
      }
    }
  },
};
