import type {Problem} from '../../support/result.ts';
import {type BibMacros, entryStart, spaceAt} from './bib-tokens.ts';

/** A field's value without its delimiters, its parts joined, and the offset behind it. */
export interface BibValue {
  readonly text: string;
  readonly end: number;
  readonly unknownMacros: readonly string[];
}

/**
 * Reads `{…}`, `"…"`, a number or the name of a `@string` at `start`, joined by `#` (BibTeX: Patashnik, BibTeXing, 1988,
 * section 2). Braces count whatever stands before them. Where an entry begins before the value ends, it is not closed.
 */
export function readBibValue(text: string, start: number, macros: BibMacros): BibValue | Problem {
  const parts: string[] = [];
  const unknownMacros: string[] = [];
  let at = start;
  for (;;) {
    const character = text.charAt(at);
    if (character === '{' || character === '"') {
      const end = character === '{' ? endOfBraces(text, at) : endOfQuotes(text, at);
      if (end === null) return notClosed(at, character);
      parts.push(text.slice(at + 1, end));
      at = end + 1;
    } else {
      word.lastIndex = at;
      const name = word.exec(text)?.[0];
      if (name === undefined) return noValue(Math.min(at, text.length - 1));
      const value = /^\d+$/.test(name) ? name : macros(name.toLowerCase());
      if (value === undefined) unknownMacros.push(name);
      parts.push(value ?? name);
      at += name.length;
    }
    at = spaceAt(text, at);
    if (text.charAt(at) !== '#') return {text: parts.join(''), end: at, unknownMacros};
    at = spaceAt(text, at + 1);
  }
}

/** The problem of the brace or quotation mark at `start`. */
export function notClosed(start: number, opening: string): Problem {
  const closing = {'{': '}', '(': ')'}[opening] ?? '"';
  return {
    message: `\`${opening}\` is opened and not closed before the entry ends`,
    hint: `Write the \`${closing}\` that is missing, and import the file again.`,
    span: {start, end: start + 1},
  };
}

function noValue(start: number): Problem {
  return {
    message: 'a field has no value here',
    hint: 'Write the value between braces, as in `title = {The Shaped Stitch}`, and import the file again.',
    span: {start, end: start + 1},
  };
}

const word = /[^\s{}()"#,=%\\]+/y;

function endOfBraces(text: string, start: number): number | null {
  const marks = new RegExp(`[{}]|${entryStart}`, 'g');
  marks.lastIndex = start;
  let depth = 0;
  for (let match = marks.exec(text); match; match = marks.exec(text)) {
    if (match[0] === '{') depth++;
    else if (match[0] !== '}') return null;
    else if (--depth === 0) return match.index;
  }
  return null;
}

function endOfQuotes(text: string, start: number): number | null {
  const marks = new RegExp(`[{}"]|${entryStart}`, 'g');
  marks.lastIndex = start + 1;
  let depth = 0;
  for (let match = marks.exec(text); match; match = marks.exec(text)) {
    if (match[0] === '{') depth++;
    else if (match[0] === '}') depth--;
    else if (match[0] !== '"') return null;
    else if (depth <= 0) return match.index;
  }
  return null;
}
