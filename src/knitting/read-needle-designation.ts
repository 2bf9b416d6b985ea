import {englishList} from '../support/english-list.ts';
import {failure, type Problem, type Result, type Span, success} from '../support/result.ts';
import {formatExact} from './format-quantity.ts';
import type {Fraction} from './fraction.ts';
import {disputedUsSizes, type NeedleSizeRow, needleSizeTable} from './needle-size-table.ts';
import {readNumber} from './read-number.ts';

/** One name of a needle size, such as `US 7`, and the line of the table it stands for. */
export interface NeedleDesignation {
  readonly text: string;
  readonly span: Span;
  readonly row: NeedleSizeRow;
}

const decimalComma = /^\d+,\d/;
const metric = /^(?<size>.*?)\s*(?:mm|millimet(?:re|er)s?)$/is;
const american = /^U\.?S\.?\s*(?:size\b|no\b\.?|#)?\s*(?<size>.*)$/is;
const british = /^(?:old\s+)?U\.?K\.?\s*(?:size\b|no\b\.?|#)?\s*(?<size>.*)$/is;
const unnamed = /^(?<word>size\s+)?(?<size>.*)$/is;

/**
 * Reads one trimmed name of a needle size that begins at offset `start` of a longer text. `size 7` is read, because
 * US 7 and UK 7 are the same needle; every other number without its system is a problem that names the candidates.
 */
export function readNeedleDesignation({
  text,
  start,
}: {
  readonly text: string;
  readonly start: number;
}): Result<NeedleDesignation> {
  const span = {start, end: start + text.length};
  const millimetreSize = metric.exec(text)?.groups?.size;
  if (millimetreSize !== undefined) return readMetric(text, millimetreSize, span);
  const us = american.exec(text)?.groups?.size;
  if (us !== undefined) return readAmerican(text, us, span);
  const uk = british.exec(text)?.groups?.size;
  if (uk !== undefined) return readBritish(text, uk, span);
  const {word, size = ''} = unnamed.exec(text)?.groups ?? {};
  return readUnnamed(text, size, span, word !== undefined);
}

function readMetric(text: string, size: string, span: Span): Result<NeedleDesignation> {
  const number = readNumber(size);
  if (!number.ok && decimalComma.test(size))
    return failure(...number.problems.map((problem) => shifted(problem, span.start)));
  if (!number.ok || number.value.end < size.length) return failure(notASize(text, span));
  const row = rowOf(number.value.value);
  return row ? success({text, span, row}) : failure(noSuchThickness(text, number.value.value, span));
}

function readAmerican(text: string, size: string, span: Span): Result<NeedleDesignation> {
  const key = numberKey(size);
  if (key === null) return failure(notASize(text, span));
  const disputed = disputedUsSizes.get(key);
  if (disputed) return failure(disputedSize(text, disputed, span));
  const row = needleSizeTable.find((line) => line.us === key);
  return row ? success({text, span, row}) : failure(noSuchSize(text, 'American', span));
}

function readBritish(text: string, size: string, span: Span): Result<NeedleDesignation> {
  const key = numberKey(size);
  if (key === null) return failure(notASize(text, span));
  const row = needleSizeTable.find((line) => line.uk === key);
  return row ? success({text, span, row}) : failure(noSuchSize(text, 'old British', span));
}

function readUnnamed(text: string, size: string, span: Span, isNumbered: boolean): Result<NeedleDesignation> {
  const key = numberKey(size);
  if (key === null) return failure(notASize(text, span));
  const candidates = candidatesFor(key, size);
  const [us, uk] = [`US ${key}`, `UK ${key}`].map(
    (name) => candidates.find((candidate) => candidate.name === name)?.thickness,
  );
  const row = us && uk?.equals(us) ? rowOf(us) : undefined;
  if (isNumbered && row) return success({text, span, row});
  if (candidates.length === 0) return failure(noSuchSize(text, 'metric, American or old British', span));
  return failure(ambiguous(text, candidates, span));
}

interface Candidate {
  readonly name: string;
  readonly thickness: Fraction;
}

/** Everything that a bare number may stand for. */
function candidatesFor(key: string, size: string): readonly Candidate[] {
  const us = needleSizeTable.filter((row) => row.us === key).map((row) => row.millimetres);
  const uk = needleSizeTable.filter((row) => row.uk === key).map((row) => row.millimetres);
  const number = readNumber(size);
  const row = number.ok && !key.startsWith('00') ? rowOf(number.value.value) : undefined;
  return [
    ...(disputedUsSizes.get(key) ?? us).map((thickness) => ({name: `US ${key}`, thickness})),
    ...uk.map((thickness) => ({name: `UK ${key}`, thickness})),
    ...(row ? [{name: `${key} mm`, thickness: row.millimetres}] : []),
  ];
}

/** `10½` and `10.50` become `10.5`, `07` becomes `7`; zeros, of which each more is another size, stay. Null when it is no number. */
function numberKey(size: string): string | null {
  if (/^0+$/.test(size)) return size;
  const number = readNumber(size);
  return number.ok && number.value.end === size.length ? formatExact(number.value.value) : null;
}

function rowOf(thickness: Fraction): NeedleSizeRow | undefined {
  return needleSizeTable.find((row) => row.millimetres.equals(thickness));
}

function shifted(problem: Problem, by: number): Problem {
  return {...problem, span: {start: problem.span.start + by, end: problem.span.end + by}};
}

function ambiguous(text: string, candidates: readonly Candidate[], span: Span): Problem {
  const named = candidates.map(({name, thickness}) =>
    name.endsWith('mm') ? `\`${name}\`` : `\`${name}\` (${inMillimetres(thickness)})`,
  );
  return {
    message: `\`${text}\` does not say its system; it may be ${englishList(named, 'or')}`,
    hint: 'Write the size in millimetres, or US or UK before the number.',
    span,
  };
}

function disputedSize(text: string, claims: readonly Fraction[], span: Span): Problem {
  const named = claims.map((claim) => `\`${inMillimetres(claim)}\``);
  return {
    message:
      named.length > 1
        ? `\`${text}\` is ${englishList(named, 'or')}: the published tables disagree`
        : `\`${text}\` is ${englishList(named)} in some published tables and missing from others`,
    hint: 'Measure the needle in a needle gauge and write the size in millimetres.',
    span,
  };
}

function noSuchSize(text: string, system: string, span: Span): Problem {
  return {
    message: `\`${text}\` is no ${system} needle size`,
    hint: 'Look on the needle or measure it in a needle gauge, and write the size in millimetres.',
    span,
  };
}

function noSuchThickness(text: string, thickness: Fraction, span: Span): Problem {
  const thinner = needleSizeTable.findLast((row) => row.millimetres.compare(thickness) < 0);
  const thicker = needleSizeTable.find((row) => row.millimetres.compare(thickness) > 0);
  const nearest = [thinner, thicker].flatMap((row) => (row ? [`\`${inMillimetres(row.millimetres)}\``] : []));
  return {
    message: `\`${text}\` is a needle size in no published table`,
    hint: `Measure the needle in a needle gauge; the nearest size is ${englishList(nearest, 'or')}.`,
    span,
  };
}

function notASize(text: string, span: Span): Problem {
  return {
    message: `\`${text}\` is not a needle size`,
    hint: 'Write the size in millimetres, such as `4.5 mm`, and anything else about the needle behind a comma.',
    span,
  };
}

function inMillimetres(thickness: Fraction): string {
  return `${formatExact(thickness)} mm`;
}
