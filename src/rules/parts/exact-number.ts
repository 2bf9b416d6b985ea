import {Fraction} from '../../knitting/fraction.ts';

/** A limit from a YAML file as an exact number; it is read to the third decimal. */
export function exactNumber(limit: number): Fraction {
  return Fraction.ofRatio(Math.round(limit * 1000), 1000);
}
