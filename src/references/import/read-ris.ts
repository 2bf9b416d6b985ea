import type {Problem, Span} from '../../support/result.ts';

/** One line `AU  - Ashdown, Hester`, with the lines that go on from it. */
export interface RisLine {
  readonly tag: string;
  readonly text: string;
}

export interface RisRecord {
  /** What `TY` says, in capitals. */
  readonly type: string;
  /** The lines between `TY` and `ER`, in order. */
  readonly lines: readonly RisLine[];
  /** The line with `TY`. */
  readonly span: Span;
}

export interface RisFile {
  readonly records: readonly RisRecord[];
  readonly problems: readonly Problem[];
}

/**
 * Cuts a RIS file into records: a tag of two letters or digits, two spaces, a hyphen and a space begin a line; `TY` begins
 * a record and `ER` ends it (RIS format specification, 2001 and 2011). A record without `ER` ends where the next begins.
 */
export function readRis(text: string): RisFile {
  const records: {type: string; lines: {tag: string; text: string}[]; span: Span}[] = [];
  const problems: Problem[] = [];
  let isOpen = false;
  for (const line of linesOf(text)) {
    const [, tag, value = ''] = /^\s{0,3}([A-Z][A-Z0-9]) {1,2}-(?: (.*)|$)/.exec(line.text) ?? [];
    const record = isOpen ? records.at(-1) : undefined;
    if (tag === 'TY') {
      records.push({type: value.trim().toUpperCase(), lines: [], span: line.span});
      isOpen = true;
    } else if (tag === 'ER') {
      isOpen = false;
    } else if (record === undefined) {
      if (line.text.trim() !== '' && !problems.some(isStrayLine)) problems.push(strayLine(line.span));
    } else if (tag !== undefined) {
      record.lines.push({tag, text: value.trim()});
    } else if (line.text.trim() !== '') {
      const last = record.lines.at(-1);
      if (last) last.text = `${last.text} ${line.text.trim()}`;
    }
  }
  return {records, problems};
}

const stray = 'this line stands outside of every record';

function isStrayLine({message}: Problem): boolean {
  return message === stray;
}

function strayLine(span: Span): Problem {
  return {
    message: stray,
    hint: 'Begin each record with a line such as `TY  - BOOK` and end it with `ER  - `, and import the file again.',
    span,
  };
}

function* linesOf(text: string): Generator<{readonly text: string; readonly span: Span}> {
  for (const {0: line, index} of text.matchAll(/[^\r\n]+/g))
    yield {text: line, span: {start: index, end: index + line.length}};
}
