import type {FontFace} from './layout-input.ts';

/**
 * Those of `fonts` that a document needs whose style sheets and body are `text`. A file of a part of Unicode is left out
 * when the document has no letter of that part: the browser takes none from it then. Where it cannot be told which
 * letters there are, all stay.
 */
export function usedFonts(fonts: readonly FontFace[], text: string): readonly FontFace[] {
  const letters = lettersIn(text);
  if (letters === null) return fonts;
  return fonts.filter(({unicodeRange}) => {
    if (unicodeRange === null) return true;
    const covered = spansOf(unicodeRange);
    return covered.some(([first, last]) => letters.some((letter) => letter >= first && letter <= last));
  });
}

/** What HTML calls a letter by name without a number, and is in every font. */
const plainEntities = ['&amp;', '&lt;', '&gt;', '&quot;', '&apos;', '&nbsp;', '&shy;'];

/**
 * The code points that may be printed, as letters, numbered entities or escapes in CSS, in capitals and in small letters;
 * null where accents stand by themselves, which the browser may join with their letters, and where letters have names.
 */
function lettersIn(text: string): readonly number[] | null {
  const beyondAscii = (text.match(/[^\0-\x7f]+/g) ?? []).join('');
  if (/\p{M}/u.test(beyondAscii)) return null;
  const named = text.match(/&[a-z][a-z0-9]*;/gi) ?? [];
  if (!named.every((entity) => plainEntities.includes(entity))) return null;
  const decimal = Array.from(text.matchAll(/&#(\d{1,7})/g), ([, digits = '']) => Number(digits));
  const hexadecimal = Array.from(text.matchAll(/(?:&#x|\\)([\da-f]{1,6})/gi), ([, digits = '']) =>
    Number.parseInt(digits, 16),
  );
  const numbered = [...decimal, ...hexadecimal].filter((code) => code <= 0x10ffff);
  const written = ascii + beyondAscii + numbered.map((code) => String.fromCodePoint(code)).join('');
  const letters = new Set(written + written.toUpperCase() + written.toLowerCase());
  return Array.from(letters, (letter) => letter.codePointAt(0) ?? 0);
}

const ascii = Array.from({length: 0x80}, (_, code) => String.fromCharCode(code)).join('');

/** The first and last code points of the parts of a CSS unicode-range. */
function spansOf(range: string): readonly (readonly [number, number])[] {
  return range.split(',').map((part) => {
    const [first = '', last = first] = part.replace('U+', '').split('-');
    return [Number.parseInt(first, 16), Number.parseInt(last, 16)];
  });
}
