import {Fraction} from '../knitting/fraction.ts';
import type {Binder, Item} from './binder.ts';
import {photoName} from './photo-name.ts';
import type {Photo} from './schema/item-fields.ts';

/** A photo of an item's front matter and how wide it is printed. */
export interface PlacedPhoto {
  readonly photo: Photo;
  /** Its place in the front matter's list, from 0. */
  readonly index: number;
  readonly millimetres: Fraction;
}

/** Printed width of a photo that states none, in millimetres: common practice, no source. */
export const usualPhotoWidth = Fraction.ofInteger(80);
/** What a leaf of either paper has room for, in millimetres: the width of its text, and a height that leaves room for a caption. */
const mostWidth = Fraction.ofInteger(165);
const mostHeight = Fraction.ofInteger(200);
/** Both pictures of a pair together: the width of the text less the gap between them. */
const mostOfPair = Fraction.ofInteger(160);

/**
 * The photos of an item's front matter as they stand: each alone, but the first taken before blocking beside the first
 * taken after it, the second beside the second, and so on. A pair stands where its first photo is named. Both are printed
 * at one scale if both say what they show, else at one height; neither becomes wider than it would be alone.
 */
export function photoRows(item: Item, facts: Binder['photos']): readonly (readonly PlacedPhoto[])[] {
  const photos = 'photos' in item.fields ? item.fields.photos : [];
  const placed = photos.map((photo, index): PlacedPhoto => {
    const aspect = aspectOf(photo, facts);
    const stated = least(photo.width?.millimetres ?? usualPhotoWidth, mostWidth);
    const millimetres = aspect === null ? stated : least(stated, mostHeight.times(aspect));
    return {photo, index, millimetres};
  });
  const [before, after] = (['before blocking', 'after blocking'] as const).map((when) =>
    placed.filter(({photo}) => photo.taken === when && aspectOf(photo, facts) !== null),
  );
  const pairs = (before ?? []).flatMap((one, index) => {
    const other = after?.[index];
    return other === undefined ? [] : [pairOf(one, other, facts)];
  });
  return placed.flatMap((photo) => {
    const pair = pairs.find((each) => each.some(({index}) => index === photo.index));
    if (pair === undefined) return [[photo]];
    return Math.min(...pair.map(({index}) => index)) === photo.index ? [pair] : [];
  });
}

function pairOf(before: PlacedPhoto, after: PlacedPhoto, facts: Binder['photos']): readonly PlacedPhoto[] {
  const pair = [before, after];
  const shown = pair.map(({photo}) => photo.shows?.millimetres ?? null);
  const areBothSaid = shown.every((each) => each !== null);
  // What the width of each is measured by, so that equal measures give one scale or one height.
  const measures = pair.map(
    ({photo}, index) => (areBothSaid ? shown[index] : aspectOf(photo, facts)) ?? Fraction.one,
  );
  const sum = measures.reduce((one, other) => one.plus(other));
  const scale = pair.reduce(
    (smallest, {millimetres}, index) =>
      least(smallest, millimetres.dividedBy(measures[index] ?? Fraction.one)),
    mostOfPair.dividedBy(sum),
  );
  return pair.map((photo, index) => ({
    ...photo,
    millimetres: scale.times(measures[index] ?? Fraction.one),
  }));
}

/** Width by height of the upright picture; null when it cannot be read. */
function aspectOf({file}: Photo, facts: Binder['photos']): Fraction | null {
  const name = photoName(file);
  const found = name === null ? undefined : facts.get(name);
  return found?.ok ? Fraction.ofRatio(found.width, found.height) : null;
}

function least(one: Fraction, other: Fraction): Fraction {
  return one.compare(other) < 0 ? one : other;
}
