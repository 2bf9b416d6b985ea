import {Fraction} from './fraction.ts';
import {type Millimetres, millimetres} from './units.ts';

/** How far two edges that should be equally long lie apart. */
export interface EdgeEvenness {
  /** Left minus right: above zero the left edge is the longer one. */
  readonly difference: Millimetres;
  /** The difference without its sign in percent of the mean of both; null where both are zero. */
  readonly percent: Fraction | null;
}

/**
 * Difference of the left and the right edge, and 100 × |left − right| ÷ ((left + right) ÷ 2). 138 mm and 143 mm are
 * 5 mm apart, 3.56 % of their mean. Plain arithmetic, no source needed.
 */
export function edgeEvenness(left: Millimetres, right: Millimetres): EdgeEvenness {
  const difference = millimetres(left.minus(right));
  const mean = left.plus(right).dividedBy(Fraction.ofInteger(2));
  const percent = mean.equals(Fraction.zero)
    ? null
    : difference.absolute().dividedBy(mean).times(Fraction.ofInteger(100));
  return {difference, percent};
}
