import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComposedPhoto} from '../model/composed.ts';
import {photoName, photoNameOfUrl} from '../model/photo-name.ts';

/** A picture wanted on paper at a width; `key` stands for both. */
export interface PhotoRequest {
  readonly key: string;
  /** File name within `content/photos`. */
  readonly file: string;
  readonly description: string;
  readonly widthMillimetres: number;
}

/** Printed width of a photo that states none: common practice, no source. */
const usualWidth = 80;

/** Every picture that the binder's items print. */
export function photoRequests(binder: Binder): readonly PhotoRequest[] {
  return [...itemsById(binder).values()].flatMap(itemPhotos);
}

export function itemPhotos(item: Item): readonly PhotoRequest[] {
  return [...fieldPhotos(item), ...bodyPhotos(item)];
}

/** The pictures that stand in an item's front matter, in its order. */
export function fieldPhotos(item: Item): readonly PhotoRequest[] {
  const photos = 'photos' in item.fields ? item.fields.photos : [];
  return photos.flatMap(({file, description, width}) =>
    requestOf(photoName(file), description ?? '', width?.millimetres.toNumber() ?? usualWidth),
  );
}

/** The pictures that stand in an item's text. */
export function bodyPhotos(item: Item): readonly PhotoRequest[] {
  return item.body.images.flatMap(({file, description}) =>
    requestOf(photoNameOfUrl(file), description, usualWidth),
  );
}

/** Nothing for a name that leads out of the photos: a rule has said so already. */
function requestOf(
  file: string | null,
  description: string,
  widthMillimetres: number,
): readonly PhotoRequest[] {
  if (file === null) return [];
  return [{key: `${file} at ${widthMillimetres} mm`, file, description, widthMillimetres}];
}

/** A picture as it is printed, whatever an item says about it. */
export type PrintedPicture = Omit<ComposedPhoto, 'description'>;

/** The picture of a request with the request's own words; nothing when it could not be printed. */
export function printedPhoto(
  {key, description}: PhotoRequest,
  pictures: ReadonlyMap<string, PrintedPicture>,
): readonly ComposedPhoto[] {
  const picture = pictures.get(key);
  return picture === undefined ? [] : [{...picture, description}];
}
