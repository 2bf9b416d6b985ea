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
const fraction = new RegExp(`(\\d?)([${Object.keys(parts).join('')}])`, 'g');
const tag = /<(?:[^<>"']|"[^"]*"|'[^']*')*>/g;

/** Elements within which a fraction stays a letter: those that can hold no element, and code. */
const leftAlone = new Set(['title', 'style', 'textarea', 'code', 'pre']);

/**
 * Fractions as a numerator, a fraction slash and a denominator, which the font of the text sets as one small figure;
 * as letters they would come from another font. A space without width keeps `19 7/8` apart for whoever copies it or
 * has it read aloud.
 */
export function composeFractions(html: string): string {
  if (html.search(fraction) < 0) return html;
  const open: string[] = [];
  let composed = '';
  let end = 0;
  for (const match of html.matchAll(tag)) {
    composed += inText(html.slice(end, match.index), open) + match[0];
    end = match.index + match[0].length;
    follow(match[0], open);
  }
  return composed + inText(html.slice(end), open);
}

function inText(text: string, open: readonly string[]): string {
  if (open.some((name) => leftAlone.has(name))) return text;
  const element = open.includes('svg') ? 'tspan' : 'span';
  return text.replace(fraction, (_, digit: string, letter: string) => {
    const space = digit === '' ? '' : '\u00A0';
    return `${digit}<${element} class="fraction">${space}${parts[letter]}</${element}>`;
  });
}

/** Fractions as they are typed, `7 7/8`, for text that holds no element: a running head or the text on a tab. */
export function spellFractions(text: string): string {
  return text.replace(fraction, (_, digit: string, letter: string) => {
    const spelled = parts[letter]?.replace('\u2044', '/');
    return digit === '' ? `${spelled}` : `${digit} ${spelled}`;
  });
}

/** Keeps the names of the elements that matter here and are open. */
function follow(found: string, open: string[]): void {
  const name = /^<\/?([a-z]+)/.exec(found)?.[1] ?? '';
  if (name !== 'svg' && !leftAlone.has(name)) return;
  if (found.startsWith('</')) open.splice(open.lastIndexOf(name), 1);
  else if (!found.endsWith('/>')) open.push(name);
}
