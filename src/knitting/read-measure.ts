import {nearestName} from '../support/nearest-name.ts';
import {failure, type Problem, type Result, success} from '../support/result.ts';
import {Fraction} from './fraction.ts';
import {type LengthUnit, millimetresIn} from './length-unit.ts';
import {matchAt} from './match-at.ts';
import {readNumber} from './read-number.ts';

/** A number with its unit: exact millimetres for a length, exact grams for a mass; and where it stands in its text. */
export type Measure = {
  readonly amount: Fraction;
  readonly text: string;
  readonly start: number;
  /** The offset behind the unit. */
  readonly end: number;
} & ({readonly dimension: 'length'; readonly unit: LengthUnit} | {readonly dimension: 'mass'});

const lengthWords: ReadonlyMap<string, LengthUnit> = new Map<string, LengthUnit>([
  ...words('mm', 'mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  ...words('cm', 'cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  ...words('m', 'm', 'metre', 'metres', 'meter', 'meters'),
  ...words('in', 'in', 'ins', 'inch', 'inches', '"', '″', '”', '“', "''", '′′'),
  ...words('yd', 'yd', 'yds', 'yard', 'yards'),
]);

/** Grams in one unit; the avoirdupois ounce is exactly 28.349523125 g (1959 agreement: 1 lb = 0.45359237 kg). */
const massWords: ReadonlyMap<string, Fraction> = new Map([
  ...['g', 'gr', 'gram', 'grams', 'gramme', 'grammes'].map((word) => [word, Fraction.one] as const),
  ...['kg', 'kilogram', 'kilograms'].map((word) => [word, Fraction.ofInteger(1000)] as const),
  ...['oz', 'ozs', 'ounce', 'ounces'].map(
    (word) => [word, Fraction.ofRatio(28349523125, 1000000000)] as const,
  ),
]);

const unitWord = /\s*(?<word>''|′′|["″”“]|\p{L}+)\.?/uy;

/**
 * Reads a number and the unit behind it, beginning at offset `start` of `text`. Never throws. With
 * `numberMayBeMissing`, a bare unit means one of it, as in `5 sts per in`.
 */
export function readMeasure(
  text: string,
  start: number,
  options: {readonly numberMayBeMissing?: boolean} = {},
): Result<Measure> {
  const bare = options.numberMayBeMissing === true && startsWithUnit(text, start);
  const number = bare ? success({value: Fraction.one, end: start}) : readNumber(text, start);
  if (!number.ok) return number;

  const {value, end: numberEnd} = number.value;
  const found = wordAt(text, numberEnd);
  if (!found) return failure(missingUnit(text, start, numberEnd));
  const {word, end} = found;

  const place = {text: text.slice(start, end), start, end};
  const unit = lengthWords.get(word.toLowerCase());
  if (unit) return success({dimension: 'length', unit, amount: value.times(millimetresIn[unit]), ...place});
  const grams = massWords.get(word.toLowerCase());
  if (grams) return success({dimension: 'mass', amount: value.times(grams), ...place});
  return failure(unknownUnit(word, text.indexOf(word, numberEnd)));
}

function startsWithUnit(text: string, start: number): boolean {
  const word = wordAt(text, start)?.word.toLowerCase();
  return word !== undefined && (lengthWords.has(word) || massWords.has(word));
}

function wordAt(text: string, start: number): {readonly word: string; readonly end: number} | null {
  const match = matchAt(unitWord, text, start);
  const word = match?.groups?.word;
  return match && word !== undefined ? {word, end: start + match[0].length} : null;
}

function missingUnit(text: string, start: number, end: number): Problem {
  const written = text.slice(start, end);
  return {
    message: `\`${written}\` has no unit`,
    hint: `Write the unit behind the number, such as \`${written} cm\` or \`${written} in\`.`,
    span: {start, end},
  };
}

function unknownUnit(word: string, start: number): Problem {
  const near = nearestName(word, [...lengthWords.keys(), ...massWords.keys()]);
  return {
    message: `\`${word}\` is not a unit known here`,
    hint: near
      ? `Write \`${near}\` if that is what was meant.`
      : 'Write lengths in mm, cm, m, in or yd, and weights in g, kg or oz.',
    span: {start, end: start + word.length},
  };
}

function words(unit: LengthUnit, ...spellings: readonly string[]): (readonly [string, LengthUnit])[] {
  return spellings.map((spelling) => [spelling, unit] as const);
}
