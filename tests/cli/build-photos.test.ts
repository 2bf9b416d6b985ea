import {readFile} from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import {expect, test} from 'vitest';
import {type DrawnImage, type DrawnPage, drawnOnPages} from '../print/drawn-on-page.ts';
import {readWithPdfJs} from '../print/read-with-pdfjs.ts';
import {root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatchFile = 'content/swatches/s-01.md';
const swatch = await readFile(path.join(root, 'tests/rules/base', swatchFile), 'utf8');
const settings = await readFile(path.join(root, 'tests/rules/base/content/binder.yaml'), 'utf8');
const written = '- {file: s-01-front.jpg, description: The right side after blocking.}';

function plain(width: number, height: number) {
  return sharp({create: {width, height, channels: 3, background: '#b8a88a'}});
}

/** The first page with the swatch's photos, and the text of all, `photos` in its front matter and `files` in the folder. */
async function printed(
  photos: readonly string[],
  files: Readonly<Record<string, Uint8Array>>,
  more = '',
): Promise<{readonly page: DrawnPage; readonly text: string; readonly pdf: Buffer}> {
  const folder = await smallBinder({
    [swatchFile]: swatch.replace(written, photos.map((photo) => `- ${photo}`).join('\n  ')),
    'content/binder.yaml': settings + more,
    ...Object.fromEntries(Object.entries(files).map(([name, bytes]) => [`content/photos/${name}`, bytes])),
  });
  const {code, err} = await swatchleaf(['build', '--only', 'S-01', folder]);
  expect(code, err).toBe(0);
  const pdf = await readFile(path.join(folder, 'build/only.pdf'));
  const pages = await drawnOnPages(pdf);
  const page = pages.find(({images}) => images.length > 0);
  if (page === undefined) throw new Error('no picture was printed');
  const {texts} = await readWithPdfJs(pdf);
  return {page, text: texts.join(' ').replace(/\s+/g, ' '), pdf};
}

/** Scale bars from left to right: filled, and right below the lower left corner of a picture. */
function barsOf({paths, images}: DrawnPage) {
  const isBelow = ({left, top}: DrawnImage, image: DrawnImage) =>
    Math.abs(left - image.left) < 0.5 && top > image.bottom - 0.5 && top < image.bottom + 3;
  return paths
    .filter((path) => path.isFilled && images.some((image) => isBelow(path, image)))
    .toSorted((one, other) => one.left - other.left);
}

const length = ({left, right}: {readonly left: number; readonly right: number}) => right - left;
const height = ({top, bottom}: {readonly top: number; readonly bottom: number}) => bottom - top;

/** Each case prints; the ordinary run takes those that differ most. */
const isLong = process.env.SWATCHLEAF_LONG !== undefined;
const sometimes = <T>(...cases: T[]): T[] => (isLong ? cases : []);

test.each([
  // what the picture shows, its printed width, units, the bar it gets and its words
  ['15 cm', '', '', 50, '5 cm'],
  ...sometimes<[string, string, string, number, string]>(
    ['14 cm', ', width: 63 mm', '', 20, '2 cm'],
    ['4 cm', '', '', 10, '1 cm'],
  ),
  ['60 cm', ', width: 120 mm', '', 200, '20 cm'],
  ['7 in', '', 'units: inch\n', 50.8, '2 in'],
  // Wider than the text: the picture is printed smaller than was asked, and its bar with it.
  ['15 cm', ', width: 300 mm', '', 50, '5 cm'],
])(
  'a photo that shows %s%s has a bar true to it, to 0.2 mm',
  async (shows, width, units, bar, words) => {
    const {page, text} = await printed(
      [`{file: s-01-front.jpg, description: The right side., shows: ${shows}${width}}`],
      {'s-01-front.jpg': await plain(2400, 1600).jpeg().toBuffer()},
      units,
    );
    const [picture] = page.images;
    const [drawn] = barsOf(page);
    if (!picture || !drawn) throw new Error('no bar was drawn');
    const across = shows.endsWith('cm') ? Number.parseFloat(shows) * 10 : Number.parseFloat(shows) * 25.4;
    expect(Math.abs(length(drawn) - (bar * length(picture)) / across)).toBeLessThan(0.2);
    expect(drawn.left).toBeCloseTo(picture.left, 0);
    expect(drawn.top).toBeGreaterThan(picture.bottom);
    expect(text).toContain(words);
  },
  180_000,
);

test.each([6, ...sometimes(1, 3, 8)])(
  'EXIF orientation %i: what is shown is across the upright picture',
  async (orientation) => {
    // EXIF 2.3, table 4: with 6 and 8 the stored rows are the columns of the upright picture.
    const [stored, upright] = orientation >= 5 ? [plain(1600, 2400), 1.5] : [plain(2400, 1600), 1.5];
    const picture = await stored
      .withExif({IFD0: {Artist: 'canary'}, IFD3: {GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1'}})
      .withMetadata({orientation})
      .jpeg()
      .toBuffer();
    const {page, pdf} = await printed(
      ['{file: s-01-front.jpg, description: The right side., shows: 15 cm}'],
      {'s-01-front.jpg': picture},
    );
    const [image] = page.images;
    const [bar] = barsOf(page);
    if (!image || !bar) throw new Error('no bar was drawn');
    expect(length(image) / height(image)).toBeCloseTo(upright, 1);
    expect(Math.abs(length(bar) - length(image) / 3)).toBeLessThan(0.2);
    for (const trace of ['Exif\0', 'canary', 'GPS']) expect(pdf.includes(trace)).toBe(false);
  },
  180_000,
);

const two = {
  'before.jpg': await plain(1500, 1200).jpeg().toBuffer(),
  'after.jpg': await plain(1500, 1000).jpeg().toBuffer(),
  's-01-front.jpg': await plain(1500, 1500).jpeg().toBuffer(),
};
const before = (more = '') => `{file: before.jpg, description: As knitted., taken: before blocking${more}}`;
const after = (more = '') => `{file: after.jpg, description: Dry., taken: after blocking${more}}`;
const front = '{file: s-01-front.jpg, description: The edge.}';

test('before and after blocking stand in one row at one scale, each with its caption', async () => {
  // Named the other way about, and not one after the other.
  const {page, text} = await printed([after(', shows: 20 cm'), front, before(', shows: 16 cm')], two);
  const [one, other] = page.images.toSorted((a, b) => a.top - b.top || a.left - b.left);
  if (!one || !other) throw new Error('a picture is missing');
  expect(one.top).toBeCloseTo(other.top, 1);
  // Millimetres on paper for one of the knitting.
  expect(length(one) / 160).toBeCloseTo(length(other) / 200, 2);
  const [bar, otherBar] = barsOf(page);
  expect(length(bar ?? one)).toBeCloseTo(length(otherBar ?? other), 1);
  expect(text).toMatch(/1\. Before blocking\. As knitted\..*2\. After blocking\. Dry\..*3\. The edge\./);
}, 180_000);

test('where one does not say what it shows, both have one height', async () => {
  const {page} = await printed([before(', shows: 16 cm'), after(), front], two);
  const [one, other] = page.images.toSorted((a, b) => a.top - b.top || a.left - b.left);
  if (!one || !other) throw new Error('a picture is missing');
  expect(one.top).toBeCloseTo(other.top, 1);
  expect(height(one)).toBeCloseTo(height(other), 0);
  expect(length(one)).toBeLessThan(length(other));
  expect(barsOf(page).length).toBe(1);
}, 180_000);

test('one without the other stands as any photo does, and says when it was taken', async () => {
  const {page, text} = await printed([before(), front], two);
  expect(new Set(page.images.map((image) => Math.round(length(image))))).toEqual(new Set([80]));
  expect(text).toMatch(/1\. Before blocking\. As knitted\..*2\. The edge\./);
}, 180_000);

test('a photo taller than a leaf is printed so that it fits', async () => {
  const {page} = await printed(['{file: tall.jpg, description: A scarf., width: 100 mm}', front], {
    ...two,
    'tall.jpg': await plain(600, 2400).jpeg().toBuffer(),
  });
  expect(Math.max(...page.images.map(height))).toBeCloseTo(200, 0);
}, 180_000);

test.each([
  ['shows: 15', /s-01\.md:\d+:\d+ error/],
  ['shows: 0 cm', /`0 cm` is less than `10 mm`/],
  ['shows: wide', /s-01\.md:\d+:\d+ error/],
  ['taken: befor blocking', /before blocking/],
])('`%s` is a finding with its place', async (field, message) => {
  const folder = await smallBinder({
    [swatchFile]: swatch.replace('after blocking.}', `after blocking., ${field}}`),
  });
  const {code, err, out} = await swatchleaf(['check', folder]);
  expect(code).toBe(1);
  expect(out + err).toMatch(message);
  expect(out + err).toMatch(/s-01\.md:19:\d+ error/);
});
