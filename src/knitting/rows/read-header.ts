import type {Problem, Span} from '../../support/result.ts';
import {lexRow} from './lex-row.ts';
import {readMultiple, readStartCount} from './read-foundation.ts';
import {
  readOwnAbbreviation,
  readWordedAbbreviation,
  type WordedAbbreviation,
} from './read-own-abbreviation.ts';
import {noReadings, readReading} from './readings.ts';
import type {Multiple, Readings, RowsHeader} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';

export interface ReadHeader {
  readonly header: RowsHeader;
  /** The text with every line of the header blanked, so that offsets stay true. */
  readonly rest: string;
  /** Names of abbreviations whose definition is faulty. */
  readonly unsure: readonly string[];
  /** Abbreviations that are explained in words, still to be counted. */
  readonly worded: readonly WordedAbbreviation[];
}

const coloursLine = /^\s*(?:colou?rs?|yarns?)\s*:\s*(.*)$/i;
const sizesLine = /^\s*sizes?\s*:\s*(.*)$/i;
const roundLine = /^\s*(?:worked\s+)?in the round\.?\s*$/i;
const flatLine = /^\s*(?:worked\s+)?(?:flat|in rows|back and forth)\.?\s*$/i;
const readingLine = /^\s*reading\s*:\s*(.*)$/i;
const startKey = /^\s*(?:cast[ -]on|stitches|sts)\s*:/i;
const multipleKey = /^\s*mult(?:iple)?\b/i;
const ordinal = '(?:\\d+(?:st|nd|rd|th|d)|first|second)';
const labelStart = `(?:(?:rows?|rounds?|rnds?)\\b|r(?:nd|ow)?\\d+\\b|${ordinal}(?:,?\\s+(?:and\\s+)?${ordinal})*\\s+(?:rows?|rounds?|rnds?)\\b|(?:all|every|next)\\b)`;
const labelLine = new RegExp(`^\\s*(?:${labelStart}|${ordinal}\\b)`, 'i');
/** A label behind the first sentence of a line: the rows begin there. */
const labelBehind = new RegExp(`[.;:\u2014-]\\s*(?=${labelStart})`, 'i');

/** More abbreviations than a pattern explains in words. */
const mostWorded = 40;

interface Draft {
  multiple: Multiple | null;
  start: RowsHeader['start'];
  sizes: string[];
  colours: string[];
  isRound: boolean;
  readings: Readings;
  ownAbbreviations: Stitch[];
  unsure: string[];
  worded: WordedAbbreviation[];
}

/** Reads the lines before and between the rows that say what the rows are worked on. Never throws. */
export function readHeader(text: string, own: readonly Stitch[], problems: Problem[]): ReadHeader {
  const draft: Draft = {
    multiple: null,
    start: null,
    sizes: [],
    colours: [],
    isRound: false,
    readings: noReadings,
    ownAbbreviations: [...own],
    unsure: [],
    worded: [],
  };
  let rest = '';
  let offset = 0;
  let isBeforeRows = true;
  for (const line of text.split(/(?<=\n)/)) {
    isBeforeRows &&= !labelLine.test(line);
    const isShort = line.length < 600;
    const behind: RegExpExecArray | null = isShort && isBeforeRows ? labelBehind.exec(line) : null;
    const head = behind ? line.slice(0, behind.index + 1) : line;
    const isHeader = isShort && readLine(head.trimEnd(), offset, isBeforeRows, draft, problems);
    rest += isHeader ? head.replace(/[^\r\n]/g, ' ') + line.slice(head.length) : line;
    isBeforeRows &&= behind === null;
    offset += line.length;
  }
  const {unsure, worded, ...header} = draft;
  return {header, rest, unsure, worded};
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
  if (!labelLine.test(line)) {
    const own = readOwnAbbreviation(line, offset, draft.ownAbbreviations, problems);
    if (own) {
      draft.ownAbbreviations.push(own.stitch);
      if (!own.isSure) draft.unsure.push(own.stitch.id);
      return true;
    }
  }
  const reading = readingLine.exec(line);
  if (reading) {
    draft.readings = readReading(reading[1] ?? '', draft.readings, span, problems);
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
  const colours = coloursLine.exec(line);
  if (colours) {
    draft.colours = (colours[1] ?? '').toLowerCase().match(/\p{L}+/gu) ?? [];
    return true;
  }
  if (roundLine.test(line) || flatLine.test(line)) {
    draft.isRound = roundLine.test(line);
    return true;
  }
  const isFoundation =
    (isBeforeRows || startKey.test(line) || multipleKey.test(line)) &&
    readFoundation(line, span, draft, problems);
  const worded = isFoundation || labelLine.test(line) ? null : readWordedAbbreviation(line, offset);
  if (worded && draft.worded.length < mostWorded) draft.worded.push(worded);
  return isFoundation || worded !== null;
}

/** `cast on: 84 (92, 100)`, `multiple: 6 + 5`, `Cast on any number of stitches divisible by 6, and 5 over`. */
function readFoundation(line: string, span: Span, draft: Draft, problems: Problem[]): boolean {
  const tokens = lexRow(line);
  const multiple = readMultiple(tokens);
  if (multiple) {
    if (multiple.of > 0) draft.multiple = {...multiple, span};
    else problems.push(zeroMultiple(span));
    return true;
  }
  const start = readStartCount(tokens);
  if (start) {
    draft.start = {values: start.values, span, isCastOn: start.isCastOn};
    if (/\b(?:join|in the round)\b/i.test(line)) draft.isRound = true;
    return true;
  }
  if (!startKey.test(line)) return false;
  problems.push({
    message: `\`${line.trim()}\` does not give a number of stitches`,
    hint: 'Write the number, such as `cast on: 29`, or one for each size, such as `cast on: 84 (92, 100)`.',
    span,
  });
  return true;
}

function zeroMultiple(span: Span): Problem {
  return {
    message: 'a multiple of 0 stitches is no multiple',
    hint: 'Write the stitches of one repeat and those at the edges, such as `multiple: 6 + 5`.',
    span,
  };
}
