import type {PhotoCache} from './photo-cache.ts';
import {type PhotoFormat, photoFormat} from './photo-format.ts';
import {loadDecoder} from './picture-decoder.ts';

/** What the decoder found, or why it could not. Pixels are counted after turning the picture upright. */
export type ReadPhotoFacts =
  | {
      readonly ok: true;
      readonly width: number;
      readonly height: number;
      readonly format: PhotoFormat;
    }
  | {readonly ok: false; readonly reason: 'empty' | 'unreadable' | 'too large'};

/**
 * More than any camera of the trade makes, and small enough that the decoded picture fits into the memory of a small
 * computer. Our own choice, no source.
 */
export const mostPixels = 100_000_000;

/**
 * Judges a picture by its bytes alone, never by its name. The whole picture is decoded once: a header may promise
 * what a file cut short by a failed copy does not hold.
 */
export async function readPhotoFacts(picture: Uint8Array, cache: PhotoCache): Promise<ReadPhotoFacts> {
  if (picture.length === 0) return {ok: false, reason: 'empty'};
  const format = photoFormat(picture);
  if (format === null) return {ok: false, reason: 'unreadable'};
  const kept = await cache.keep(picture, 'facts', async () =>
    Buffer.from(JSON.stringify(await decode(picture, format))),
  );
  // What `decode` gave, through JSON: the cache hands back nothing whose digest differs.
  return JSON.parse(Buffer.from(kept).toString('utf8')) as ReadPhotoFacts;
}

async function decode(picture: Uint8Array, format: PhotoFormat): Promise<ReadPhotoFacts> {
  const sharp = await loadDecoder();
  try {
    const {autoOrient} = await sharp(picture, {limitInputPixels: false}).metadata();
    if (autoOrient.width * autoOrient.height > mostPixels) return {ok: false, reason: 'too large'};
    // However small the result, every row is decoded; a result of full size would only cost memory.
    await sharp(picture, {limitInputPixels: mostPixels}).resize({width: 16}).raw().toBuffer();
    return {ok: true, width: autoOrient.width, height: autoOrient.height, format};
  } catch {
    // That it failed is the fact; the decoder's own words would not help a knitter.
    return {ok: false, reason: 'unreadable'};
  }
}
