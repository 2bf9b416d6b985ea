import {Fraction} from './fraction.ts';
import {millimetresIn} from './length-unit.ts';
import type {Length} from './quantity.ts';
import {fractionCharacters} from './read-number.ts';
import {nearestDecimalHalfAwayFromZero, nearestEighthHalfAwayFromZero} from './rounding.ts';
import type {Millimetres} from './units.ts';

/** Which unit stands first; the other follows in brackets. */
export type UnitOrder = 'metric' | 'inch';

const noBreakSpace = '\u00a0';
const minusSign = '\u2212';
const mostDecimals = 9;

/** Exactly so many decimals, rounded half away from zero, with a true minus sign: `20.2`, `−0.5`. */
export function formatNumber(value: Fraction, decimals: number): string {
  const rounded = nearestDecimalHalfAwayFromZero(value, decimals);
  const digits = rounded.absolute().times(new Fraction(10n ** BigInt(decimals))).numerator;
  const padded = digits.toString().padStart(decimals + 1, '0');
  const text = decimals === 0 ? padded : `${padded.slice(0, -decimals)}.${padded.slice(-decimals)}`;
  return isBelowZero(rounded) ? `${minusSign}${text}` : text;
}

/** Nothing rounded: `20.5` where a decimal can say it, otherwise a fraction such as `7 1/3`. */
export function formatExact(value: Fraction): string {
  for (let decimals = 0; decimals <= mostDecimals; decimals++) {
    if (value.times(new Fraction(10n ** BigInt(decimals))).isWhole()) return formatNumber(value, decimals);
  }
  return formatMixed(value);
}

/** A size in percent to one decimal: `2.5 %`. */
export function formatPercent(percent: Fraction): string {
  return `${formatNumber(percent, 1)}${noBreakSpace}%`;
}

/** A change in percent to one decimal, with its sign: `+2.6 %`, `−2.5 %`, `0.0 %`. */
export function formatPercentChange(percent: Fraction): string {
  return withSign(percent, formatPercent);
}

/** A needle's thickness without rounding: `4.5 mm`, `2.25 mm`. */
export function formatMillimetres(length: Fraction): string {
  return `${formatExact(length)}${noBreakSpace}mm`;
}

/**
 * A length in the unit it was written in, without rounding: `10 cm`, `15 3/16 in`, `1 in` for a bare `in`. Inches are
 * shown as on a ruler, in halves down to thirty-seconds, where that is exact.
 */
export function formatAsWritten(length: Length): string {
  const amount = length.millimetres.dividedBy(millimetresIn[length.unit]);
  const isOnRuler = length.unit === 'in' && 32n % amount.denominator === 0n;
  return `${isOnRuler ? formatMixed(amount) : formatExact(amount)}${noBreakSpace}${length.unit}`;
}

/** A length as it was measured, in both units: its own without rounding, the other as `formatLength` rounds it. */
export function formatMeasured(length: Length, order: UnitOrder): string {
  const written = formatAsWritten(length);
  const isMetric = length.unit !== 'in' && length.unit !== 'yd';
  return isMetric
    ? inBoth(written, formatInches(length.millimetres), order)
    : inBoth(formatCentimetres(length.millimetres), written, order);
}

/** A length in both units: centimetres to 1 mm, inches to the nearest eighth, `10.2 cm (4 in)`. */
export function formatLength(length: Millimetres, order: UnitOrder): string {
  return inBoth(formatCentimetres(length), formatInches(length), order);
}

/** A difference of lengths in both units, with its sign: `+0.4 cm (+1/8 in)`. */
export function formatLengthDifference(difference: Millimetres, order: UnitOrder): string {
  return inBoth(withSign(difference, formatCentimetres), withSign(difference, formatInches), order);
}

function formatCentimetres(length: Fraction): string {
  return `${formatNumber(length.dividedBy(millimetresIn.cm), 1)}${noBreakSpace}cm`;
}

/** Eighths of an inch, lowest terms; what would round to nothing is said to be under 1⁄16 in. */
function formatInches(length: Fraction): string {
  const eighths = nearestEighthHalfAwayFromZero(length.dividedBy(millimetresIn.in));
  const isLost = eighths.equals(Fraction.zero) && !length.equals(Fraction.zero);
  return isLost ? `under 1⁄16${noBreakSpace}in` : `${formatMixed(eighths)}${noBreakSpace}in`;
}

function formatMixed(value: Fraction): string {
  const {numerator, denominator} = value.absolute();
  const whole = numerator / denominator;
  const part = numerator % denominator;
  const sign = isBelowZero(value) ? minusSign : '';
  const shownWhole = whole > 0n || part === 0n ? `${whole}` : '';
  if (part === 0n) return `${sign}${shownWhole}`;
  const character = characterOf(part, denominator);
  if (character !== null) return `${sign}${shownWhole}${character}`;
  return `${sign}${shownWhole}${shownWhole === '' ? '' : noBreakSpace}${part}⁄${denominator}`;
}

/** `½` for 1 and 2; null where no character says it. */
function characterOf(numerator: bigint, denominator: bigint): string | null {
  const found = Object.entries(fractionCharacters).find(
    ([, [top, bottom]]) => BigInt(top) === numerator && BigInt(bottom) === denominator,
  );
  return found?.[0] ?? null;
}

/** A plus before a number that is above zero as shown; `0.0` and `under 1⁄16 in` stay without a sign. */
function withSign(value: Fraction, format: (value: Fraction) => string): string {
  const text = format(value);
  return !isBelowZero(value) && /[1-9½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/.test(text) && !text.startsWith('under')
    ? `+${text}`
    : text;
}

function inBoth(metric: string, inch: string, order: UnitOrder): string {
  return order === 'metric' ? `${metric} (${inch})` : `${inch} (${metric})`;
}

function isBelowZero(value: Fraction): boolean {
  return value.compare(Fraction.zero) < 0;
}
