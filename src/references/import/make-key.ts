import {parseCitations} from '../citation.ts';
import type {Source} from '../source.ts';
import {creatorsOf} from '../source-identity.ts';

/** Whether `text` can stand behind the `@` of a citation as it is. */
export function isCitationKey(text: string): boolean {
  if (text.length > longestKey) return false;
  const parsed = parseCitations(`@${text}`);
  return parsed.ok && parsed.value.length === 1 && parsed.value[0]?.key === text;
}

/** A key such as `ashdown2011`: the family name, or else the first long word of the title, and the year. */
export function makeKey(source: Omit<Source, 'id'>): string {
  const [name] = creatorsOf(source);
  const words = keyWords(name?.family ?? name?.literal ?? name?.given ?? '');
  const titleWords = keyWords(source.title ?? '');
  const stem =
    (name?.family === undefined ? words.find((word) => word.length > 3) : words.join('')) ??
    titleWords.find((word) => word.length > 3);
  const year = source.issued?.['date-parts'][0]?.[0];
  const key = `${(stem || words[0] || titleWords[0] || 'source').slice(0, longestStem)}${year === undefined ? '' : Math.abs(year)}`;
  return isCitationKey(key) ? key : 'source';
}

/** `base`, or `base` with the first letter or letters that make it new: a to z, then aa to az, and so on. */
export function freeKey(base: string, isTaken: (key: string) => boolean): string {
  if (!isTaken(base)) return base;
  for (let number = 1; ; number++) {
    const key = `${base}${letters(number)}`;
    if (!isTaken(key)) return key;
  }
}

const longestKey = 100;
const longestStem = 30;

function letters(number: number): string {
  const rest = (number - 1) % 26;
  const before = (number - 1 - rest) / 26;
  return `${before > 0 ? letters(before) : ''}${String.fromCharCode(97 + rest)}`;
}

function keyWords(text: string): readonly string[] {
  const plain = text
    .normalize('NFKD')
    .replace(/[\p{M}'’]/gu, '')
    .toLowerCase();
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}
