import {readDoi, readIsbn} from '../identifiers.ts';
import {sameLetters} from '../same-letters.ts';
import type {Source} from '../source.ts';

/** Sources that are there already, to be asked about new ones. */
export interface KnownSources {
  /** Why `source` is there already, as `the library has its ISBN under lunde2016` would say it; null when it is new. */
  sameAs(source: Omit<Source, 'id'>): SameSource | null;
  add(source: Source): void;
}

export interface SameSource {
  readonly by: 'ISBN' | 'DOI' | 'title and year';
  readonly key: string;
}

/**
 * Two sources are one when they share ISBN or DOI, or title and year. Parts of one book share its ISBN, and parts of
 * different books may share a title: both are told apart. Common practice, no source.
 */
export function knownSources(sources: readonly Source[]): KnownSources {
  const byMark = new Map<string, Source[]>();
  const add = (source: Source) => {
    for (const [, mark] of marksOf(source))
      byMark.set(mark, [...(byMark.get(mark) ?? []).slice(0, mostAlike), source]);
  };
  for (const source of sources) add(source);
  return {
    add,
    sameAs(source) {
      for (const [by, mark] of marksOf(source)) {
        const same = byMark.get(mark)?.find((known) => by === 'DOI' || !differ(known, source));
        if (same) return {by, key: same.id};
      }
      return null;
    },
  };
}

/** Nobody has so many volumes of one title in one year. */
const mostAlike = 100;

function marksOf(source: Omit<Source, 'id'>): readonly (readonly [SameSource['by'], string])[] {
  const isbn = parts.has(source.type) ? null : isbn13(source.ISBN);
  const doi = source.DOI === undefined ? null : readDoi(source.DOI);
  const title = sameLetters(source.title ?? '');
  const year = source.issued?.['date-parts'][0]?.[0] ?? 'n.d.';
  return [
    ...(isbn === null ? [] : [['ISBN', `isbn ${isbn}`] as const]),
    ...(doi?.ok ? [['DOI', `doi ${doi.value.toLowerCase()}`] as const] : []),
    ...(title === '' ? [] : [['title and year', `title ${year} ${title}`] as const]),
  ];
}

const parts = new Set<string>(['chapter', 'entry-encyclopedia']);

/** Whether something that both name is another thing in each. */
function differ(known: Omit<Source, 'id'>, source: Omit<Source, 'id'>): boolean {
  return (['container-title', 'volume'] as const).some((field) => {
    const [one, other] = [sameLetters(known[field] ?? ''), sameLetters(source[field] ?? '')];
    return one !== '' && other !== '' && one !== other;
  });
}

/** Thirteen digits, also for an ISBN of ten (ISO 2108: 978, the first nine digits, a new check digit); what is no ISBN has none. */
function isbn13(text: string | undefined): string | null {
  const read = text === undefined ? null : readIsbn(text);
  if (!read?.ok) return null;
  return read.value.length === 10 ? `978${read.value.slice(0, 9)}` : read.value.slice(0, 12);
}
