import {createHash} from 'node:crypto';
import {mkdir, readFile, rename, rm, writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {newAsideName, sweepLeftovers} from '../io/aside-file.ts';
import {decoderVersion} from './picture-decoder.ts';

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
 * is no trouble, and an entry that was cut short or altered is made anew: each carries its own digest. Before the first
 * entry is written, what killed runs left half-written is removed.
 */
export function openPhotoCache(folder: string): PhotoCache {
  let decoder: string | undefined;
  let isSwept = false;
  return {
    async keep(picture, recipe, make) {
      // A newer decoder may encode the same picture otherwise.
      decoder ??= decoderVersion();
      const key = digest(Buffer.concat([digest(picture), Buffer.from(`${recipe} ${decoder}`)]));
      const path = join(folder, key.toString('hex'));
      const entry = await readFile(path).catch(() => null);
      if (entry !== null) {
        const kept = entry.subarray(digestLength);
        if (digest(kept).equals(entry.subarray(0, digestLength))) return kept;
      }
      const made = await make();
      if (!isSwept) await sweepLeftovers(folder, Date.now());
      isSwept = true;
      await store(folder, path, Buffer.concat([digest(made), made]));
      return made;
    },
  };
}

function digest(bytes: Uint8Array): Buffer {
  return createHash('sha256').update(bytes).digest();
}

async function store(folder: string, path: string, entry: Buffer): Promise<void> {
  const aside = join(folder, newAsideName());
  try {
    await mkdir(folder, {recursive: true});
    await writeFile(aside, entry, {flag: 'wx'});
    await rename(aside, path);
  } catch {
    await rm(aside, {force: true}).catch(() => {});
  }
}
