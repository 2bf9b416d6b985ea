import fc from 'fast-check';
import {expect, test} from 'vitest';
import {cssString} from '../../src/layout/css-string.ts';

test.each([
  ['S-07', '"S-07"'],
  ['the "moss" stitch', '"the \\22 moss\\22  stitch"'],
  ['a\\b', '"a\\5c b"'],
  ['</style><script>', '"\\3c /style\\3e \\3c script\\3e "'],
  ['two\nlines', '"two\\a lines"'],
  ['\u0000', '"\\fffd "'],
])('%j is written %s', (text, css) => {
  expect(cssString(text)).toBe(css);
});

test('a CSS reader gets back what was written, and nothing in it can end the string or the style sheet', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary'}), (text) => {
      const inside = cssString(text).slice(1, -1);
      expect(inside).not.toMatch(/["<\n\r\f]/);
      expect(readCssString(inside)).toBe(text.replaceAll('\u0000', '\ufffd'));
    }),
  );
});

/** Escapes as CSS Syntax Level 3, section 4.3.7 reads them: up to six hexadecimal digits and one white space. */
function readCssString(inside: string): string {
  return inside.replace(/\\([0-9a-f]{1,6})[ \n\t]?/gi, (_, digits: string) =>
    String.fromCodePoint(Number.parseInt(digits, 16)),
  );
}
