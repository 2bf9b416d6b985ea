import {bookTypes} from '../references/source.ts';
import type {Binder, Item} from './binder.ts';
import type {Measurement} from './schema/item-fields.ts';

/** One limit of the syllabus beside what the item has. */
export interface AskedAndThere {
  /** What is counted, such as `words`. */
  readonly what: string;
  readonly there: number;
  /** Null for no lower or no upper limit. */
  readonly from: number | null;
  readonly to: number | null;
}

/** Everything countable that the syllabus asks of `item`, in the order of the sheet. */
export function askedAndThere(item: Item, {library}: Pick<Binder, 'library'>): readonly AskedAndThere[] {
  const {words, references, photos, gauge} = item.requirement?.limits ?? {};
  const keys = new Set(item.citations.map(({citation}) => citation.key));
  const books = library.filter(({source}) => bookTypes.includes(source.type) && keys.has(source.id));
  const places = gauge?.places;
  return [
    limit('words', item.body.words, words?.from, words?.to),
    limit('sources cited', keys.size, references?.['at-least']),
    limit('books cited', new Set(books.map(({source}) => source.id)).size, references?.books),
    limit('photos', photoCount(item), photos?.['at-least']),
    ...(places === undefined ? [] : gaugePlaces(item, places, gauge?.when ?? [])),
  ].flatMap((one) => one ?? []);
}

/** Null where nothing is asked. */
function limit(
  what: string,
  there: number,
  from: number | undefined,
  to?: number | undefined,
): AskedAndThere | null {
  return from === undefined && to === undefined ? null : {what, there, from: from ?? null, to: to ?? null};
}

/** Different files, in the front matter and in the text. */
function photoCount({fields, body}: Item): number {
  const listed = 'photos' in fields ? fields.photos : [];
  return new Set([...listed, ...body.images].map(({file}) => file)).size;
}

/** Places counted in each state that is asked; where none is named, in the state with the fewest. */
function gaugePlaces(
  {fields}: Item,
  places: number,
  states: readonly Measurement['when'][],
): readonly (AskedAndThere | null)[] {
  const measured = 'measured' in fields ? fields.measured : [];
  const counted = (what: 'stitches' | 'rows', when: Measurement['when'] | null) =>
    measured.filter((one) => when === null || one.when === when).map((one) => one[what].length);
  const asked = states.length > 0 ? states : [null];
  return asked.flatMap((when) =>
    (['stitches', 'rows'] as const).map((what) =>
      limit(`counts of ${what}${when === null ? '' : ` ${when}`}`, fewest(counted(what, when)), places),
    ),
  );
}

function fewest(counts: readonly number[]): number {
  return counts.length > 0 ? Math.min(...counts) : 0;
}
