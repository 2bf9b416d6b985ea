import type {Problem, Span} from '../../support/result.ts';
import {type BibBody, type BibField, readBibBody} from './bib-body.ts';
import {type BibMacros, entryStart} from './bib-tokens.ts';

export interface BibEntry {
  /** In small letters, such as `book`. */
  readonly type: string;
  readonly key: string | null;
  /** Each name once: the first counts. */
  readonly fields: readonly BibField[];
  /** Names of fields that were written again. */
  readonly repeated: readonly string[];
  readonly unknownMacros: readonly string[];
  /** The `@` and the type. */
  readonly span: Span;
}

export interface BibFile {
  readonly entries: readonly BibEntry[];
  /** An entry with a problem is left out; reading goes on at the next. */
  readonly problems: readonly Problem[];
}

/**
 * Cuts a BibTeX or BibLaTeX file into entries and fields. `@string` is put in where it is used, `@comment`, `@preamble`
 * and what stands between entries is passed over. Takes time in proportion to the text, whatever is in it.
 */
export function readBib(text: string): BibFile {
  const entries: BibEntry[] = [];
  const problems: Problem[] = [];
  const strings = new Map(months.map((month) => [month, month]));
  const macros = macrosIn(strings);
  const starts = /@[ \t]*([A-Za-z]+)\s*([{(])?/g;
  for (let start = starts.exec(text); start; start = starts.exec(text)) {
    const [whole, name = '', opening] = start;
    const type = name.toLowerCase();
    const span = {start: start.index, end: start.index + whole.replace(/\s*[{(]?$/, '').length};
    if (type === 'comment') continue;
    if (opening === undefined) {
      if (beginsLine(text, span.start)) problems.push(withoutBrace(span, whole.trim()));
      continue;
    }
    const takesKey = !['string', 'preamble'].includes(type);
    const body = readBibBody(text, starts.lastIndex, {opening, macros, takesKey});
    starts.lastIndex = body.problem === null ? body.end : nextEntry(text, body.end);
    if (type === 'preamble') continue;
    if (body.problem !== null) problems.push(body.problem);
    else if (takesKey) entries.push({type, span, ...withoutRepeats(body)});
    else for (const field of body.fields) strings.set(field.name, field.text);
  }
  return {entries, problems};
}

/** The names of months that every style of BibTeX knows. */
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** In UTF-16 units: each `@string` may stand for others twice over, and so on. */
const mostFromMacros = 1_000_000;

function macrosIn(strings: ReadonlyMap<string, string>): BibMacros {
  let left = mostFromMacros;
  return (name) => {
    const value = strings.get(name);
    left -= value?.length ?? 0;
    return left < 0 ? undefined : value;
  };
}

/** An address of mail between entries is a remark. */
function beginsLine(text: string, start: number): boolean {
  return /(?:^|\n)[ \t]*$/.test(text.slice(Math.max(0, start - 20), start));
}

function withoutBrace(span: Span, written: string): Problem {
  return {
    message: `no brace follows \`${written}\``,
    hint: 'Begin each entry as in `@book{ashdown2011,`, and import the file again.',
    span,
  };
}

function nextEntry(text: string, start: number): number {
  const next = new RegExp(entryStart, 'g');
  next.lastIndex = Math.max(0, start - 1);
  return next.exec(text)?.index ?? text.length;
}

function withoutRepeats({key, fields, unknownMacros}: BibBody) {
  const first = new Map<string, BibField>();
  const repeated: string[] = [];
  for (const field of fields) {
    if (first.has(field.name)) repeated.push(field.name);
    else first.set(field.name, field);
  }
  return {key, fields: [...first.values()], repeated, unknownMacros};
}
