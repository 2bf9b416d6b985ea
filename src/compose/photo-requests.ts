import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComposedPhoto, ListedPhoto} from '../model/composed.ts';
import {photoName, photoNameOfUrl} from '../model/photo-name.ts';
import {type PlacedPhoto, photoRows, usualPhotoWidth} from '../model/photo-rows.ts';
import {scaleBar} from './scale-bar.ts';

/** A picture wanted on paper at a width; `key` stands for both. */
export interface PhotoRequest {
  readonly key: string;
  /** File name within `content/photos`. */
  readonly file: string;
  readonly description: string;
  readonly widthMillimetres: number;
}

/** Every picture that `items` print; all the binder's when left out. */
export function photoRequests(
  binder: Binder,
  items: readonly Item[] = [...itemsById(binder).values()],
): readonly PhotoRequest[] {
  return items.flatMap((item) => itemPhotos(binder, item));
}

export function itemPhotos(binder: Binder, item: Item): readonly PhotoRequest[] {
  return [...photoRows(item, binder.photos).flat().flatMap(fieldRequest), ...bodyPhotos(item)];
}

/** The pictures that stand in an item's front matter, row by row, as far as they could be printed. */
export function listedPhotos(
  {photos, settings}: Pick<Binder, 'photos' | 'settings'>,
  item: Item,
  pictures: ReadonlyMap<string, PrintedPicture>,
): readonly (readonly ListedPhoto[])[] {
  const rows = photoRows(item, photos).map((row) =>
    row.flatMap((placed) =>
      fieldRequest(placed).flatMap((request) => {
        const {shows, taken = null} = placed.photo;
        const bar = shows && scaleBar(shows.millimetres, request.widthMillimetres, settings.units);
        return printedPhoto(request, pictures).map((photo) => ({...photo, taken, scaleBar: bar ?? null}));
      }),
    ),
  );
  return rows.filter((row) => row.length > 0);
}

function fieldRequest({photo: {file, description}, millimetres}: PlacedPhoto): readonly PhotoRequest[] {
  // A thousandth of a millimetre is finer than any printer.
  return requestOf(photoName(file), description ?? '', Math.round(millimetres.toNumber() * 1000) / 1000);
}

/** The pictures that stand in an item's text. */
export function bodyPhotos(item: Item): readonly PhotoRequest[] {
  return item.body.images.flatMap(({file, description}) =>
    requestOf(photoNameOfUrl(file), description, usualPhotoWidth.toNumber()),
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
