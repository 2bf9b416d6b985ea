import fc from 'fast-check';
import {expect, test} from 'vitest';
import {fontFiles} from '../../src/layout/font-files.ts';
import {usedFonts} from '../../src/layout/used-fonts.ts';

const fonts = fontFiles.map((font) => ({...font, source: `data:font/woff2;base64,${font.path}`}));
const namesIn = (text: string) => usedFonts(fonts, text).map(({path}) => path);
const everyName = fonts.map(({path}) => path);
const extended = everyName.filter((path) => path.includes('latin-ext'));
const others = everyName.filter((path) => !path.includes('latin-ext'));

test('the layouts have files of Latin letters that English does without', () => {
  expect(extended).toHaveLength(8);
  expect(others).toHaveLength(9);
});

test.each([
  ['English', 'Knit 2 tog at each end – “in pattern”, 1½ in, naïve café · 4 × 3 → 12'],
  ['nothing', ''],
  ['escapes of what markup keeps for itself', '&amp; &lt; &#x26; &#x3D; &quot; &nbsp; content: "–\\2002"'],
  ['an address of a picture', 'src="data:image/jpeg;base64,/9j/4AAQSkZJRgABAQ"'],
])('%s: the others are left out', (_, text) => {
  expect(namesIn(text)).toEqual(others);
});

test.each([
  ['a letter', 'Łódź'],
  ['a letter by its decimal number', 'Pi&#322;a'],
  ['a letter by its hexadecimal number', 'Pi&#x142;a'],
  ['a letter by its name', 'Pi&lstrok;a'],
  ['an escape in CSS', 'content: "\\142 "'],
  ['a letter whose capital is one', 'text-transform: uppercase; aÿ'],
  ['an accent by itself, which the browser joins with its letter', 'e\u0304'],
  ['a letter from beyond the ranges that its name may stand for', '&dagger;'],
])('%s: all stay', (_, text) => {
  expect(namesIn(text)).toEqual(everyName);
});

/** The first and last letters of the part of Unicode that a file covers. */
const spans = (range: string) =>
  range.split(',').map((part) =>
    part
      .replace('U+', '')
      .split('-')
      .map((code) => Number.parseInt(code, 16)),
  );

test('whatever the text is, no file is left out that has one of its letters', () => {
  const letter = fc.oneof(
    fc.integer({min: 0x20, max: 0x2ff}),
    fc.integer({min: 0x1e00, max: 0x20ff}),
    fc.integer({min: 0x20, max: 0xd7ff}),
  );
  fc.assert(
    fc.property(fc.array(letter, {maxLength: 6}), (codes) => {
      const kept = namesIn(`Knit ${String.fromCodePoint(...codes)}.`);
      for (const {path, unicodeRange} of fonts) {
        if (unicodeRange === null) continue;
        const covers = spans(unicodeRange).some(([first = 0, last = first]) =>
          codes.some((code) => code >= first && code <= last),
        );
        if (covers) expect(kept).toContain(path);
      }
    }),
    {numRuns: 500},
  );
});
