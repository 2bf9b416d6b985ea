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

/** The greatest whole number not above `value`: 7.9 becomes 7, −0.5 becomes −1. Throws `RangeError` beyond safe integers. */
export function wholeNotAbove(value: Fraction): number {
  const {numerator, denominator} = value;
  const cut = numerator / denominator;
  return safe(numerator < 0n && !value.isWhole() ? cut - 1n : cut);
}

/** The least whole number not below `value`: what is bought or needed in full. Throws `RangeError` beyond safe integers. */
export function wholeNotBelow(value: Fraction): number {
  return -wholeNotAbove(Fraction.zero.minus(value)) + 0;
}

/** The nearest whole number; half-way goes up: 49.5 becomes 50. Throws `RangeError` beyond safe integers. */
export function nearestWholeHalfUp(value: Fraction): number {
  return wholeNotAbove(value.plus(new Fraction(1n, 2n)));
}

/** The greatest whole number whose square is not above `square`, which is not below zero. Newton's method on whole numbers. */
export function squareRootNotAbove(square: bigint): bigint {
  if (square < 2n) return square;
  let root = 1n << BigInt(Math.ceil(square.toString(2).length / 2));
  for (;;) {
    const next = (root + square / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}

/** A square root cut to thousandths, for lengths in millimetres: the error is below a thousandth of a millimetre. */
export function squareRootToThousandths(square: Fraction): Fraction {
  const scaled = (square.numerator * 1_000_000n) / square.denominator;
  return new Fraction(squareRootNotAbove(scaled), 1000n);
}

function safe(value: bigint): number {
  return Number(Fraction.ofInteger(Number(value)).numerator);
}
