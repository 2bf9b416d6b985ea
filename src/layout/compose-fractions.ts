import {mapText} from './map-text.ts';

/** Fractions that have a letter of their own in Unicode, and none in the fonts of the layouts. */
const parts: Readonly<Record<string, string>> = {
  '⅓': '1⁄3',
  '⅔': '2⁄3',
  '⅕': '1⁄5',
  '⅖': '2⁄5',
  '⅗': '3⁄5',
  '⅘': '4⁄5',
  '⅙': '1⁄6',
  '⅚': '5⁄6',
  '⅛': '1⁄8',
  '⅜': '3⁄8',
  '⅝': '5⁄8',
  '⅞': '7⁄8',
};
const letter = new RegExp(`(\\d?)([${Object.keys(parts).join('')}])`, 'g');
/** One that has no letter, `1⁄16`. */
const written = /(?<!\d)\d{1,3}⁄\d{1,3}(?!\d)/g;

/**
 * Fractions as a numerator, a fraction slash and a denominator, which the font of the text sets as one small figure;
 * as letters they would come from another font. A space without width keeps `19 7/8` apart for whoever copies it or
 * has it read aloud.
 */
export function composeFractions(html: string): string {
  if (html.search(letter) < 0 && html.search(written) < 0) return html;
  return mapText(html, ['svg'], (text, open) => {
    const element = open.has('svg') ? 'tspan' : 'span';
    const small = (part: string) => `<${element} class="fraction">${part}</${element}>`;
    return text
      .replace(written, small)
      .replace(letter, (_, digit: string, found: string) =>
        digit === '' ? small(`${parts[found]}`) : `${digit}${small(`\u00A0${parts[found]}`)}`,
      );
  });
}

/** Fractions as they are typed, `7 7/8`, for text that holds no element: a running head or the text on a tab. */
export function spellFractions(text: string): string {
  return text
    .replaceAll(written, (found) => found.replace('⁄', '/'))
    .replace(letter, (_, digit: string, found: string) => {
      const spelled = parts[found]?.replace('⁄', '/');
      return digit === '' ? `${spelled}` : `${digit} ${spelled}`;
    });
}
