import type {PhotoCache} from './photo-cache.ts';
import {loadDecoder} from './picture-decoder.ts';
import {mostPixels} from './read-photo-facts.ts';

/** Dots per inch of a good print on paper: common practice, no source. */
const dotsPerInch = 300;
const millimetresPerInch = 25.4;
/** JPEG quality, from 1 to 100, that shows no blocks at 300 dots per inch: common practice, no source. */
const quality = 82;

/**
 * The picture as a JPEG for `printedWidth` millimetres: upright, no finer than paper shows, on white where it was
 * transparent, and without what the camera noted about place, time and owner. The same picture and width always give
 * the same bytes. Throws when `readPhotoFacts` did not call the picture fit.
 */
export async function scalePhoto(
  picture: Uint8Array,
  printedWidth: number,
  cache: PhotoCache,
): Promise<Uint8Array> {
  const width = Math.ceil((printedWidth / millimetresPerInch) * dotsPerInch);
  return cache.keep(picture, `jpeg ${width} ${quality}`, async () => {
    const sharp = await loadDecoder();
    return sharp(picture, {limitInputPixels: mostPixels, autoOrient: true})
      .resize({width, withoutEnlargement: true})
      .flatten({background: '#fff'})
      .toColourspace('srgb')
      .jpeg({quality})
      .toBuffer();
  });
}
