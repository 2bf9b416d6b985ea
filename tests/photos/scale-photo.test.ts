import {createHash} from 'node:crypto';
import {mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import sharp from 'sharp';
import {afterEach, beforeEach, describe, expect, test, vi} from 'vitest';
import {noCache, openPhotoCache} from '../../src/photos/photo-cache.ts';
import {readPhotoFacts} from '../../src/photos/read-photo-facts.ts';
import {scalePhoto} from '../../src/photos/scale-photo.ts';
import {drawFabric, pixelAt} from './pictures.ts';

describe('a scaled photo', () => {
  test.each([
    // millimetres on paper, pixels at 300 to the inch of 25.4 mm
    [25.4, 300],
    [127, 1500],
    [100, 1182],
    [0.1, 2],
  ])('%f mm wide has %i pixels across, its sides in proportion', async (millimetres, pixels) => {
    const picture = await drawFabric(3000, 2000).jpeg().toBuffer();
    const {width, height, format} = await sharp(await scalePhoto(picture, millimetres, noCache)).metadata();
    expect(format).toBe('jpeg');
    expect(width).toBe(pixels);
    expect(Math.abs(height - (pixels * 2) / 3)).toBeLessThanOrEqual(0.5);
  });

  test('a coarse picture is not blown up', async () => {
    const picture = await drawFabric(200, 100).png().toBuffer();
    expect((await sharp(await scalePhoto(picture, 100, noCache)).metadata()).width).toBe(200);
  });

  test('is upright', async () => {
    const upright = await drawFabric(400, 200).jpeg().toBuffer();
    // Stored lying on its side, with the note that it must be turned by a quarter clockwise to stand.
    const lying = await sharp(upright).rotate(-90).withMetadata({orientation: 6}).jpeg().toBuffer();
    const scaled = await scalePhoto(lying, 100, noCache);
    expect((await sharp(scaled).metadata()).width).toBe(400);
    const [red = 0, green = 255] = await pixelAt(scaled, 100, 50);
    expect(red - green).toBeGreaterThan(150);
    const [otherRed = 0, otherGreen = 255] = await pixelAt(scaled, 300, 50);
    expect(Math.abs(otherRed - otherGreen)).toBeLessThan(20);
  });

  test('keeps nothing of what the camera noted', async () => {
    const picture = await drawFabric(400, 200)
      .withExif({
        IFD0: {Artist: 'Marit Haldane-Roe', Copyright: 'canary'},
        IFD3: {GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1'},
      })
      .jpeg()
      .toBuffer();
    expect(picture.includes('Marit')).toBe(true);
    const scaled = await scalePhoto(picture, 100, noCache);
    const {exif, xmp, iptc, icc} = await sharp(scaled).metadata();
    expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
    for (const trace of ['Exif', 'Marit', 'canary']) expect(Buffer.from(scaled).includes(trace)).toBe(false);
  });

  test('lies on white where it was transparent', async () => {
    const clear = await sharp({create: {width: 40, height: 40, channels: 4, background: '#0000'}})
      .png()
      .toBuffer();
    expect(await pixelAt(await scalePhoto(clear, 100, noCache), 20, 20)).toEqual([255, 255, 255]);
  });

  test('has the same bytes each time', async () => {
    const picture = await drawFabric(1200, 800).webp().toBuffer();
    const hashes = new Set<string>();
    for (let run = 0; run < 3; run++) {
      hashes.add(
        createHash('sha256')
          .update(await scalePhoto(picture, 80, noCache))
          .digest('hex'),
      );
    }
    expect(hashes.size).toBe(1);
  });
});

describe('the cache', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  });
  afterEach(() => rmSync(folder, {recursive: true}));

  test('with it, without it, filled, deleted or spoilt: the same bytes', async () => {
    const picture = await drawFabric(600, 400).jpeg().toBuffer();
    const expected = Buffer.from(await scalePhoto(picture, 40, noCache));
    const cache = openPhotoCache(join(folder, 'photos'));
    const get = async () => Buffer.from(await scalePhoto(picture, 40, cache));
    expect((await get()).equals(expected)).toBe(true);
    const [entry = ''] = readdirSync(join(folder, 'photos'));
    const path = join(folder, 'photos', entry);
    const whole = readFileSync(path);
    for (const spoilt of [
      whole.subarray(0, 0),
      whole.subarray(0, 40),
      Buffer.concat([whole, whole]),
      Buffer.alloc(900),
    ]) {
      writeFileSync(path, spoilt);
      expect((await get()).equals(expected)).toBe(true);
      expect(readFileSync(path).equals(whole)).toBe(true);
    }
    rmSync(join(folder, 'photos'), {recursive: true});
    expect((await get()).equals(expected)).toBe(true);
    expect(readdirSync(join(folder, 'photos'))).toEqual([entry]);
  });

  test('makes a thing once, for each picture and each recipe', async () => {
    const cache = openPhotoCache(folder);
    const make = vi.fn(async () => Buffer.from('made'));
    const [one, other] = [Buffer.from('one picture'), Buffer.from('other picture')];
    for (let run = 0; run < 2; run++) {
      for (const picture of [one, other])
        for (const recipe of ['wide', 'narrow']) await cache.keep(picture, recipe, make);
    }
    expect(make).toHaveBeenCalledTimes(4);
  });

  test('keeps what was found in a picture, and tells a picture from its name', async () => {
    const cache = openPhotoCache(folder);
    const picture = await drawFabric(60, 40).png().toBuffer();
    const facts = {ok: true, width: 60, height: 40, format: 'png'};
    for (let run = 0; run < 2; run++) expect(await readPhotoFacts(picture, cache)).toEqual(facts);
    expect(await readPhotoFacts(picture.subarray(0, 60), cache)).toEqual({ok: false, reason: 'unreadable'});
  });

  test('what a killed run left half-written goes when the next one writes; what another run is writing stays', async () => {
    // No process has this number: Linux and macOS count to 2^22 at most, Windows in steps of four.
    const aside = (processId: number) => `.swatchleaf-${processId}-${'0'.repeat(24)}.tmp`;
    const [left, written] = [aside(999_999_999), aside(process.pid)];
    for (const name of [left, written]) writeFileSync(join(folder, name), 'half');
    const cache = openPhotoCache(folder);
    await cache.keep(Buffer.from('x'), 'r', async () => Buffer.from('made'));
    const names = readdirSync(folder);
    expect(names).not.toContain(left);
    expect(names).toContain(written);
    expect(names).toHaveLength(2);
  });

  test('a folder that cannot be made is no trouble', async () => {
    writeFileSync(join(folder, 'file'), '');
    const cache = openPhotoCache(join(folder, 'file', 'photos'));
    expect(
      Buffer.from(await cache.keep(Buffer.from('x'), 'r', async () => Buffer.from('made'))).toString(),
    ).toBe('made');
  });
});
