import {summarizeGauge} from '../../knitting/gauge.ts';
import type {GaugeCount} from '../../knitting/quantity.ts';
import type {Item} from '../../model/binder.ts';
import type {Measurement} from '../../model/schema/item-fields.ts';
import {exactNumber} from './exact-number.ts';
import {measurementsOf} from './measurements.ts';

/** The counts of stitches, or of rows, of one measurement. */
export interface CountedGauge {
  readonly what: 'stitches' | 'rows';
  readonly when: Measurement['when'];
  readonly counts: readonly GaugeCount[];
  /** Path of the list of counts in the item's front matter. */
  readonly path: readonly (string | number)[];
}

/** Every list of counts in the order written, stitches before rows; lists without a count too. */
export function countedGauges(item: Item): readonly CountedGauge[] {
  return measurementsOf(item).flatMap((measurement, index) =>
    (['stitches', 'rows'] as const).map((what) => ({
      what,
      when: measurement.when,
      counts: measurement[what],
      path: ['measured', index, what],
    })),
  );
}

/** The counts of stitches of the piece as it is sent, after blocking rather than before; of a pattern, its stated gauge. */
export function stitchesAsSent(item: Item): Pick<CountedGauge, 'counts' | 'path'> | null {
  if (item.kind === 'pattern') {
    const stated = item.fields.gauge?.stitches;
    return stated ? {counts: [stated], path: ['gauge', 'stitches']} : null;
  }
  const counted = countedGauges(item).filter(({what, counts}) => what === 'stitches' && counts.length > 0);
  return counted.find(({when}) => when === 'after blocking') ?? counted[0] ?? null;
}

/** Whether the counts lie further apart than the syllabus allows; false when it sets no limit. */
export function isSpreadTooWide(item: Item, {counts}: Pick<CountedGauge, 'counts'>): boolean {
  const limit = item.requirement?.limits.gauge?.spread;
  if (limit === undefined || counts.length < 2) return false;
  return summarizeGauge(counts).spreadPercent.compare(exactNumber(limit)) > 0;
}
