import {expect, test} from 'vitest';
import {composeFractions} from '../../src/layout/compose-fractions.ts';

// U+2044, the fraction slash, is what Unicode (NFKC) makes of these letters and what a font's `frac` feature looks for.
test.each([
  ['<p>⅞ in</p>', '<p><span class="fraction">7⁄8</span> in</p>'],
  ['<p>19⅞ in, 5½ in</p>', '<p>19<span class="fraction">\u00A07⁄8</span> in, 5½ in</p>'],
  ['<p title="a > ⅛">⅓</p>', '<p title="a > ⅛"><span class="fraction">1⁄3</span></p>'],
  [
    '<svg><title>2⅜ in</title><text>2⅜ in</text></svg>⅜',
    '<svg><title>2⅜ in</title><text>2<tspan class="fraction">\u00A03⁄8</tspan> in</text></svg><span class="fraction">3⁄8</span>',
  ],
  ['<svg/>⅝<code>⅝</code>', '<svg/><span class="fraction">5⁄8</span><code>⅝</code>'],
  [
    '<p>under 1⁄16 in, 3⅞ in</p>',
    '<p>under <span class="fraction">1⁄16</span> in, 3<span class="fraction">\u00A07⁄8</span> in</p>',
  ],
  ['½ and ¼ are in the fonts', '½ and ¼ are in the fonts'],
])('%s', (html, composed) => {
  expect(composeFractions(html)).toBe(composed);
});

test('the parts are those of the letter in Unicode', () => {
  for (const letter of '⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞') {
    expect(composeFractions(letter)).toBe(`<span class="fraction">${letter.normalize('NFKC')}</span>`);
  }
});
