import {invariant} from '../support/invariant.ts';
import {Fraction} from './fraction.ts';
import type {GaugeCount} from './quantity.ts';
import {
  type Count,
  type CountUnit,
  type Gauge,
  type Millimetres,
  millimetres,
  perMillimetre,
} from './units.ts';

/** The counts of one kind taken at several places of one piece, put together. Everything is exact. */
export interface GaugeSummary<U extends CountUnit> {
  /** The gauge at each place, in the order of the counts. */
  readonly places: readonly Gauge<U>[];
  /** Arithmetic mean of the gauges at the places; each place weighs the same, whatever length was counted over. */
  readonly mean: Gauge<U>;
  readonly lowest: Gauge<U>;
  readonly highest: Gauge<U>;
  /** Highest minus lowest, per millimetre; zero when all places agree. */
  readonly spread: Fraction;
  /** The spread in percent of the mean. */
  readonly spreadPercent: Fraction;
}

/**
 * The gauge of one place: the count divided by the length it was counted over, so that a count over 4 in (10.16 cm) is
 * never taken for a count over 10 cm. 22 stitches over 4 in are 22 ÷ 101.6 mm, which is 21.65 over 10 cm.
 */
export function gaugeOf<U extends CountUnit>(count: GaugeCount): Gauge<U> {
  return perMillimetre<U>(count.count.dividedBy(count.over.millimetres));
}

/** Puts together counts of stitches, or counts of rows; at least one. Plain arithmetic, no source needed. */
export function summarizeGauge<U extends CountUnit>(counts: readonly GaugeCount[]): GaugeSummary<U> {
  const places = counts.map((count) => gaugeOf<U>(count));
  const [first] = places;
  invariant(first, 'a gauge needs at least one count');
  const sum = places.reduce<Fraction>((total, gauge) => total.plus(gauge), Fraction.zero);
  const mean = perMillimetre<U>(sum.dividedBy(Fraction.ofInteger(places.length)));
  const lowest = places.reduce((least, gauge) => (gauge.compare(least) < 0 ? gauge : least), first);
  const highest = places.reduce((most, gauge) => (gauge.compare(most) > 0 ? gauge : most), first);
  const spread = highest.minus(lowest);
  const spreadPercent = spread.dividedBy(mean).times(Fraction.ofInteger(100));
  return {places, mean, lowest, highest, spread, spreadPercent};
}

/** How many stitches or rows lie over `length`; a fraction of a stitch stays one. */
export function countOver(gauge: Fraction, length: Millimetres): Fraction {
  return gauge.times(length);
}

/**
 * The width that so many stitches make, or the height that so many rows make: count ÷ gauge.
 * 100 stitches at 20 over 10 cm make 500 mm.
 */
export function lengthOf<U extends CountUnit>(count: Count<U>, gauge: Gauge<NoInfer<U>>): Millimetres {
  return millimetres(Fraction.ofInteger(count).dividedBy(gauge));
}

/**
 * By how much a piece planned at one gauge comes out longer (above zero) or shorter (below zero) when it is knitted at
 * another. 200 stitches planned at 5 to the inch and knitted at 5.25 come out 1.905 in narrower.
 */
export function lengthOff<U extends CountUnit>(
  count: Count<U>,
  planned: Gauge<NoInfer<U>>,
  knitted: Gauge<NoInfer<U>>,
): Millimetres {
  return millimetres(lengthOf(count, knitted).minus(lengthOf(count, planned)));
}
