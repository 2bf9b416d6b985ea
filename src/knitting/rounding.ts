import {Fraction} from './fraction.ts';

/** The multiple of `step` nearest to `value`; a value half-way goes away from zero. `step` is above zero. */
export function nearestMultipleHalfAwayFromZero(value: Fraction, step: Fraction): Fraction {
  const steps = value.absolute().dividedBy(step);
  const doubled = 2n * steps.numerator + steps.denominator;
  const count = doubled / (2n * steps.denominator);
  const rounded = new Fraction(count).times(step);
  return value.compare(Fraction.zero) < 0 ? Fraction.zero.minus(rounded) : rounded;
}

/** Rounds to so many decimals; a value half-way goes away from zero: 2.25 becomes 2.3, −2.25 becomes −2.3. */
export function nearestDecimalHalfAwayFromZero(value: Fraction, decimals: number): Fraction {
  return nearestMultipleHalfAwayFromZero(value, new Fraction(1n, 10n ** BigInt(decimals)));
}

/** Rounds inches to the nearest eighth, the division of a dressmaker's tape; half-way goes away from zero. */
export function nearestEighthHalfAwayFromZero(inches: Fraction): Fraction {
  return nearestMultipleHalfAwayFromZero(inches, new Fraction(1n, 8n));
}
