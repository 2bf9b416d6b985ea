import sharp from 'sharp';
import {describe, expect, test} from 'vitest';
import {noCache} from '../../src/photos/photo-cache.ts';
import {readPhotoFacts} from '../../src/photos/read-photo-facts.ts';
import {drawFabric} from './pictures.ts';

const facts = (bytes: Uint8Array) => readPhotoFacts(bytes, noCache);

describe('a picture is known by its bytes', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('%s', async (format) => {
    const picture = await drawFabric(60, 40).toFormat(format).toBuffer();
    expect(await facts(picture)).toEqual({ok: true, width: 60, height: 40, format});
  });

  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'EXIF orientation %i: width and height are those of the upright picture',
    async (orientation) => {
      const picture = await drawFabric(60, 40).withMetadata({orientation}).jpeg().toBuffer();
      // EXIF 2.3, table 4: 5 to 8 are turned by a quarter.
      const [width, height] = orientation >= 5 ? [40, 60] : [60, 40];
      expect(await facts(picture)).toEqual({ok: true, width, height, format: 'jpeg'});
    },
  );

  test('one of 40 megapixels is fit', async () => {
    const picture = await sharp({create: {width: 7728, height: 5152, channels: 3, background: '#a58'}})
      .jpeg()
      .toBuffer();
    expect(await facts(picture)).toEqual({ok: true, width: 7728, height: 5152, format: 'jpeg'});
  });
});

describe('what cannot be printed is told apart', () => {
  test('no bytes at all', async () => {
    expect(await facts(new Uint8Array())).toEqual({ok: false, reason: 'empty'});
  });

  test.each<[string, () => Promise<Uint8Array>]>([
    ['text', async () => Buffer.from('not a picture')],
    ['a web page called .png', async () => Buffer.from('<html><img src="x"></html>')],
    ['a drawing', async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')],
    ['a GIF', () => drawFabric(60, 40).gif().toBuffer()],
    ['a TIFF', () => drawFabric(60, 40).tiff().toBuffer()],
    ['an AVIF', () => drawFabric(60, 40).avif().toBuffer()],
    ['a recording', async () => Buffer.from('RIFF\x24\x00\x00\x00WAVEfmt ')],
    ['one byte of a JPEG', async () => new Uint8Array([0xff])],
    ['the first bytes of a JPEG and nothing more', async () => new Uint8Array([0xff, 0xd8, 0xff])],
  ])('%s is unreadable', async (_, make) => {
    expect(await facts(await make())).toEqual({ok: false, reason: 'unreadable'});
  });

  test.each(['jpeg', 'png', 'webp'] as const)('a %s cut short anywhere is unreadable', async (format) => {
    const picture = await drawFabric(300, 200).toFormat(format).toBuffer();
    // A PNG ends in 12 bytes that hold nothing of the picture.
    const end = picture.length - (format === 'png' ? 13 : 1);
    for (const length of [20, 200, picture.length >> 1, end]) {
      expect(await facts(picture.subarray(0, length)), `${length} bytes`).toEqual({
        ok: false,
        reason: 'unreadable',
      });
    }
  });

  test('more than 100 megapixels are too many, however small the file', async () => {
    const picture = await sharp({create: {width: 10_001, height: 10_000, channels: 3, background: '#000'}})
      .png()
      .toBuffer();
    expect(await facts(picture)).toEqual({ok: false, reason: 'too large'});
  });
});
