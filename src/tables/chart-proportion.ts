import type {UnitOrder} from '../knitting/format-quantity.ts';
import type {Gauge} from '../knitting/units.ts';
import type {Item} from '../model/binder.ts';
import {readGauge} from './read-gauge.ts';

/** How wide a stitch is for its height. */
export interface ChartProportion {
  /** Width of a stitch over height of a row; 1 when the item has no gauge. */
  readonly ratio: number;
  readonly stitches: Gauge<'stitches'> | null;
  readonly words: string;
}

/** Rows so flat or so high are no knitting, and could not be drawn. */
const [least, most] = [0.5, 3];

export function chartProportion(item: Item, order: UnitOrder): ChartProportion {
  const across = readGauge<'stitches'>('stitches', {name: 'gauge', counts: null, item}, order);
  const upwards = readGauge<'rows'>('rows', {name: 'row-gauge', counts: null, item}, order);
  if (!across.ok || !upwards.ok) {
    const stitches = across.ok ? across.value.summary.mean : null;
    return {
      ratio: 1,
      stitches,
      words: `Squares as wide as high: ${item.id} has no counts of stitches and rows.`,
    };
  }
  const [stitches, rows] = [across.value.summary.mean, upwards.value.summary.mean];
  const ratio = Math.min(most, Math.max(least, rows.dividedBy(stitches).toNumber()));
  const words = `Squares in the proportion of the gauge: ${across.value.words}; ${upwards.value.words}.`;
  return {ratio, stitches, words};
}
