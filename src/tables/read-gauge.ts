import type {UnitOrder} from '../knitting/format-quantity.ts';
import {type GaugeSummary, summarizeGauge} from '../knitting/gauge.ts';
import type {GaugeCount} from '../knitting/quantity.ts';
import type {CountUnit} from '../knitting/units.ts';
import type {Item} from '../model/binder.ts';
import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {gaugeCounts, itemNamed, unreadable} from './attribute-readers.ts';
import {optional} from './attributes.ts';
import {formatOverBoth} from './gauge-scale.ts';
import {measuredStates} from './measured-states.ts';

/** A gauge with where it was taken from. */
export interface NamedGauge<U extends CountUnit> {
  readonly summary: GaugeSummary<U>;
  /** `20.2 sts over 10 cm (5.12 over 1 in), mean of 3 counts of S-07 after blocking`. */
  readonly words: string;
}

/** For tables that need stitches and rows: written out, or taken from a measured item. */
export const gaugeAttributes = {
  gauge: optional(gaugeCounts),
  'row-gauge': optional(gaugeCounts),
  'gauge-of': optional(itemNamed('gauge-of')),
};

export interface WrittenGauge {
  readonly gauge: readonly GaugeCount[] | null;
  readonly 'row-gauge'?: readonly GaugeCount[] | null;
  readonly 'gauge-of': Item | null;
}

export function stitchGauge(written: WrittenGauge, order: UnitOrder): Result<NamedGauge<'stitches'>> {
  return readGauge('stitches', {name: 'gauge', counts: written.gauge, item: written['gauge-of']}, order);
}

export function rowGauge(written: WrittenGauge, order: UnitOrder): Result<NamedGauge<'rows'>> {
  const counts = written['row-gauge'] ?? null;
  return readGauge('rows', {name: 'row-gauge', counts, item: written['gauge-of']}, order);
}

/** A gauge of its own, such as that of a band: the counts written in `name`, or those of the item in `name`-of. */
export function readGauge<U extends CountUnit>(
  unit: U,
  {
    name,
    counts,
    item,
  }: {readonly name: string; readonly counts: readonly GaugeCount[] | null; readonly item: Item | null},
  order: UnitOrder,
): Result<NamedGauge<U>> {
  const example = unit === 'rows' ? '28 over 10 cm' : '20 over 10 cm';
  const from = name === 'row-gauge' ? 'gauge-of' : `${name}-of`;
  if (counts && item) {
    return unreadable(
      `both \`${name}\` and \`${from}\` say the gauge in ${unit}`,
      `Write one of them: \`${name}\` to state it, \`${from}\` to take it from an item.`,
    );
  }
  if (counts) return success(named(counts, '', unit, order));
  if (!item) {
    return unreadable(
      `the gauge in ${unit} is not said`,
      `Write \`${name}="${example}"\`, or \`${from}=S-07\` to take it from a measured item.`,
    );
  }
  const states = measuredStates(item).filter((state) => state[unit].length > 0);
  const state = states.findLast(({when}) => when === 'after blocking') ?? states.at(-1);
  if (!state) {
    return unreadable(
      `\`${item.id}\` has no counts of ${unit}`,
      `Write them under \`measured\` there, such as \`${unit}: [${example}]\`.`,
    );
  }
  return success(named(state[unit], ` of ${item.id} ${state.label}`, unit, order));
}

function named<U extends CountUnit>(
  counts: readonly GaugeCount[],
  origin: string,
  unit: U,
  order: UnitOrder,
): NamedGauge<U> {
  const summary = summarizeGauge<U>(counts);
  const gauge = formatOverBoth(summary.mean, unit === 'rows' ? 'rows' : 'sts', order);
  const mean =
    counts.length > 1 ? `, mean of ${plural(counts.length, 'count')}` : origin === '' ? '' : ', one count';
  return {summary, words: `${gauge}${mean}${origin}`};
}
