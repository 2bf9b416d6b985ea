import {failure, type Problem, type Result, type Span, success} from '../support/result.ts';
import {Fraction} from './fraction.ts';
import type {LengthUnit} from './length-unit.ts';
import {matchAt} from './match-at.ts';
import {type Measure, readMeasure} from './read-measure.ts';
import {readNumber} from './read-number.ts';
import {type Millimetres, millimetres} from './units.ts';

/** A length: exact millimetres, and the unit it was written in. */
export interface Length {
  readonly millimetres: Millimetres;
  readonly unit: LengthUnit;
  /** As written, such as `10 1/2 in`. */
  readonly text: string;
}

/** A count of stitches or rows over a length, as laid on the knitting with a ruler. Both are above zero. */
export interface GaugeCount {
  readonly count: Fraction;
  readonly over: Length;
  /** As written, such as `20.5 over 10 cm`. */
  readonly text: string;
}

/** What a ball holds: length and mass, `200 m / 100 g` or `220 yd / 3.5 oz`. Both are above zero. */
export interface PutUp {
  readonly length: Length;
  readonly grams: Fraction;
  readonly text: string;
}

/**
 * Reads `10.2 cm`, `4 in`, `4"`, `10½ in`, `10 1/2 in`, `105 mm`. Spans in problems count from the start of `text`.
 * Never throws. A length of zero is read: a tolerance may be zero.
 */
export function parseLength(text: string): Result<Length> {
  const measure = readMeasure(text, skipSpace(text));
  if (!measure.ok) return measure;
  const length = asLength(measure.value);
  if (!length.ok) return length;
  return onlyIfFinished(text, measure.value.end, length.value, 'the length', '`10.2 cm`');
}

/**
 * Reads `20.5 over 10 cm`, `22 over 4 in`, `20½ over 10 cm`, `20 1/2 sts over 10 cm`, `28 rows over 10 cm`; `per`, `to`
 * and `/` stand for `over`, and `5 sts per in` is over one inch. Never throws.
 */
export function parseGaugeCount(text: string): Result<GaugeCount> {
  const start = skipSpace(text);
  const number = readNumber(text, start);
  if (!number.ok) return number;
  const {value: count, end} = number.value;
  if (count.equals(Fraction.zero)) return failure(zeroProblem({text: text.slice(start, end), start, end}));
  const joint = matchAt(overWords, text, end);
  if (!joint)
    return failure(restProblem(text, end, 'it is not said over which length was counted', overHint));

  const measure = readMeasure(text, end + joint[0].length, {numberMayBeMissing: true});
  if (!measure.ok) return measure;
  const over = asLength(measure.value);
  if (!over.ok) return over;
  if (measure.value.amount.equals(Fraction.zero)) return failure(zeroProblem(measure.value));
  const value = {count, over: over.value, text: text.trim()};
  return onlyIfFinished(text, measure.value.end, value, 'the count', '`20.5 over 10 cm`');
}

/**
 * Reads `200 m / 100 g`, `220 yd / 100 g`, `183 m per 50 g`, `220 yd / 3.5 oz`, and the same with the weight first.
 * Never throws.
 */
export function parsePutUp(text: string): Result<PutUp> {
  const first = readMeasure(text, skipSpace(text));
  if (!first.ok) return first;
  const {end} = first.value;
  const joint = matchAt(slashWords, text, end);
  if (!joint) return failure(restProblem(text, end, 'there is no `/` between length and weight', putUpHint));
  const second = readMeasure(text, end + joint[0].length);
  if (!second.ok) return second;

  const zero = [first.value, second.value].find(({amount}) => amount.equals(Fraction.zero));
  if (zero) return failure(zeroProblem(zero));
  const isMassFirst = first.value.dimension === 'mass';
  const mass = isMassFirst ? first.value : second.value;
  const length = asLength(isMassFirst ? second.value : first.value);
  if (!length.ok) return length;
  if (mass.dimension !== 'mass') return failure(noWeightProblem(second.value));
  const value = {length: length.value, grams: mass.amount, text: text.trim()};
  return onlyIfFinished(text, second.value.end, value, 'the put-up', '`200 m / 100 g`');
}

const overWords =
  /\s*(?:(?:stitch(?:es)?|sts?|rows?|rounds?|rnds?)(?!\p{L})\.?\s*)?(?:(?:over|per|to)(?!\p{L})|\/)\s*/iuy;
const overHint = 'Write the count, the word over, and the length, such as `20.5 over 10 cm`.';

const slashWords = /\s*(?:\/|=|(?:per|to)(?!\p{L}))\s*/iuy;
const putUpHint = 'Write what one ball holds as length and weight, such as `200 m / 100 g`.';

function asLength(measure: Measure): Result<Length> {
  const {text, start, end} = measure;
  if (measure.dimension === 'length') {
    return success({millimetres: millimetres(measure.amount), unit: measure.unit, text});
  }
  return failure({
    message: `\`${text}\` is a weight where a length should be`,
    hint: 'Write a length in mm, cm, m, in or yd, such as `10.2 cm`.',
    span: {start, end},
  });
}

function onlyIfFinished<T>(text: string, end: number, value: T, what: string, example: string): Result<T> {
  if (text.slice(end).trim() === '') return success(value);
  return failure(
    restProblem(text, end, `there is more text behind ${what}`, `Write only ${what}, such as ${example}.`),
  );
}

/** Points at what follows `end`, or at the whole text when nothing follows. */
function restProblem(text: string, end: number, message: string, hint: string): Problem {
  const start = skipSpace(text, end);
  const last = text.trimEnd().length;
  const span = start < last ? {start, end: last} : {start: skipSpace(text), end: last};
  return {message: `${message} in \`${text.trim()}\``, hint, span};
}

function zeroProblem({text, start, end}: {readonly text: string} & Span): Problem {
  return {
    message: `\`${text}\` is zero`,
    hint: 'Write what was counted or measured; leave the line out when nothing was.',
    span: {start, end},
  };
}

function noWeightProblem({text, start, end}: Measure): Problem {
  return {
    message: `\`${text}\` is a length, and the weight of the ball is missing`,
    hint: putUpHint,
    span: {start, end},
  };
}

function skipSpace(text: string, start = 0): number {
  return start + (matchAt(/\s*/y, text, start)?.[0].length ?? 0);
}
