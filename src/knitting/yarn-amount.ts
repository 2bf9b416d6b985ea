import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {wholeNotBelow} from './rounding.ts';
import type {Millimetres} from './units.ts';

/** Pieces of one shape: a rectangle, or a trapezium when the two widths differ. */
export interface PieceShape {
  readonly times: number;
  readonly lower: Millimetres;
  readonly upper: Millimetres;
  readonly height: Millimetres;
}

/** Square millimetres of all pieces of a shape: times × (lower + upper) ÷ 2 × height. */
export function areaOf({times, lower, upper, height}: PieceShape): Fraction {
  return lower.plus(upper).dividedBy(Fraction.ofInteger(2)).times(height).times(Fraction.ofInteger(times));
}

/**
 * Grams of yarn for an area: area × swatch mass ÷ swatch area, the published formula Y = TA × k ÷ SA
 * (autumnbreezedesigns.com, "How much yarn", part 2). 1534 sq in from a swatch of 36 sq in and 9 g: 383.5 g.
 */
export function gramsForArea(area: Fraction, swatchArea: Fraction, swatchGrams: Fraction): Fraction {
  return area.times(swatchGrams).dividedBy(swatchArea);
}

/** Millimetres of yarn for so many stitches, from the length that came out of so many unravelled ones. */
export function yarnForStitches(
  count: Fraction,
  sampleStitches: number,
  sampleLength: Millimetres,
): Fraction {
  return count.times(sampleLength).dividedBy(Fraction.ofInteger(sampleStitches));
}

/** An amount with so many percent more. */
export function withMargin(amount: Fraction, percent: Fraction): Fraction {
  return amount.times(Fraction.one.plus(percent.dividedBy(Fraction.ofInteger(100))));
}

/** One colour's part of the whole. */
export interface ColourShare {
  readonly colour: string;
  readonly percent: Fraction;
}

export interface ColourAmount {
  readonly colour: string | null;
  readonly amount: Fraction;
  /** Whole skeins: a part of a skein is bought as one. */
  readonly skeins: number;
}

/** Skeins, colour by colour, each rounded up by itself; without colours, of the whole. `perSkein` is in the unit of `amount`. */
export function skeinsFor(
  amount: Fraction,
  perSkein: Fraction,
  colours: readonly ColourShare[],
): Result<readonly ColourAmount[]> {
  const sum = colours.reduce((total, {percent}) => total.plus(percent), Fraction.zero);
  const hundred = Fraction.ofInteger(100);
  if (colours.length > 0 && !sum.equals(hundred)) {
    return cannotWork(
      `the colours add up to \`${sum.toNumber()} %\``,
      'Write shares that add up to 100 %, such as `oatmeal 60 %, rust 40 %`.',
    );
  }
  if (amount.dividedBy(perSkein).compare(Fraction.ofInteger(mostCounted)) > 0) {
    return cannotWork(
      `the yarn comes to more than \`${mostCounted}\` skeins`,
      'Check the units of the pieces, of the swatch and of the put-up.',
    );
  }
  const whole = [{colour: null, percent: hundred}];
  return success(
    (colours.length > 0 ? colours : whole).map(({colour, percent}) => {
      const part = amount.times(percent).dividedBy(hundred);
      return {colour, amount: part, skeins: wholeNotBelow(part.dividedBy(perSkein))};
    }),
  );
}
