import {Fraction} from './fraction.ts';

/** The exact fraction of a number that is a whole number of quarters, such as 2.25; a double holds those exactly. */
export function quarters(value: number): Fraction {
  return Fraction.ofRatio(value * 4, 4);
}
