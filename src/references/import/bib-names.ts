import type {CitationParsers} from './citation-parsers.ts';
import {longestName, mostNames} from './read-names.ts';
import {prepareTex, texText} from './tex-text.ts';

/** Names as CSL-JSON has them, and whether `and others` stood behind them. */
export interface BibNames {
  readonly names: readonly unknown[];
  readonly isOpen: boolean;
  /** How many names were left unread. */
  readonly left: number;
}

/**
 * Names joined by `and`, each `First von Last`, `von Last, First` or `von Last, Jr, First` (BibTeX: Patashnik, BibTeXing,
 * 1988, section 4); one that stands between braces as a whole is a body.
 */
export function bibNames(written: string, parsers: CitationParsers): BibNames {
  const parts = splitNames(written);
  const people = parts.filter((part) => !/^others$/i.test(part));
  const names = people.slice(0, mostNames).map((part) => {
    if (part.length > longestName) return texText(part, parsers);
    if (isBraced(part)) return {literal: texText(part.slice(1, -1), parsers)};
    const read = parsers.bibField('book', 'author', prepareTex(part, parsers))?.author;
    return (Array.isArray(read) && read[0]) || texText(part, parsers);
  });
  return {names, isOpen: people.length < parts.length, left: people.length - names.length};
}

function splitNames(written: string): readonly string[] {
  const parts: string[] = [];
  let [depth, start] = [0, 0];
  for (const match of written.matchAll(/[{}]|\sand(?=\s)/gi)) {
    if (match[0] === '{') depth++;
    else if (match[0] === '}') depth--;
    else if (depth === 0) {
      parts.push(written.slice(start, match.index));
      start = match.index + match[0].length;
    }
  }
  return [...parts, written.slice(start)].map((part) => part.trim()).filter((part) => part !== '');
}

/** Whether the first brace is closed by the last. */
function isBraced(part: string): boolean {
  if (!part.startsWith('{')) return false;
  let depth = 0;
  for (const {0: brace, index} of part.matchAll(/[{}]/g)) {
    depth += brace === '{' ? 1 : -1;
    if (depth === 0) return index === part.length - 1;
  }
  return false;
}
