const time = String.raw`\d+:\d\d(?::\d\d)?`;
const numeral = String.raw`[A-Za-z]{0,2}\d+(?:[.:]\d+)*[a-eg-z]?`;
const romanOrLetter = String.raw`[IVXLCDMivxlcdm]+|[A-Z]|[a-z](?!\s+\p{L})`;
const wordEnd = String.raw`(?![\p{L}\p{M}\p{N}])`;
const following = String.raw`(?:\s?ff?\.?)?`;
const part = `(?:${time}|${numeral}|${romanOrLetter})${following}${wordEnd}`;
const dash = String.raw`\s*(?:--?|[‐‑–—])\s*`;
const range = `${part}(?:${dash}${part})?`;
/** `, 3 swatches` begins the suffix; `, 60` and `and 60` go on counting. */
const more = String.raw`(?:\s*[,&]\s*|\s+and\s+)(?=\p{L}{0,2}\d|[IVXLCivxlc]{2})${range}(?!\s+(?!and\b)\p{L})`;
const valuePattern = new RegExp(`^${range}(?:${more})*`, 'u');
const romanPattern = /^(?=.)m*(?:c[md]|d?c{0,3})(?:x[cl]|l?x{0,3})(?:i[xv]|v?i{0,3})$/i;

export interface LocatorValue {
  /** With an en dash in ranges and `, ` between the parts of a list. */
  readonly value: string;
  /** How many UTF-16 units of the text it takes. */
  readonly length: number;
}

/**
 * The number, range or list of them that `text` begins with, or null: `57`, `112-114`, `xii`, `57, 60 and 62`, `3:20`,
 * `2a`, `B`, `57ff.`.
 */
export function readLocatorValue(text: string): LocatorValue | null {
  const written = valuePattern.exec(text)?.[0];
  if (written === undefined) return null;
  const words = written.match(/\p{L}+/gu) ?? [];
  const areNumerals = words.every(
    (word) => word.length < 3 || /\d/.test(word) || isRomanNumeral(word) || word === 'and',
  );
  if (!areNumerals) return null;
  const value = written
    .replace(new RegExp(dash, 'gu'), '–')
    .replace(/\s*[,&]\s*|\s+and\s+/g, ', ')
    .replace(/\s+/g, ' ');
  return {value, length: written.length};
}

function isRomanNumeral(word: string): boolean {
  return romanPattern.test(word);
}
