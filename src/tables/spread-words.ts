import {formatLength, formatNumber, type UnitOrder} from '../knitting/format-quantity.ts';
import type {Fraction} from '../knitting/fraction.ts';
import type {GaugeSummary} from '../knitting/gauge.ts';
import type {Spread} from '../knitting/uncertainty.ts';
import {type CountUnit, millimetres} from '../knitting/units.ts';

/** What the spread of the measured gauge does to a result, or that one count shows none. */
export function spreadWords(
  {least, most}: Spread,
  gauges: readonly GaugeSummary<CountUnit>[],
  show: (value: Fraction) => string,
): string {
  if (gauges.every(({places}) => places.length < 2)) return 'not known: the gauge is one count';
  if (least.equals(most)) return `${show(least)}, all counts alike`;
  return `${show(least)} to ${show(most)} at the gauge measured`;
}

export function lengthShown(order: UnitOrder): (length: Fraction) => string {
  return (length) => formatLength(millimetres(length), order);
}

/** `44.4 sts`. */
export function countShown(short: string): (count: Fraction) => string {
  return (count) => `${formatNumber(count, 1)}\u00a0${short}`;
}

/** How spreads are worked out, for every table that shows one. */
export const spreadFormula =
  'At the gauge measured: the same sum at the lowest and at the highest place counted, a range of what was measured and no more.';
