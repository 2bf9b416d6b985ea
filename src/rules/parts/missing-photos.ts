import type {Binder} from '../../model/binder.ts';
import {nearestName} from '../../support/nearest-name.ts';
import {type PhotoUse, photoUses} from './photo-uses.ts';

/** A photo that an item uses and that is not in the folder, with the unused photo it was probably meant to be. */
export interface MissingPhoto {
  readonly use: PhotoUse;
  readonly isElsewhere: boolean;
  readonly meant: string | null;
}

export function missingPhotos(binder: Binder): readonly MissingPhoto[] {
  const unused = unusedPhotos(binder);
  return photoUses(binder).flatMap((use) => {
    const facts = use.name === null ? undefined : binder.photos.get(use.name);
    const isThere = facts && (facts.ok || !['missing', 'outside the binder'].includes(facts.reason));
    if (isThere) return [];
    const isElsewhere = use.name === null || facts !== undefined;
    const fileName = use.written.split(/[/\\]/).at(-1) ?? use.written;
    return [{use, isElsewhere, meant: nearestName(fileName, unused)}];
  });
}

/** Names of the photos in the folder that no item uses. */
export function unusedPhotos(binder: Binder): readonly string[] {
  const used = new Set(photoUses(binder).map((use) => use.name));
  return [...binder.photos.keys()].filter((name) => !used.has(name));
}
