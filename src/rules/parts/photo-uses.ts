import type {Place} from '../../diagnostics/finding.ts';
import type {Fraction} from '../../knitting/fraction.ts';
import type {Binder, Item} from '../../model/binder.ts';
import {photoName, photoNameOfUrl} from '../../model/photo-name.ts';
import {photoRows, usualPhotoWidth} from '../../model/photo-rows.ts';
import {scalarAt} from './field-place.ts';
import {narrowed} from './narrowed.ts';

/** A photo in an item: among the photos of the front matter or in the text. */
export interface PhotoUse {
  readonly item: Item;
  readonly from: 'front matter' | 'text';
  /** As the author names it. */
  readonly written: string;
  /** Name within `content/photos`; null for a picture that lies elsewhere. */
  readonly name: string | null;
  readonly description: string;
  readonly printedMillimetres: Fraction;
  readonly place: Place;
  readonly actual?: string;
}

/** Every use of a photo, item by item. */
export function photoUses(binder: Binder): readonly PhotoUse[] {
  return binder.items.flatMap((item) => photoUsesOf(item, binder.photos));
}

/** Without `photos`, every photo counts as printed alone. */
export function photoUsesOf(item: Item, photos: Binder['photos'] = new Map()): readonly PhotoUse[] {
  const listed = photoRows(item, photos)
    .flat()
    .toSorted((one, other) => one.index - other.index);
  return [
    ...listed.map(({photo: {file, description}, index, millimetres}) => ({
      item,
      from: 'front matter' as const,
      written: file,
      name: photoName(file),
      description: description ?? '',
      printedMillimetres: millimetres,
      ...scalarAt(item.places, ['photos', index, 'file'], file),
    })),
    ...item.body.images.map(({file, description, place}) => ({
      item,
      from: 'text' as const,
      written: file,
      name: photoNameOfUrl(file),
      description,
      printedMillimetres: usualPhotoWidth,
      ...narrowed(item, place, file),
    })),
  ];
}

/** How many photos the item still lacks. Different files count; those that are named but missing count, too. */
export function missingPhotoCount(item: Item): number {
  const asked = item.requirement?.limits.photos?.['at-least'] ?? 0;
  return Math.max(0, asked - new Set(photoUsesOf(item).map((use) => use.written)).size);
}
