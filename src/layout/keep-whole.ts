import {mapText} from './map-text.ts';

/** An item's number, with the leaf behind it. */
const itemNumber = /(?<![\p{L}\d-])\p{Lu}{1,4}-\d{1,4}(?:[ \u00A0]·[ \u00A0]\d+)?(?![\p{L}\d-])/gu;
/** Two short words that a hyphen joins. */
const joinedWords = /(?<![\p{L}\d-])\p{L}{1,12}-\p{L}{1,12}(?![\p{L}\d-])/gu;

/** Where text runs on from line to line. */
const running = ['p', 'li', 'td', 'dd', 'figcaption'] as const;

/**
 * Lines may break behind a hyphen. The number of an item is looked for as a whole, and a title reads badly in halves of
 * a word, so neither is broken there.
 */
export function keepWhole(html: string): string {
  return mapText(html, ['h1', 'svg', ...running], (text, open) => {
    if (open.size === 0 || open.has('svg') || !text.includes('-')) return text;
    return text.replace(open.has('h1') ? joinedWords : itemNumber, '<span class="whole">$&</span>');
  });
}
