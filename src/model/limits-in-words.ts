import {formatAsWritten} from '../knitting/format-quantity.ts';
import type {Length} from '../knitting/quantity.ts';
import {askedRange} from '../support/asked-range.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import type {Limits} from './schema/syllabus.ts';

/** What a requirement limits, a sentence without a full stop for each limit that is set; null where none is. */
export interface LimitsInWords {
  readonly words: string | null;
  readonly sources: string | null;
  /** About each technique. */
  readonly perTechnique: string | null;
  /** About written rows and the parts of a written pattern. */
  readonly pattern: string | null;
  readonly photos: string | null;
  readonly counts: string | null;
  readonly size: string | null;
  /** By how much opposite edges may differ. */
  readonly ends: string | null;
  readonly sides: string | null;
  /** What is looked over by eye. */
  readonly byEye: readonly string[];
}

export function limitsInWords(limits: Limits): LimitsInWords {
  const {references, photos, gauge, size, evenness} = limits;
  const words = askedRange(limits.words ?? {});
  const perTechnique = references?.['per-technique'] ?? 0;
  const leastPhotos = photos?.['at-least'] ?? 0;
  return {
    words: joined([
      words && `${words} words of text`,
      limits.words?.quoted === undefined ? null : `at most ${limits.words.quoted} % quoted`,
    ]),
    sources: sourcesInWords(references ?? {}),
    perTechnique: perTechnique > 0 ? `${plural(perTechnique, 'source')} for each technique` : null,
    pattern: joined([
      limits.pattern === 'required' ? 'written rows' : null,
      limits.parts?.length ? `the parts ${englishList(limits.parts)}` : null,
    ]),
    photos: leastPhotos > 0 ? `at least ${leastPhotos}` : null,
    counts: joined([
      gauge?.places === undefined ? null : `counted at ${plural(gauge.places, 'place')}`,
      gauge?.spread === undefined ? null : `at most ${gauge.spread} % apart`,
    ]),
    size: joined([
      size?.width && `at least ${inWords(size.width)} wide`,
      size?.height && `at least ${inWords(size.height)} high`,
    ]),
    ends: evenness?.ends ? `within ${inWords(evenness.ends)} of the bottom` : null,
    sides: evenness?.sides ? `within ${inWords(evenness.sides)} of the right` : null,
    byEye: limits['self-check'] ?? [],
  };
}

function sourcesInWords(references: NonNullable<Limits['references']>): string | null {
  const least = references['at-least'] ?? 0;
  const books = references.books ?? 0;
  const amount = least > 0 ? `at least ${plural(least, 'source')}` : null;
  const ofThem = amount
    ? `${books} of them ${books === 1 ? 'a book' : 'books'}`
    : `at least ${plural(books, 'book')}`;
  return joined([
    amount,
    books > 0 ? ofThem : null,
    references.independent ? `${references.independent} of different authors` : null,
    references.locator === 'required' ? 'each cited with its page' : null,
  ]);
}

function joined(parts: readonly (string | null | undefined)[]): string | null {
  const said = parts.filter((part) => typeof part === 'string');
  return said.length === 0 ? null : englishList(said);
}

function inWords(length: Length): string {
  return formatAsWritten(length).replaceAll('\u00a0', ' ');
}
