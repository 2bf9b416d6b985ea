import type {CitationParsers} from './citation-parsers.ts';
import {textOf} from './csl-record.ts';

/**
 * TeX as plain text: accents and signs become letters, a macro that is not known leaves its argument or its name, braces
 * go. Marks such as `<i>` stand where TeX slanted the letters. Text that is no sound TeX loses its braces and backslashes.
 */
export function texText(tex: string, parsers: CitationParsers): string {
  if (!/[\\{}$~`'-]/.test(tex)) return tex;
  if (tex.length > longestTex) return withoutTex(tex);
  const prepared = prepareTex(tex, parsers);
  if (deepest(prepared) > deepestTex) return withoutTex(prepared);
  const read = (text: string) => textOf(parsers.bibField('misc', 'title', text)?.title);
  // A price in dollars opens a formula that nothing closes.
  const text = read(prepared) ?? read(prepared.replace(/\\?\$/g, '\\$')) ?? withoutTex(prepared);
  return text.replace(/\\([a-zA-Z]+|.)/g, '$1');
}

/** Puts into words what the parser does not know or reads wrongly. */
export function prepareTex(tex: string, parsers: CitationParsers): string {
  return (
    tex
      .replace(/\\\\\*?/g, ' ')
      .replace(/\\[ ,;:!]/g, (space) => (space === '\\!' ? '' : ' '))
      .replace(/\\[-/]/g, '')
      .replace(/\\\^\{\s*\}/g, '^')
      // A tilde alone would tie the words on both sides.
      .replace(/\\~\{\s*\}/g, '\\textasciitilde{}')
      .replace(/\\[dt]?frac\s*\{([^{}]*)\}\s*\{([^{}]*)\}/g, '$1/$2')
      .replace(/\\href\s*\{[^{}]*\}/g, '')
      // An accent takes the place of the dot of an i.
      .replace(/(\\["'`^~=.]\s*\{?\s*)\\([ij])(?![A-Za-z])\s*/g, '$1$2')
      .replace(/\\([a-zA-Z]+)(\s*)(?=(\{?))/g, (macro, name: string, space: string, brace: string) => {
        if (name === 'begin' || name === 'end') return macro;
        if (Object.hasOwn(words, name)) return words[name] ?? '';
        if (parsers.knowsMacro(name)) return macro;
        return brace === '{' ? '' : `${name}${space}`;
      })
  );
}

/** In UTF-16 units, of one field: the parser needs more than its share of time for what is longer. */
export const longestTex = 20_000;
/** Braces inside each other; the parser calls itself for each. */
const deepestTex = 50;

function deepest(text: string): number {
  let [depth, most] = [0, 0];
  for (const [brace] of text.matchAll(/[{}]/g)) {
    depth += brace === '{' ? 1 : -1;
    most = Math.max(most, depth);
  }
  return most;
}

function withoutTex(text: string): string {
  return text.replace(/\\[a-zA-Z]+\s*|\\(.?)|[{}]/g, '$1');
}

/** Common macros that the parser leaves as they are; LaTeX2e for authors, and amsmath. */
const words: Readonly<Record<string, string>> = {
  aa: 'å',
  AA: 'Å',
  ldots: '…',
  dots: '…',
  textellipsis: '…',
  times: '×',
  pm: '±',
  circ: '°',
  degree: '°',
  slash: '/',
  quad: ' ',
  qquad: ' ',
  par: ' ',
  newline: ' ',
  protect: '',
  noopsort: '',
};
