import {nearestName} from '../support/nearest-name.ts';
import type {Rule} from './define-rule.ts';
import {citationShortage} from './parts/citation-shortage.ts';
import {scalarAt} from './parts/field-place.ts';
import {areItemsRead} from './parts/is-unread.ts';
import {entriesByKey} from './parts/library.ts';

/**
 * Every source of the library is cited by an item.
 *
 * Why: the reference list prints only what is cited; a source that was read and never cited is often a citation that
 * was forgotten. While an item still lacks citations, cannot wholly be read, or cites a key one slip away from this
 * one, that is the finding, and this is silent.
 *
 * Example: the entry `marsh2007` in the library, and no `@marsh2007` anywhere.
 */
export const sourceNeverCited: Rule = {
  id: 'source-never-cited',
  summary: 'every source of the library is cited by an item',
  severity: 'info',
  check(binder, report) {
    const isSomethingLacking = binder.items.some((item) => {
      const {missingSources, missingBooks, techniques} = citationShortage(item, binder);
      return missingSources > 0 || missingBooks > 0 || techniques.length > 0;
    });
    if (isSomethingLacking || !areItemsRead(binder)) return;
    const entries = entriesByKey(binder);
    const cited = new Set(binder.items.flatMap((item) => item.citations.map(({citation}) => citation.key)));
    const meant = new Set(
      [...cited].filter((key) => !entries.has(key)).map((key) => nearestName(key, entries.keys())),
    );
    for (const [key, {file, places, path}] of entries) {
      if (cited.has(key) || meant.has(key)) continue;
      report({
        file,
        ...scalarAt(places, [...path, 'id'], key),
        message: `no item cites \`${key}\``,
        hint: 'Cite it where it was used, or leave it: what is not cited is not printed.',
      });
    }
  },
};
