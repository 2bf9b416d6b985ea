import {formatNumber, type UnitOrder} from '../knitting/format-quantity.ts';
import type {Fraction} from '../knitting/fraction.ts';
import {countOver} from '../knitting/gauge.ts';
import {millimetresIn} from '../knitting/length-unit.ts';
import {type Millimetres, millimetres} from '../knitting/units.ts';

/** A length that gauge is stated over, and the decimals it is shown with. */
export interface GaugeScale {
  readonly length: Millimetres;
  /** `10 cm` or `1 in`. */
  readonly lengthWords: string;
  /** `over 10 cm` or `over 1 in`. */
  readonly words: string;
  readonly decimals: number;
  readonly rounding: string;
  /** The finest step of a drawn scale, in tenths of a stitch or row; a finer one would make slips look like faults. */
  readonly finestStep: number;
}

export const overTenCentimetres: GaugeScale = {
  length: millimetres(100),
  lengthWords: '10\u00a0cm',
  words: 'over 10\u00a0cm',
  decimals: 1,
  rounding: 'gauge over 10\u00a0cm to one decimal',
  finestStep: 5,
};

const overOneInch: GaugeScale = {
  length: millimetres(millimetresIn.in),
  lengthWords: '1\u00a0in',
  words: 'over 1\u00a0in',
  decimals: 2,
  rounding: 'gauge over 1\u00a0in to two decimals',
  finestStep: 1,
};

/** Both scales, the binder's own first. */
export function gaugeScales(order: UnitOrder): readonly [GaugeScale, GaugeScale] {
  return order === 'metric' ? [overTenCentimetres, overOneInch] : [overOneInch, overTenCentimetres];
}

/** `20.2` for a gauge, or a difference of gauges, over the scale's length; the unit is the caller's to add. */
export function formatOver(gauge: Fraction, scale: GaugeScale): string {
  return formatNumber(countOver(gauge, scale.length), scale.decimals);
}

/** `20.2 sts over 10 cm (5.12 over 1 in)` for a gauge or a difference of gauges; `short` is `sts` or `rows`. */
export function formatOverBoth(gauge: Fraction, short: string, order: UnitOrder): string {
  const [first, second] = gaugeScales(order);
  return `${formatOver(gauge, first)}\u00a0${short} ${first.words} (${formatOver(gauge, second)}\u00a0${second.words})`;
}
