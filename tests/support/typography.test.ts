import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {setTypography} from '../../src/support/typography.ts';
import {composeText} from '../markdown/compose-text.ts';

// Common practice of English typesetting (inch and foot signs, en dash in ranges, × between measures); no one source.
describe('setting type', () => {
  test.each([
    ['5" and 5\' and 3½"', '5″ and 5′ and 3½″'],
    ['3 1/2" wide', '3½″ wide'],
    ['5\'6" tall', '5′6″ tall'],
    ['5″, 5′ and “so”', '5″, 5′ and “so”'],
    ['"knit 20" and "purl 30"', '“knit 20” and “purl 30”'],
    ['She said "cast on 3" wide, then knit" and left', 'She said “cast on 3″ wide, then knit” and left'],
    ["it's the knitters' rock'n'roll of the '70s", 'it’s the knitters’ rock’n’roll of the ’70s'],
    ['"\'nested\' too" ("b")', '“‘nested’ too” (“b”)'],
    ['a -- b --- c - d ... e', 'a – b — c – d … e'],
    ['pp. 12-14 and 10.5-12.5 cm', 'pp. 12–14 and 10.5–12.5\u00A0cm'],
    [
      '2026-03-14, 1-2-1, 978-0-306-40615-7, S-07, 4-ply',
      '2026-03-14, 1-2-1, 978-0-306-40615-7, S-07, 4-ply',
    ],
    ['FG-2-0417', 'FG-2-0417'],
    ['1/2 1/3 3/8 of 10 1/2 in', '½ ⅓ ⅜ of 10½\u00A0in'],
    [
      '1/2 RC, 1/3 rib, 2/2 rib, 11/2, 1/2/3, 1/2 Left Cross',
      '1/2 RC, 1/3 rib, 2/2 rib, 11/2, 1/2/3, 1/2 Left Cross',
    ],
    ['10 x 12 cm, 2x2 rib, 4" x 5"', '10\u00A0×\u00A012\u00A0cm, 2×2 rib, 4″\u00A0×\u00A05″'],
    ['10 cm x 12 cm', '10\u00A0cm\u00A0×\u00A012\u00A0cm'],
    ['20 sts, 28 rows, 5 %, 100 g', '20\u00A0sts, 28\u00A0rows, 5\u00A0%, 100\u00A0g'],
    ['https://example.org/1-2?x="y" a-b@example-1.org', 'https://example.org/1-2?x="y" a-b@example-1.org'],
    ['k2tog, yo, k2-3', 'k2tog, yo, k2-3'],
  ])('%j becomes %j', (written, set) => {
    expect(setTypography(written)).toBe(set);
  });

  test.each([
    [
      'marks find each other around emphasis',
      '"*knit* 2" and `"x"`',
      '“<em>knit</em> 2” and <code>"x"</code>',
    ],
    ['code between numbers stays', '2 `x` 3 -- `--`', '2 <code>x</code> 3 – <code>--</code>'],
    ['every cell for itself', '| 5" | "a" |\n|-|-|', '5″'],
  ])('%s', (_, markdown, html) => {
    expect(composeText(markdown).html).toContain(html);
  });

  const texts = fc.oneof(
    fc.string({unit: 'grapheme'}),
    fc
      .array(
        fc.constantFrom(
          '"',
          "'",
          '-',
          '--',
          '...',
          '1',
          '1/2',
          ' ',
          'x',
          'cm',
          'a',
          '(',
          '½',
          '\n',
          '\uFFFC',
          '@',
          '.',
        ),
        {maxLength: 40},
      )
      .map((list) => list.join('')),
  );

  test('letters, digits outside fractions and line ends stay as they are', () => {
    const kept = (text: string) => text.replace(/[\d½¼¾⅓⅔⅛⅜⅝⅞/\s"'“”‘’″′.…–—×x-]/g, '');
    fc.assert(
      fc.property(texts, (text) => {
        expect(kept(setTypography(text))).toBe(kept(text));
        expect(setTypography(text).split('\n')).toHaveLength(text.split('\n').length);
      }),
      {numRuns: 500},
    );
  });
});
