import type {Fraction} from './fraction.ts';
import type {GaugeSummary} from './gauge.ts';
import type {CountUnit, Gauge} from './units.ts';

/** A result at the mean gauge, and the least and the most it can be at the gauges measured. All exact. */
export interface Spread {
  readonly mean: Fraction;
  readonly least: Fraction;
  readonly most: Fraction;
}

/**
 * What the spread of a gauge does to a result: `work` at the mean, and its least and greatest value at the lowest, mean
 * and highest place counted. `work` must grow or fall throughout with the gauge, as count ÷ gauge and length × gauge do.
 * This is a range of what was measured, not a statistical interval. 224 stitches at 21.6 to 22.3 over 10 cm make 100.4 to
 * 103.7 cm.
 */
export function spreadOver<U extends CountUnit>(
  gauge: GaugeSummary<U>,
  work: (gauge: Gauge<U>) => Fraction,
): Spread {
  return spreadOf(
    work(gauge.mean),
    [gauge.lowest, gauge.highest].map((place) => work(place)),
  );
}

/** The same for a result that hangs on two gauges, over all four pairs of their lowest and highest places. */
export function spreadOverBoth<U extends CountUnit, V extends CountUnit>(
  one: GaugeSummary<U>,
  other: GaugeSummary<V>,
  work: (one: Gauge<U>, other: Gauge<V>) => Fraction,
): Spread {
  const corners = [one.lowest, one.highest].flatMap((a) =>
    [other.lowest, other.highest].map((b) => work(a, b)),
  );
  return spreadOf(work(one.mean, other.mean), corners);
}

function spreadOf(mean: Fraction, corners: readonly Fraction[]): Spread {
  const least = corners.reduce((low, value) => (value.compare(low) < 0 ? value : low), mean);
  const most = corners.reduce((high, value) => (value.compare(high) > 0 ? value : high), mean);
  return {mean, least, most};
}
