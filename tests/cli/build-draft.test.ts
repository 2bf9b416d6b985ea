import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {type DrawnPage, type DrawnText, drawnOnPages} from '../print/drawn-on-page.ts';
import {readWithPdfJs} from '../print/read-with-pdfjs.ts';
import {filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatchFile = 'content/swatches/s-01.md';
const swatch = await readFile(path.join(root, 'tests/rules/base', swatchFile), 'utf8');
const settings = await readFile(path.join(root, 'tests/rules/base/content/binder.yaml'), 'utf8');

/** A needle size that there is not, a sentence with a source and a leaf that there are not, a row that fails. */
const faulty = swatch
  .replace('needles: 4.5 mm', 'needles: 4.6 mm')
  .replace('and shows a chain', 'and shows as [](#S-99) a chain [@nobody2001]')
  .replace('Row 2 (WS): Sl1, p23.', 'Row 2 (WS): Sl1, p22.');
const [needle, leaf, source] = [
  'is a needle size in no published table',
  'nothing has the id S-99',
  'the library has no source nobody2001',
];

describe('build --draft', {timeout: 180_000}, () => {
  test('each finding stands on the page of what caused it; the binder and all else in `build` stay as they are', async () => {
    const folder = await smallBinder({[swatchFile]: faulty});
    expect((await swatchleaf(['build', folder])).code).toBe(1);
    const built = (await filesIn(folder)).filter((file) => file.startsWith('build/'));
    const before = await Promise.all(built.map((file) => readFile(path.join(folder, file))));

    const {code, out, err} = await swatchleaf(['build', '--draft', folder]);
    expect({code, out: out.trim()}).toEqual({code: 1, out: 'build/draft.pdf'});
    expect(err).toContain('4 errors');
    const after = await Promise.all(built.map((file) => readFile(path.join(folder, file))));
    expect(after.every((bytes, index) => before[index]?.equals(bytes))).toBe(true);
    expect((await filesIn(folder)).filter((file) => file.startsWith('build/'))).toEqual(
      [...built, 'build/draft.pdf'].toSorted(),
    );

    const draft = await readWithPdfJs(await readFile(path.join(folder, 'build/draft.pdf')));
    const binder = await readWithPdfJs(await readFile(path.join(folder, 'build/binder.pdf')));
    const pagesWith = (text: string) =>
      draft.texts.flatMap((page, index) => (flat(page).includes(text) ? [draft.labels?.[index]] : []));
    for (const text of draft.texts) expect(text).toMatch(/\bdraft\b/);
    expect(pagesWith(needle)).toEqual(draft.labels?.filter((label) => label.startsWith('S-01')).slice(0, 1));
    for (const [text, cause] of [
      [leaf, 'the edge lies flat'],
      [source, 'the edge lies flat'],
    ] as const)
      expect(pagesWith(text)).toEqual(pagesWith(cause));
    expect(binder.texts.join('\n')).not.toMatch(/Error, line/);
    expect(draft.texts.length).toBe(binder.texts.length);
  });

  test.each([
    ['A4, one-sided', {}, ''],
    ['Letter, both sides', {}, 'paper: Letter\nrings: 3\nsides: duplex\n'],
    ['large print', {}, 'theme: large-print\n'],
  ])(
    '%s: notes keep to the text area and cover nothing, and stand beside their block',
    async (_, __, more) => {
      const folder = await smallBinder({[swatchFile]: faulty, 'content/binder.yaml': `${settings}${more}`});
      await swatchleaf(['build', '--draft', '--only', 'S-01', folder]);
      const bytes = await readFile(path.join(folder, 'build/draft.pdf'));
      expect((await readWithPdfJs(bytes)).labels?.every((label) => label.startsWith('S-01'))).toBe(true);
      const pages = await drawnOnPages(bytes);
      for (const page of pages) expect(overlapping(page)).toEqual([]);
      const texts = pages.flatMap((page) => page.texts);
      const heights = (words: string) => texts.filter(({text}) => text.includes(words)).map(({y}) => y);
      const notes = texts.filter(({text}) => /^(Error|Warning), line \d+$/.test(text));
      expect(notes.length).toBe(4);
      // 68 and 100 px of 96 to the inch, less the millimetre by which letters may stick out.
      for (const {x} of notes) expect(x).toBeGreaterThan((68 * 25.4) / 96 - 1);
      const line = 1 + faulty.split('\n').findIndex((each) => each.startsWith('Row 2'));
      const [[noteOfRow = 0], [rowBefore = 0], [ofRow = 0]] = [
        heights(`Error, line ${line}`),
        heights('Row 1 (RS):'),
        heights('Row 2 (WS):'),
      ];
      expect(noteOfRow).toBeGreaterThan(rowBefore);
      expect(noteOfRow).toBeLessThan(ofRow + 2);
    },
  );

  test('a sound binder prints too, and exits as check does', async () => {
    const folder = await smallBinder();
    expect((await swatchleaf(['build', '--draft', folder])).code).toBe(0);
    const {texts} = await readWithPdfJs(await readFile(path.join(folder, 'build/draft.pdf')));
    for (const text of texts) expect(text).toMatch(/\bdraft\b/);
  });

  test('what no sheet is made of stands on the title page, with its file', async () => {
    const folder = await smallBinder({
      'content/clippings.md': 'no clipping\n',
      'content/assessments/round-0.yaml': 'round: x\n',
    });
    await swatchleaf(['build', '--draft', folder]);
    const {texts} = await readWithPdfJs(await readFile(path.join(folder, 'build/draft.pdf')));
    expect(flat(texts[0] ?? '')).toMatch(/content\/assessments\/round-0\.yaml, line 1/);
  });

  test('goes with everything but --changed; its word is in the help', async () => {
    const {code, err} = await swatchleaf(['build', '--draft', '--changed', await smallBinder()]);
    expect({code, err: /--draft.*--changed/.test(err)}).toEqual({code: 2, err: true});
    expect((await swatchleaf(['build', '--help'])).out).toMatch(/--draft .*own desk/s);
  });
});

function flat(text: string): string {
  return text.replace(/\s+/g, ' ');
}

/** Pairs of texts whose letters lie over one another: from the base line up to the height of a small letter. */
function overlapping({texts}: DrawnPage): readonly string[] {
  const upright = texts.filter(({degrees}) => degrees === 0);
  const top = ({y, size}: DrawnText) => y - (size * 25.4 * 0.45) / 72;
  return upright.flatMap((one, index) =>
    upright
      .slice(index + 1)
      .filter(
        (other) =>
          one.x + one.width > other.x + 0.3 &&
          other.x + other.width > one.x + 0.3 &&
          one.y > top(other) &&
          other.y > top(one),
      )
      .map((other) => `${one.text} | ${other.text}`),
  );
}
