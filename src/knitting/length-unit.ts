import {Fraction} from './fraction.ts';

/** A unit of length as the author wrote it; `mm`, `cm` and `m` are metric, `in` is the inch of exactly 25.4 mm. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'yd';

/**
 * Exact millimetres in one unit. Inch and yard: international yard and pound agreement of 1959, 1 yd = 0.9144 m,
 * 1 in = 25.4 mm.
 */
export const millimetresIn: Readonly<Record<LengthUnit, Fraction>> = {
  mm: Fraction.one,
  cm: Fraction.ofInteger(10),
  m: Fraction.ofInteger(1000),
  in: Fraction.ofRatio(254, 10),
  yd: Fraction.ofRatio(9144, 10),
};
