import type {Binder, Item} from '../../model/binder.ts';
import {isUnread, readFindingsIn} from './is-unread.ts';
import {entriesByKey, isBook} from './library.ts';

/** What an item still lacks in citations. One citation may fill several of these at once. */
export interface CitationShortage {
  /** Different sources that it cites, and how many more are asked. */
  readonly sources: number;
  readonly missingSources: number;
  readonly missingBooks: number;
  /** Techniques with fewer different sources of their own than asked, by index in the front matter. */
  readonly techniques: readonly {readonly index: number; readonly name: string; readonly missing: number}[];
}

/**
 * Counts citations against the limits of the item's requirement. A source that is not in the library, and a citation
 * that could not be read, count as what they were meant to be: they are findings of their own.
 */
export function citationShortage(item: Item, binder: Binder): CitationShortage {
  const limits = item.requirement?.limits.references;
  const entries = entriesByKey(binder);
  const keys = new Set(item.citations.map(({citation}) => citation.key));
  const unreadable =
    readFindingsIn(binder, item.file).filter(({rule}) => rule === 'citation-form').length +
    (isUnread(binder, item, ['techniques']) ? 1 : 0);
  const books = [...keys].filter((key) => {
    const entry = entries.get(key);
    return !entry || isBook(entry);
  }).length;

  const sources = keys.size + unreadable;
  const techniques = 'techniques' in item.fields ? item.fields.techniques : [];
  return {
    sources,
    missingSources: Math.max(0, (limits?.['at-least'] ?? 0) - sources),
    missingBooks: Math.max(0, (limits?.books ?? 0) - books - unreadable),
    techniques: techniques.flatMap(({name, cite}, index) => {
      const own = new Set(
        item.citations.filter((use) => use.technique === name).map(({citation}) => citation.key),
      );
      const isRead = unreadable === 0;
      const count = isRead ? own.size : Math.max(own.size, cite?.length ?? 1);
      const missing = (limits?.['per-technique'] ?? 0) - count;
      return missing > 0 ? [{index, name, missing}] : [];
    }),
  };
}

/** Citations that the techniques lack: adding them may fill what the item lacks as a whole. */
export function missingInTechniques({techniques}: CitationShortage): number {
  return techniques.reduce((sum, {missing}) => sum + missing, 0);
}
