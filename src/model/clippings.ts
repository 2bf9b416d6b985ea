import type {Place} from '../diagnostics/finding.ts';
import {type PlacedCitation, readCitations} from './read-citations.ts';
import type {ReadingFault} from './reading-rules.ts';

/** A scrap of reading, kept for items that are still to be written. */
export interface Clipping {
  /** The day it was made, year-month-day. */
  readonly on: string;
  /** The requirements it is kept for. */
  readonly ids: readonly string[];
  readonly citations: readonly PlacedCitation[];
  /** The citations as written, without brackets; null when no source was noted. */
  readonly source: string | null;
  readonly words: string;
  /** The whole first line without its hyphen. */
  readonly place: Place;
}

const date = String.raw`\d{4}-\d{2}-\d{2}`;
const id = '[A-Z]{1,4}-[0-9]{1,3}';
const beginsLikeOne = new RegExp(String.raw`^[-*+][ \t]+${date}\b`);
// Up to the first `@` and then up to the bracket: a line full of signs is gone over once.
const source = String.raw`[ \t]+\[(?<source>[^\]@]*@[^\]]*)\]`;
const noSource = String.raw`(?=[ \t]|$)(?![ \t]+\[[^\]@]*@)`;
const linePattern = new RegExp(
  String.raw`^(?<mark>[-*+][ \t]+)(?<on>${date})[ \t]+(?<ids>${id}(?:(?:[ \t]*,[ \t]*|[ \t]+)${id})*)(?:${source}|${noSource})(?<words>.*)$`,
);

/**
 * Reads `content/clippings.md`: a list with one clipping an entry, such as
 * `- 2026-03-14 S-07, Q-03 [@ashdown2011, p. 57] why the slip must be knitwise`; indented lines go on with the words.
 * Everything else in the file is the candidate's own and is passed over.
 */
export function readClippings(text: string): {
  readonly clippings: readonly Clipping[];
  readonly faults: readonly ReadingFault[];
} {
  const clippings: Clipping[] = [];
  /** The lines with which each of them goes on. */
  const more: string[][] = [];
  const faults: ReadingFault[] = [];
  let isOpen = false;
  for (const [index, line] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .entries()) {
    if (isOpen && /^[ \t]+\S/.test(line)) {
      more.at(-1)?.push(line.trim());
      continue;
    }
    const found = beginsLikeOne.test(line) ? readLine(line, index + 1) : nothing;
    isOpen = found.clipping !== null;
    if (found.clipping !== null) {
      clippings.push(found.clipping);
      more.push([]);
    }
    faults.push(...found.faults);
  }
  const whole = clippings.map((clipping, index) => {
    const words = [clipping.words, ...(more[index] ?? [])].join(' ').trim();
    return {...clipping, words};
  });
  return {clippings: whole, faults};
}

interface ReadLine {
  readonly clipping: Clipping | null;
  readonly faults: readonly ReadingFault[];
}

const nothing: ReadLine = {clipping: null, faults: []};

function readLine(text: string, line: number): ReadLine {
  const groups = linePattern.exec(text)?.groups;
  const at = (start: number, end: number): Place => ({
    line,
    column: start + 1,
    endLine: line,
    endColumn: end + 1,
  });
  const begin = /^[-*+][ \t]+/.exec(text)?.[0].length ?? 0;
  const whole = at(begin, text.trimEnd().length);
  if (groups === undefined) {
    const message = 'a clipping does not say for which requirement it is kept, or its citation does not end';
    const hint =
      'Write the date, one id or more, and if you like the citation in brackets: `- 2026-03-14 S-07 [@key, p. 57] words`.';
    return {clipping: null, faults: [{rule: 'clipping-form', place: whole, message, hint}]};
  }
  const {mark = '', on = '', ids = '', words = ''} = groups;
  const citations = groups.source ?? null;
  const citationsStart = text.indexOf('[', mark.length + on.length + ids.length) + 1;
  const read =
    citations === null
      ? {citations: [], problems: []}
      : readCitations(citations, (start, end) => at(citationsStart + start, citationsStart + end));
  return {
    clipping: {
      on,
      ids: ids.split(/[\s,]+/),
      citations: read.citations,
      source: citations,
      words: words.trim(),
      place: whole,
    },
    faults: read.problems.map((problem) => ({rule: 'citation-form', ...problem})),
  };
}

/** The line that keeps a clipping; `words` become one line. */
export function clippingLine({
  on,
  ids,
  source,
  words,
}: Pick<Clipping, 'on' | 'ids' | 'source' | 'words'>): string {
  const inBrackets = source === null ? '' : `[${source}]`;
  const parts = [on, ids.join(', '), inBrackets, words.replace(/\s+/g, ' ').trim()];
  return `- ${parts.filter((part) => part !== '').join(' ')}`;
}

/** What was kept for a requirement, the first first. */
export function clippingsFor(clippings: readonly Clipping[], id: string): readonly Clipping[] {
  return clippings.filter(({ids}) => ids.includes(id));
}

/** A clipping in one line without its ids, as a note: `2026-03-14 [@ashdown2011, p. 57] why …`. */
export function clippingInShort({on, source, words}: Clipping): string {
  return [on, ...(source === null ? [] : [`[${source}]`]), words].join(' ').trim();
}
