import type {Problem, Span} from '../../support/result.ts';
import {largestNumber} from './lex-row.ts';
import {noReadings, readReading} from './readings.ts';
import type {Multiple, Readings, RowsHeader} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';
import {makeStitch} from './stitch-makers.ts';

export interface ReadHeader {
  readonly header: RowsHeader;
  /** The text with every line of the header blanked, so that offsets stay true. */
  readonly rest: string;
}

const number = '(\\d{1,7})';
const multipleLine = new RegExp(
  `^\\s*(?:mult(?:iple)?)\\s*(?::|of)?\\s*(?:of\\s*)?${number}\\s*(?:sts?|stitches)?\\s*(?:(?:\\+|plus|and)\\s*${number})?\\s*(?:sts?|stitches)?[^\\d]*$`,
  'i',
);
const startLine = new RegExp(
  `^\\s*(cast[ -]on|co|stitches|sts)\\s*:?\\s*${number}\\s*,?\\s*((?:[([][\\d\\s,;:\u2013\u2014-]*[)\\]])?)(.*)$`,
  'i',
);
const startKey = /^\s*(?:cast[ -]on|stitches|sts)\s*:/i;
const sizesLine = /^\s*sizes?\s*:\s*(.*)$/i;
const roundLine = /^\s*(?:worked\s+)?in the round\.?\s*$/i;
const flatLine = /^\s*(?:worked\s+)?(?:flat|in rows|back and forth)\.?\s*$/i;
const readingLine = /^\s*reading\s*:\s*(.*)$/i;
const ownLine =
  /^\s*([^:]{1,40}?)\s*:\s*uses?\s+(\d{1,4})\s*,?\s*(?:and\s+)?makes?\s+(\d{1,4})\s*(?:,\s*(.*))?$/i;
const labelLine = /^\s*(?:rows?|rounds?|rnds?|\d+(?:st|nd|rd|th|d)|first|second|all|every|next)\b/i;

interface Draft {
  multiple: Multiple | null;
  start: RowsHeader['start'];
  sizes: string[];
  isRound: boolean;
  readings: Readings;
  ownAbbreviations: Stitch[];
}

/** Reads the lines before and between the rows that say what the rows are worked on. Never throws. */
export function readHeader(text: string, own: readonly Stitch[], problems: Problem[]): ReadHeader {
  const draft: Draft = {
    multiple: null,
    start: null,
    sizes: [],
    isRound: false,
    readings: noReadings,
    ownAbbreviations: [...own],
  };
  let rest = '';
  let offset = 0;
  let isBeforeRows = true;
  for (const line of text.split(/(?<=\n)/)) {
    isBeforeRows &&= !labelLine.test(line);
    const isHeader = line.length < 600 && readLine(line.trimEnd(), offset, isBeforeRows, draft, problems);
    rest += isHeader ? line.replace(/[^\r\n]/g, ' ') : line;
    offset += line.length;
  }
  return {header: draft, rest};
}

function readLine(
  line: string,
  offset: number,
  isBeforeRows: boolean,
  draft: Draft,
  problems: Problem[],
): boolean {
  const indent = line.length - line.trimStart().length;
  const span: Span = {start: offset + indent, end: offset + line.length};
  const own = ownLine.exec(line);
  if (own) {
    const [, name = '', uses = '', makes = '', words = ''] = own;
    draft.ownAbbreviations.push(ownStitch(name.trim(), Number(uses), Number(makes), words));
    return true;
  }
  const reading = readingLine.exec(line);
  if (reading) {
    draft.readings = readReading(reading[1] ?? '', draft.readings, span, problems);
    return true;
  }
  const multiple = multipleLine.exec(line);
  if (multiple) {
    const of = Number(multiple[1]);
    if (of > 0) draft.multiple = {of, plus: Number(multiple[2] ?? 0), span};
    else problems.push(zeroMultiple(span));
    return true;
  }
  const sizes = sizesLine.exec(line);
  if (sizes) {
    draft.sizes = (sizes[1] ?? '')
      .split(/[(),;[\]]+/)
      .map((size) => size.trim())
      .filter((size) => size !== '');
    return true;
  }
  if (roundLine.test(line) || flatLine.test(line)) {
    draft.isRound = roundLine.test(line);
    return true;
  }
  return (isBeforeRows || startKey.test(line)) && readStart(line, span, draft, problems);
}

function readStart(line: string, span: Span, draft: Draft, problems: Problem[]): boolean {
  const start = startLine.exec(line);
  if (!start) {
    if (!startKey.test(line)) return false;
    problems.push({
      message: `\`${line.trim()}\` does not give a number of stitches`,
      hint: 'Write the number, such as `cast on: 29`, or one for each size, such as `cast on: 84 (92, 100)`.',
      span,
    });
    return true;
  }
  const [, word = '', first = '', others = '', tail = ''] = start;
  const values = [first, ...(others.match(/\d+/g) ?? [])].map((digits) =>
    Math.min(Number(digits), largestNumber),
  );
  draft.start = {values, span, isCastOn: !/^st/i.test(word)};
  if (/\b(?:join|in the round)\b/i.test(tail)) draft.isRound = true;
  return true;
}

function zeroMultiple(span: Span): Problem {
  return {
    message: 'a multiple of 0 stitches is no multiple',
    hint: 'Write the stitches of one repeat and those at the edges, such as `multiple: 6 + 5`.',
    span,
  };
}

function ownStitch(name: string, uses: number, makes: number, words: string): Stitch {
  return makeStitch(
    {american: name, words: words.replace(/^["\u201c\u201d']|["\u201c\u201d']\.?$/g, '').trim() || name},
    {uses, makes, kind: 'own', face: {shape: 'own', from: uses, into: makes}},
  );
}
