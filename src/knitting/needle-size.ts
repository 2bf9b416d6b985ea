import {englishList} from '../support/english-list.ts';
import {failure, type Problem, type Result, type Span, success} from '../support/result.ts';
import {formatExact} from './format-quantity.ts';
import type {NeedleSizeRow} from './needle-size-table.ts';
import {type NeedleDesignation, readNeedleDesignation} from './read-needle-designation.ts';

/** A needle size as understood: its line of the table, and what was written. */
export interface NeedleSize extends NeedleSizeRow {
  readonly text: string;
}

/**
 * Reads `4.5 mm`, `US 7`, `US 10½`, `UK 000`, and pairs such as `4.5 mm (US 7)` or `US 7 / 4.5 mm`, whose parts must
 * name the same needle. What follows a comma is a note, as in `4 mm, circular`. A number that exists in no system, a
 * bare number, and a US number on which the published tables disagree are problems that name what is possible. Never
 * throws.
 */
export function parseNeedleSize(text: string): Result<NeedleSize> {
  if (text.replace(noteBehindComma, '').length > longest) return failure(tooLong(text));
  const parts = designationsIn(text.replace(noteBehindComma, ''));
  const readings = parts.map((part) => readNeedleDesignation(part));
  const [first] = readings;
  if (!first) return failure(emptyProblem(text));

  const problems = readings.flatMap((reading) => (reading.ok ? [] : reading.problems));
  if (!first.ok || problems.length > 0) return failure(...problems);
  for (const reading of readings) {
    if (reading.ok && reading.value.row !== first.value.row) {
      return failure(differentSizes(first.value, reading.value));
    }
  }
  return success({...first.value.row, text: text.trim()});
}

/** No size has so many letters, however many names it goes by. */
const longest = 200;
const noteBehindComma = /,(?!\d).*$/s;
const separator = /\s+\/\s+|[()=]/g;

/** The parts between brackets, equals signs and spaced slashes, without the space around them. */
function designationsIn(text: string): {readonly text: string; readonly start: number}[] {
  const parts = [];
  let start = 0;
  for (const match of [...text.matchAll(separator), {index: text.length, 0: ''}]) {
    const part = text.slice(start, match.index);
    const trimmed = part.trim();
    if (trimmed !== '') parts.push({text: trimmed, start: start + part.indexOf(trimmed)});
    start = match.index + match[0].length;
  }
  return parts;
}

function differentSizes(first: NeedleDesignation, other: NeedleDesignation): Problem {
  const said = [first, other].map(({text, row}) => `\`${text}\` of ${formatExact(row.millimetres)} mm`);
  return {
    message: `${englishList(said)} are not the same needle`,
    hint: 'Measure the needle in a needle gauge and write the size in millimetres.',
    span: other.span,
  };
}

function tooLong(text: string): Problem {
  return {
    message: `a needle size has at most ${longest} letters`,
    hint: 'Write the size in millimetres, such as `4.5 mm`; a note goes behind a comma.',
    span: {start: 0, end: text.length},
  };
}

function emptyProblem(text: string): Problem {
  const span: Span = {start: 0, end: text.length};
  return {
    message: 'the needle size is empty',
    hint: 'Write the size in millimetres, such as `4.5 mm`.',
    span,
  };
}
