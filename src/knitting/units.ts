import {Fraction} from './fraction.ts';

declare const unit: unique symbol;
type Of<U extends string> = {readonly [unit]: U};

/** What gauge counts: stitches (wales) across, or rows (courses) up the knitting. */
export type CountUnit = 'stitches' | 'rows';

/** A whole number of stitches or of rows (or rounds). */
export type Count<U extends CountUnit> = number & Of<U>;
export type Stitches = Count<'stitches'>;
export type Rows = Count<'rows'>;

/** An exact length. A difference of lengths may be below zero. */
export type Millimetres = Fraction & Of<'mm'>;

/** An exact gauge in stitches, or in rows, per millimetre. */
export type Gauge<U extends CountUnit> = Fraction & Of<`${U} per mm`>;

/** Throws `RangeError`: a part of a stitch, or fewer than none, is our bug, not the author's. */
export function stitches(count: number): Stitches {
  return counted<'stitches'>(count);
}

/** Throws `RangeError`: a part of a row, or fewer than none, is our bug, not the author's. */
export function rows(count: number): Rows {
  return counted<'rows'>(count);
}

/** A length of so many millimetres. A plain number must be whole: 25.4 is `Fraction.ofRatio(127, 5)`. */
export function millimetres(length: Fraction | number): Millimetres {
  const exact = typeof length === 'number' ? Fraction.ofInteger(length) : length;
  // The brand exists only for the compiler; every fraction is a length.
  return exact as Millimetres;
}

/** So many per millimetre. Throws `RangeError` unless above zero: knitting without stitches has no gauge. */
export function perMillimetre<U extends CountUnit>(gauge: Fraction): Gauge<U> {
  if (gauge.compare(Fraction.zero) <= 0) throw new RangeError('a gauge is above zero');
  // The brand exists only for the compiler; the check above is what it stands for.
  return gauge as Gauge<U>;
}

function counted<U extends CountUnit>(count: number): Count<U> {
  if (!Number.isSafeInteger(count) || count < 0) throw new RangeError(`not a count: ${count}`);
  // The brand exists only for the compiler; the check above is what it stands for.
  return count as Count<U>;
}
