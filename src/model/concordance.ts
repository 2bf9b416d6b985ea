import {locatorInWords} from '../references/locator-in-words.ts';
import {sourceLabel} from '../references/source-label.ts';
import {type Binder, itemsById} from './binder.ts';

/** One place at which a source describes a technique. */
export interface ConcordanceUse {
  readonly key: string;
  /** The source in short, such as `Ashdown 2011`; its key when the library lacks it. */
  readonly source: string;
  /** What the source calls the technique; null where it was not noted. */
  readonly calledThere: string | null;
  /** Where in the source; null for a citation of the whole of it. */
  readonly where: string | null;
  /** The item that cites it. */
  readonly itemId: string;
}

export interface ConcordanceEntry {
  /** As its first item names it. */
  readonly technique: string;
  /** By source in short, then in the order of the binder. */
  readonly uses: readonly ConcordanceUse[];
  /** How many different sources describe it. */
  readonly sources: number;
}

/**
 * Every technique of the binder with what each source calls it and where it is described, in alphabetical order. The
 * same technique bears different names in different books; two items mean the same one when they name it alike, upper
 * and lower case put aside.
 */
export function concordance(binder: Binder): readonly ConcordanceEntry[] {
  const sources = new Map(binder.library.map(({source}) => [source.id, source]));
  const byName = new Map<string, {technique: string; uses: ConcordanceUse[]}>();
  for (const item of itemsById(binder).values()) {
    for (const {technique, citation, calledThere} of item.citations) {
      if (technique === null) continue;
      const name = technique.trim().replace(/\s+/g, ' ');
      const entry = byName.get(name.toLowerCase()) ?? {technique: name, uses: []};
      byName.set(name.toLowerCase(), entry);
      const source = sources.get(citation.key);
      entry.uses.push({
        key: citation.key,
        source: source === undefined ? citation.key : sourceLabel(source),
        calledThere,
        where: citation.locator === null ? null : locatorInWords(citation.locator),
        itemId: item.id,
      });
    }
  }
  return [...byName.values()]
    .map(({technique, uses}) => ({
      technique,
      uses: uses.toSorted((a, b) => a.source.localeCompare(b.source, 'en')),
      sources: new Set(uses.map(({key}) => key)).size,
    }))
    .sort((a, b) => a.technique.localeCompare(b.technique, 'en'));
}
