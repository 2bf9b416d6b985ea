import {createHash, randomBytes} from 'node:crypto';
import {mkdir, readFile, rename, rm, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import sharp from 'sharp';

/** Keeps what was worked out from a picture's bytes. It only saves time: with or without it every result is the same. */
export interface PhotoCache {
  /** The bytes that `make` gives for `picture`; `recipe` says all that they depend on besides the picture and the decoder. */
  keep(picture: Uint8Array, recipe: string, make: () => Promise<Uint8Array>): Promise<Uint8Array>;
}

/** For callers without a folder to spare. */
export const noCache: PhotoCache = {keep: (_picture, _recipe, make) => make()};

const digestLength = 32;

/**
 * A cache in `folder`, which is made when first needed and may be deleted at any time. A folder that cannot be written
 * is no trouble, and an entry that was cut short or altered is made anew: each carries its own digest.
 */
export function openPhotoCache(folder: string): PhotoCache {
  return {
    async keep(picture, recipe, make) {
      // The decoder's version is part of the key: a newer one may encode the same picture otherwise.
      const key = digest(
        Buffer.concat([digest(picture), Buffer.from(`${recipe} ${JSON.stringify(sharp.versions)}`)]),
      );
      const path = join(folder, key.toString('hex'));
      const entry = await readFile(path).catch(() => null);
      if (entry !== null) {
        const kept = entry.subarray(digestLength);
        if (digest(kept).equals(entry.subarray(0, digestLength))) return kept;
      }
      const made = await make();
      await store(folder, path, Buffer.concat([digest(made), made]));
      return made;
    },
  };
}

function digest(bytes: Uint8Array): Buffer {
  return createHash('sha256').update(bytes).digest();
}

async function store(folder: string, path: string, entry: Buffer): Promise<void> {
  const aside = `${path}.${randomBytes(6).toString('hex')}.tmp`;
  try {
    await mkdir(folder, {recursive: true});
    await writeFile(aside, entry, {flag: 'wx'});
    await rename(aside, path);
  } catch {
    await rm(aside, {force: true}).catch(() => {});
  }
}
