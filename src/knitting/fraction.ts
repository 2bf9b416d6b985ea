/**
 * An exact rational number in lowest terms, the sign on the numerator. Counts, gauges and lengths stay fractions
 * until one named rounding shows them.
 */
export class Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;

  /** Throws `RangeError` for a zero denominator: that is our bug, not the author's. */
  constructor(numerator: bigint, denominator = 1n) {
    if (denominator === 0n) throw new RangeError('a fraction cannot have the denominator 0');
    const divisor = greatestCommonDivisor(numerator, denominator) * (denominator < 0n ? -1n : 1n);
    this.numerator = numerator / divisor;
    this.denominator = denominator / divisor;
  }

  static readonly zero = new Fraction(0n);
  static readonly one = new Fraction(1n);

  /** Throws `RangeError` unless `value` is a safe integer. */
  static ofInteger(value: number): Fraction {
    if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number: ${value}`);
    return new Fraction(BigInt(value));
  }

  /** `ofRatio(127, 5)` is 25.4. Both must be safe integers. */
  static ofRatio(numerator: number, denominator: number): Fraction {
    return Fraction.ofInteger(numerator).dividedBy(Fraction.ofInteger(denominator));
  }

  plus(other: Fraction): Fraction {
    return new Fraction(
      this.numerator * other.denominator + other.numerator * this.denominator,
      this.denominator * other.denominator,
    );
  }

  minus(other: Fraction): Fraction {
    return this.plus(new Fraction(-other.numerator, other.denominator));
  }

  times(other: Fraction): Fraction {
    return new Fraction(this.numerator * other.numerator, this.denominator * other.denominator);
  }

  /** Throws `RangeError` when `other` is zero. */
  dividedBy(other: Fraction): Fraction {
    return new Fraction(this.numerator * other.denominator, this.denominator * other.numerator);
  }

  /** Negative, zero or positive as this is below, equal to or above `other`. */
  compare(other: Fraction): number {
    const difference = this.numerator * other.denominator - other.numerator * this.denominator;
    return difference < 0n ? -1 : difference > 0n ? 1 : 0;
  }

  equals(other: Fraction): boolean {
    return this.compare(other) === 0;
  }

  absolute(): Fraction {
    return this.numerator < 0n ? new Fraction(-this.numerator, this.denominator) : this;
  }

  isWhole(): boolean {
    return this.denominator === 1n;
  }

  /** The nearest double; for drawing and showing only. */
  toNumber(): number {
    return Number(this.numerator) / Number(this.denominator);
  }
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}
