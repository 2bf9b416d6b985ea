import {Fraction} from './fraction.ts';
import {nearestWholeHalfUp} from './rounding.ts';

/**
 * The fraction nearest to `value` whose denominator is at most `most`; of equally near ones the smallest denominator.
 * Above zero as long as `value` is at least half of 1 ÷ `most`. 80 ÷ 102 is nearest to 4/5 among the denominators to 5.
 */
export function nearestSmallFraction(value: Fraction, most: number): Fraction {
  const candidates = Array.from({length: most}, (_, index) => {
    const denominator = Fraction.ofInteger(index + 1);
    return Fraction.ofInteger(nearestWholeHalfUp(value.times(denominator))).dividedBy(denominator);
  });
  const offBy = (candidate: Fraction) => candidate.minus(value).absolute();
  return candidates.reduce((best, next) => (offBy(next).compare(offBy(best)) < 0 ? next : best));
}
