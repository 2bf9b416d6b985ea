import type {PhotoRequest, PrintedPicture} from '../compose/photo-requests.ts';
import type {Workspace} from '../io/workspace.ts';
import type {Binder} from '../model/binder.ts';
import type {PhotoCache} from '../photos/photo-cache.ts';
import {scalePhoto} from '../photos/scale-photo.ts';
import {photosFolder} from '../pipeline.ts';

/** The pictures of `requests` as they are printed, by the requests' keys: the same picture may be printed in two sizes. */
export async function scalePhotos(
  {workspace, photoCache}: {readonly workspace: Workspace; readonly photoCache: PhotoCache},
  photos: Binder['photos'],
  requests: readonly PhotoRequest[],
): Promise<ReadonlyMap<string, PrintedPicture>> {
  const scaled = new Map<string, PrintedPicture>();
  for (const {key, file, widthMillimetres} of requests) {
    const facts = photos.get(file);
    const bytes = facts?.ok ? await workspace.readBytes(`${photosFolder}${file}`) : null;
    if (!facts?.ok || bytes === null || scaled.has(key)) continue;
    const picture = await scalePhoto(bytes, widthMillimetres, photoCache);
    scaled.set(key, {
      source: `data:image/jpeg;base64,${Buffer.from(picture).toString('base64')}`,
      widthMillimetres,
      heightMillimetres: (widthMillimetres * facts.height) / facts.width,
    });
  }
  return scaled;
}
