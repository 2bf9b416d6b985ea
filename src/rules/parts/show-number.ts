import type {Fraction} from '../../knitting/fraction.ts';
import {nearestDecimalHalfAwayFromZero} from '../../knitting/rounding.ts';

/** A number in a message, to one decimal: `7.4`, `8`. */
export function showNumber(value: Fraction): string {
  return String(nearestDecimalHalfAwayFromZero(value, 1).toNumber());
}
