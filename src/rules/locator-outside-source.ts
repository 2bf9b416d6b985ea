import type {Place} from '../diagnostics/finding.ts';
import type {LibraryEntry} from '../model/binder.ts';
import {type PageRange, pageRanges} from '../references/page-numbers.ts';
import type {Rule} from './define-rule.ts';
import {valueAt} from './parts/field-place.ts';
import {entriesByKey} from './parts/library.ts';

/**
 * A cited page lies within the pages of its source.
 *
 * Why: a page that the book does not have was noted wrongly, or the citation names another book; the assessor who turns
 * it up finds nothing. What a source has is its `number-of-pages`, or for a chapter or an article its `page`. Roman
 * numerals count the pages before these and are not looked at.
 *
 * Example: `[@ashdown2011, p. 412]` for a book of 312 pages; `[@otter2019, p. 12]` for an article on pages 293–296.
 */
export const locatorOutsideSource: Rule = {
  id: 'locator-outside-source',
  summary: 'a cited page lies within the pages of its source',
  severity: 'warning',
  check(binder, report) {
    const entries = entriesByKey(binder);
    for (const item of binder.items) {
      for (const {citation, place} of item.citations) {
        const entry = entries.get(citation.key);
        if (!entry || citation.locator?.label !== 'page') continue;
        const cited = pageRanges(citation.locator.value);
        const backwards = cited.find(({from, to}) => to < from);
        if (backwards) {
          report({
            file: item.file,
            place,
            message: `the pages \`${inWords(backwards)}\` of \`${citation.key}\` run backwards`,
            hint: 'Write the smaller number first.',
          });
          continue;
        }
        const has = pagesOf(entry);
        const outside = has && cited.find(({from, to}) => from < has.from || to > has.to);
        if (!has || !outside) continue;
        report({
          file: item.file,
          place,
          message: `\`${citation.key}\` has the pages \`${inWords(has)}\`, and \`${inWords(outside)}\` is cited`,
          hint: 'Look the page up again; or mend the pages of the source in the library.',
          related: [{file: entry.file, place: has.place, message: 'its pages stand here'}],
        });
      }
    }
  },
};

interface PlacedRange extends PageRange {
  readonly place: Place;
}

function pagesOf({source, places, path}: LibraryEntry): PlacedRange | null {
  const [range] = pageRanges(source.page ?? '');
  if (range && range.to >= range.from && range.to > range.from)
    return {...range, place: valueAt(places, [...path, 'page'])};
  const pages = Number(/^\d{1,5}/.exec(source['number-of-pages'] ?? '')?.[0] ?? 0);
  return pages > 0 ? {from: 1, to: pages, place: valueAt(places, [...path, 'number-of-pages'])} : null;
}

function inWords({from, to}: PageRange): string {
  return from === to ? String(from) : `${from}–${to}`;
}
