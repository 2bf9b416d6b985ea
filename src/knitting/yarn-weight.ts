import {Fraction} from './fraction.ts';
import {millimetresIn} from './length-unit.ts';
import {quarters} from './quarters.ts';
import {type Millimetres, millimetres} from './units.ts';

/** From and to, both included; null where the table leaves an end open. */
export interface YarnWeightRange {
  readonly from: Fraction | null;
  readonly to: Fraction | null;
}

/** One line of the trade's yarn weight table. All ranges are guidelines: a pattern's own gauge governs. */
export interface YarnWeight {
  /** The number in the skein symbol of the ball band, 0 to 7. */
  readonly category: number;
  readonly name: string;
  /** Stitches over 4 in (101.6 mm) in stockinette. */
  readonly gauge: YarnWeightRange;
  /** Recommended needle, in millimetres. */
  readonly needle: YarnWeightRange;
  /** Wraps of the yarn around one inch of a ruler. */
  readonly wraps: YarnWeightRange;
}

/**
 * The Standard Yarn Weight System of the Craft Yarn Council (craftyarncouncil.com), knitting columns, from the finest
 * yarn to the thickest. The gauge ranges of 2 and 3 overlap at 23 and 24, and gaps are left between whole stitches.
 */
export const yarnWeights: readonly YarnWeight[] = [
  yarnWeight(0, 'Lace', [33, 40], [1.5, 2.25], [30, 40]),
  yarnWeight(1, 'Super Fine', [27, 32], [2.25, 3.25], [14, 30]),
  yarnWeight(2, 'Fine', [23, 26], [3.25, 3.75], [12, 18]),
  yarnWeight(3, 'Light', [21, 24], [3.75, 4.5], [11, 15]),
  yarnWeight(4, 'Medium', [16, 20], [4.5, 5.5], [9, 12]),
  yarnWeight(5, 'Bulky', [12, 15], [5.5, 8], [6, 9]),
  yarnWeight(6, 'Super Bulky', [7, 11], [8, 12.75], [5, 6]),
  yarnWeight(7, 'Jumbo', [null, 6], [12.75, null], [1, 4]),
];

/** The length that the table's gauge column counts over: 4 in, which is 10.16 cm and not 10 cm. */
export const yarnWeightGaugeLength: Millimetres = millimetres(millimetresIn.in.times(Fraction.ofInteger(4)));

/**
 * The weights whose range holds `value`: stitches over 4 in for `gauge`, millimetres for `needle`, wraps per inch for
 * `wraps`. There may be several (24 stitches are both 2 and 3) or none (20.5 falls between 4 and 3).
 */
export function yarnWeightsFor(column: 'gauge' | 'needle' | 'wraps', value: Fraction): readonly YarnWeight[] {
  return yarnWeights.filter((weight) => isWithin(value, weight[column]));
}

function isWithin(value: Fraction, {from, to}: YarnWeightRange): boolean {
  return (from === null || value.compare(from) >= 0) && (to === null || value.compare(to) <= 0);
}

type Ends = readonly [number | null, number | null];

function yarnWeight(category: number, name: string, gauge: Ends, needle: Ends, wraps: Ends): YarnWeight {
  return {category, name, gauge: range(gauge), needle: range(needle), wraps: range(wraps)};
}

function range([from, to]: Ends): YarnWeightRange {
  return {from: from === null ? null : quarters(from), to: to === null ? null : quarters(to)};
}
