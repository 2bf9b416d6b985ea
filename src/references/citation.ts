import {failure, type Problem, type Result, type Span, success} from '../support/result.ts';
import type {Locator} from './locator.ts';
import {readLocator} from './read-locator.ts';

/** One pointer to a source. Spans count from the start of the text that was parsed. */
export interface Citation {
  readonly key: string;
  readonly locator: Locator | null;
  /** What stands before the key, such as `see`. */
  readonly prefix: string;
  /** What follows the locator, as written, with the comma it begins with: `, and onward`. */
  readonly suffix: string;
  /** `-@key`: the author stands in the sentence already. */
  readonly suppressAuthor: boolean;
  readonly span: Span;
  readonly keySpan: Span;
}

/** Citations between one pair of brackets, or one in-text `@key [p. 57]`. */
export interface CitationCluster {
  readonly citations: readonly Citation[];
  readonly inText: boolean;
}

/**
 * Reads what stands between the brackets of `[see @ashdown2011, p. 57; @lunde2016, pp. 112-114, and onward]`, which
 * is also the form used in front matter: `@ashdown2011, p. 57`. The in-text form `@ashdown2011 [p. 57]` is read too.
 *
 * `-@key` suppresses the author; a bare number after the comma is a page; several citations stand apart by `;`. A key
 * is letters, digits and `_`, with single `: . # $ % & + ? < > ~ / -` between them.
 */
export function parseCitations(text: string): Result<readonly Citation[]> {
  const inText = inTextForm.exec(text);
  // `@key [p. 57]` becomes `@key ,p. 57 `: the bracketed form, letter for letter in the same places.
  const bracketed = inText === null ? text : `${inText[1]},${inText[2]} ${inText[3]}`;
  const citations: Citation[] = [];
  const problems: Problem[] = [];
  for (const segment of splitAtSemicolons(bracketed)) {
    const result = parseSegment(segment);
    if (result.ok) citations.push(result.value);
    else problems.push(...result.problems);
  }
  if (problems.length > 0) return failure(...problems);
  const last = citations.at(-1);
  if (inText === null || last === undefined) return success(citations);
  const closed = {...last, span: {start: last.span.start, end: text.trimEnd().length}};
  return success([...citations.slice(0, -1), closed]);
}

const keyPattern = String.raw`[\p{L}\p{N}_](?:[\p{L}\p{M}\p{N}_]|[:.#$%&+?<>~/-](?=[\p{L}\p{N}_]))*`;
/** An `@` inside a word, as in an address, starts no key. */
const keyMark = new RegExp(String.raw`(?<![\p{L}\p{N}_])(-?)@(${keyPattern})`, 'u');
const inTextForm = new RegExp(String.raw`^(\s*-?@${keyPattern}\s*)\[(.*)\](\s*)$`, 'su');

/** A part between semicolons, without the space around it. An empty one spans its semicolons, so that it can be seen. */
interface Segment {
  readonly text: string;
  readonly span: Span;
}

function splitAtSemicolons(text: string): readonly Segment[] {
  let offset = 0;
  return text.split(';').map((part) => {
    const partStart = offset;
    const partEnd = partStart + part.length;
    offset = partEnd + 1;
    const trimmed = part.trim();
    const start = partStart + part.length - part.trimStart().length;
    const span =
      trimmed === ''
        ? {start: Math.max(0, partStart - 1), end: Math.min(text.length, partEnd + 1)}
        : {start, end: start + trimmed.length};
    return {text: trimmed, span};
  });
}

function parseSegment({text, span}: Segment): Result<Citation> {
  const start = span.start;
  const mark = keyMark.exec(text);
  if (mark === null) return failure(describeMissingKey(text, span));
  const key = mark[2] ?? '';
  const afterKey = mark.index + mark[0].length;
  const rest = text.slice(afterKey);

  const second = keyMark.exec(rest);
  if (second !== null) {
    const at = start + afterKey + second.index;
    return failure({
      message: `A second source, \`${second[0]}\`, stands in the citation of \`${key}\``,
      hint: 'Put a semicolon between two citations, as in `@ashdown2011, p. 57; @lunde2016, p. 112`.',
      span: {start: at, end: at + second[0].length},
    });
  }

  const located = readLocator(rest, start + afterKey);
  if (!located.ok) return located;
  return success({
    key,
    locator: located.value.locator,
    prefix: text.slice(0, mark.index).trimEnd(),
    suffix: located.value.suffix,
    suppressAuthor: mark[1] === '-',
    span,
    keySpan: {start: start + afterKey - key.length, end: start + afterKey},
  });
}

function describeMissingKey(text: string, span: Span): Problem {
  const hint = 'Write `@` and the key of a source in the library, as in `@ashdown2011, p. 57`.';
  if (text === '') return {message: 'A citation is empty', hint, span};
  const at = text.search(/(?<![\p{L}\p{N}_])@/u);
  if (at < 0) return {message: `\`${text}\` names no source`, hint, span};
  return {
    message: '`@` stands without the key of a source',
    hint,
    span: {start: span.start + at, end: span.start + at + 1},
  };
}
