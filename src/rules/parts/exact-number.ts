import {Fraction} from '../../knitting/fraction.ts';

/** Whoever sets a higher limit, or `.inf`, means none. */
const highest = 1e9;

/** A limit from a YAML file as an exact number; it is read to the third decimal. */
export function exactNumber(limit: number): Fraction {
  return Fraction.ofRatio(Math.round(Math.min(limit, highest) * 1000), 1000);
}
