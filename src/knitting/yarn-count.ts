import {Fraction} from './fraction.ts';
import {millimetresIn} from './length-unit.ts';
import type {PutUp} from './quantity.ts';
import {type YarnWeight, yarnWeights} from './yarn-weight.ts';

/**
 * Linear density in tex, the grams of 1000 m (ISO 1144, Tex System). 100 g in 200 m are 500 tex.
 */
export function texOf({grams, length}: PutUp): Fraction {
  return grams.times(Fraction.ofInteger(1000)).dividedBy(length.millimetres.dividedBy(millimetresIn.m));
}

/** The metric count Nm, metres to the gram: 1000 ÷ tex (conversion of ISO 1144). 200 m / 100 g are Nm 2. */
export function metricCountOf(putUp: PutUp): Fraction {
  return Fraction.ofInteger(1000).dividedBy(texOf(putUp));
}

/** Metres that weigh 100 g. */
export function metresPerHundredGrams(putUp: PutUp): Fraction {
  return metricCountOf(putUp).times(Fraction.ofInteger(100));
}

/**
 * Metres to 100 g of each yarn weight. Common practice: two families of shop tables that disagree, each range here from
 * the lower of both starts to the higher of both ends; the trade's own standard publishes no lengths. Null is open.
 */
const usualLengths: readonly (readonly [category: number, from: number | null, to: number | null])[] = [
  [0, 600, null],
  [1, 350, 600],
  [2, 250, 400],
  [3, 200, 300],
  [4, 120, 240],
  [5, 100, 130],
  [6, null, 100],
  [7, null, 100],
];

/** The yarn weights that a length to 100 g is usual for; neighbouring ranges overlap, so there are often two. */
export function yarnWeightsByLength(metres: Fraction): readonly YarnWeight[] {
  const usual = usualLengths.filter(
    ([, from, to]) =>
      (from === null || metres.compare(Fraction.ofInteger(from)) >= 0) &&
      (to === null || metres.compare(Fraction.ofInteger(to)) <= 0),
  );
  return yarnWeights.filter(({category}) => usual.some(([number]) => number === category));
}
