import type {LibraryEntry} from '../model/binder.ts';
import {readDoi, readIsbn} from '../references/identifiers.ts';
import {sameLetters} from '../references/same-letters.ts';
import type {Source} from '../references/source.ts';
import {leadingName} from '../references/source-identity.ts';
import {englishList} from '../support/english-list.ts';
import {editDistance} from '../support/nearest-name.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/** Letters of a title of which one may differ: about two slips in a line of print. Common practice, no source. */
const lettersForOneSlip = 12;

/**
 * Every source stands once in the library.
 *
 * Why: a book noted twice, with another year or another spelling, is printed as two books, and one of them is wrong. Two
 * entries are probably one source when they share ISBN or DOI and title, or when author and title are the same but for
 * case, marks and a slip of a letter. Two that name different editions, volumes or issues are two.
 *
 * Example: `ashdown2011` and `ashdown2012`, both "The Shaped Stitch" by Ashdown, one from 2011 and one from 2012.
 */
export const probableDuplicateSource: Rule = {
  id: 'probable-duplicate-source',
  summary: 'every source stands once in the library',
  severity: 'warning',
  check(binder, report) {
    const reported = new Set<LibraryEntry>();
    for (const group of likelyGroups(binder.library).values()) {
      for (const [index, entry] of group.entries()) {
        const first = group.slice(0, index).find((other) => areOne(other.source, entry.source));
        if (first === undefined || reported.has(entry)) continue;
        reported.add(entry);
        const differing = differences(first.source, entry.source);
        const {source, file, places, path} = entry;
        report({
          file,
          ...scalarAt(places, [...path, 'id'], source.id),
          message: `\`${source.id}\` and \`${first.source.id}\` are probably one source${differing === '' ? '' : `; they differ in ${differing}`}`,
          hint: 'Keep the entry that is right and cite it by its key; if both are right, say in `edition` or `volume` what tells them apart.',
          related: [{file: first.file, place: first.place, message: `\`${first.source.id}\` stands here`}],
        });
      }
    }
  },
};

/** Entries that are worth comparing with each other, so that a long library is not compared pair by pair. */
function likelyGroups(library: readonly LibraryEntry[]): ReadonlyMap<string, readonly LibraryEntry[]> {
  const groups = new Map<string, LibraryEntry[]>();
  for (const entry of library) {
    for (const mark of marksOf(entry.source)) groups.set(mark, [...(groups.get(mark) ?? []), entry]);
  }
  return groups;
}

function marksOf(source: Source): readonly string[] {
  const [isbn, doi] = [readIsbn(source.ISBN ?? ''), readDoi(source.DOI ?? '')];
  const title = sameLetters(source.title ?? '');
  return [
    ...(isbn.ok ? [`isbn ${isbn.value}`] : []),
    ...(doi.ok ? [`doi ${doi.value.toLowerCase()}`] : []),
    // A slip in the first letters hides a pair from one of these, not from both.
    ...(title.length > 3 ? [`begins ${title.slice(0, 4)}`, `ends ${title.slice(-4)}`] : []),
  ];
}

function areOne(a: Source, b: Source): boolean {
  if (a.type !== b.type) return false;
  for (const field of ['edition', 'volume', 'issue'] as const) {
    const [one, other] = [a[field], b[field]];
    if (one !== undefined && other !== undefined && sameLetters(one) !== sameLetters(other)) return false;
  }
  if (!areNear(sameLetters(a.title ?? ''), sameLetters(b.title ?? ''))) return false;
  if (sharesIdentifier(a, b)) return true;
  return areNear(leadingName(a), leadingName(b));
}

function sharesIdentifier(a: Source, b: Source): boolean {
  const shared = new Set(marksOf(a).filter((mark) => /^(?:isbn|doi) /.test(mark)));
  return marksOf(b).some((mark) => shared.has(mark));
}

function areNear(a: string, b: string): boolean {
  const length = Math.max(a.length, b.length);
  if (a === b) return true;
  // Volumes of one work differ by a figure only.
  if (a.replace(/\D+/g, ' ').trim() !== b.replace(/\D+/g, ' ').trim()) return false;
  const slips = Math.floor(length / lettersForOneSlip);
  return Math.abs(a.length - b.length) <= slips && editDistance(a, b) <= slips;
}

function differences(a: Source, b: Source): string {
  const year = ({issued}: Source) => String(issued?.['date-parts'][0]?.[0] ?? 'none');
  const pages = (source: Source) => source['number-of-pages'] ?? source.page ?? 'none';
  const compared: readonly (readonly [string, string, string])[] = [
    ['title', a.title ?? 'none', b.title ?? 'none'],
    ['year', year(a), year(b)],
    ['pages', pages(a), pages(b)],
  ];
  return englishList(
    compared
      .filter(([, one, other]) => one !== other)
      .map(([what, one, other]) => `${what} (\`${other}\` and \`${one}\`)`),
  );
}
