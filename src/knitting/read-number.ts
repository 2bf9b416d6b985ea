import {failure, type Problem, type Result, type Span, success} from '../support/result.ts';
import {Fraction} from './fraction.ts';
import {matchAt} from './match-at.ts';

/** The single characters for fractions: Unicode's "vulgar fractions" that a keyboard or a word processor makes. */
export const fractionCharacters: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** More digits than any count or length of knitting has; keeps arithmetic on hostile input small. */
const mostDigits = 9;

const gap = '[ \\u00a0\\u202f]';
const slashed = new RegExp(`(?:(?<whole>\\d+)(?:${gap}+|-))?(?<over>\\d+)[/\u2044](?<under>\\d+)`, 'y');
const oneCharacter = new RegExp(
  `(?<whole>\\d*)${gap}*(?<character>[${Object.keys(fractionCharacters).join('')}])`,
  'y',
);
const decimal = /(?:(?<whole>\d*)\.(?<decimals>\d+)|(?<only>\d+))(?!\d|[.,]\d)/y;
const commaDecimal = /\d+,\d+/y;

/** A number and the offset just behind it. */
export interface ReadNumber {
  readonly value: Fraction;
  readonly end: number;
}

/**
 * Reads the number that begins at offset `start` of `text`: `20`, `20.5`, `½`, `20½`, `1/2`, `20 1/2`. Never throws.
 * Nothing is rounded. Spans count from the start of `text`.
 */
export function readNumber(text: string, start = 0): Result<ReadNumber> {
  const comma = matchAt(commaDecimal, text, start);
  if (comma) {
    const [written] = comma;
    return failure({
      message: `\`${written}\` is written with a comma`,
      hint: `Write decimals behind a point, such as \`${written.replace(',', '.')}\`, and thousands without a comma.`,
      span: {start, end: start + written.length},
    });
  }
  const fraction = matchAt(slashed, text, start);
  if (fraction) {
    const {whole = '0', over = '', under = ''} = fraction.groups ?? {};
    return readFraction(fraction[0], whole, over, under, start);
  }
  const character = matchAt(oneCharacter, text, start);
  if (character) {
    const [over, under] = fractionCharacters[character.groups?.character ?? ''] ?? [0, 1];
    return readFraction(character[0], character.groups?.whole || '0', `${over}`, `${under}`, start);
  }
  const plain = matchAt(decimal, text, start);
  if (plain) {
    const {whole = '', decimals = '', only = ''} = plain.groups ?? {};
    return readDecimal(plain[0], whole || only || '0', decimals, start);
  }
  return failure(missingNumber(text, start));
}

function readFraction(
  written: string,
  whole: string,
  over: string,
  under: string,
  start: number,
): Result<ReadNumber> {
  const span = {start, end: start + written.length};
  if ([whole, over, under].some(isTooLong)) return failure(tooLong(written, span));
  if (BigInt(under) === 0n) {
    return failure({
      message: `\`${written}\` divides by zero`,
      hint: 'Write the fraction with the number of parts below the line, such as `1/2`.',
      span,
    });
  }
  const value = new Fraction(BigInt(whole)).plus(new Fraction(BigInt(over), BigInt(under)));
  return success({value, end: span.end});
}

function readDecimal(written: string, whole: string, decimals: string, start: number): Result<ReadNumber> {
  const span = {start, end: start + written.length};
  if (isTooLong(whole) || isTooLong(decimals)) return failure(tooLong(written, span));
  const value = new Fraction(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
  return success({value, end: span.end});
}

function isTooLong(digits: string): boolean {
  return digits.length > mostDigits;
}

function tooLong(written: string, span: Span): Problem {
  return {
    message: `\`${written.slice(0, 20)}…\` has more than ${mostDigits} digits in one part`,
    hint: 'Write the number as it was counted or measured, such as `20.5`.',
    span,
  };
}

function missingNumber(text: string, start: number): Problem {
  const word = /[^\s]+/.exec(text.slice(start))?.[0];
  const from = word === undefined ? start : text.indexOf(word, start);
  return {
    message: word === undefined ? 'a number is missing' : `\`${word}\` stands where a number should be`,
    hint: 'Write a number such as `20`, `20.5`, `20½` or `20 1/2`.',
    span: {start: from, end: from + (word?.length ?? 0)},
  };
}
