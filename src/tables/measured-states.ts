import type {GaugeCount} from '../knitting/quantity.ts';
import type {Binder, Item} from '../model/binder.ts';
import type {Measurement, Size} from '../model/schema/item-fields.ts';
import {longDate} from '../support/long-date.ts';

/** A piece as it was counted and measured at one time. */
export interface MeasuredState {
  /** `before blocking`, or `after blocking (2)` for the second of a kind: no two states have the same label. */
  readonly label: string;
  /** Year-month-day; null when not said. */
  readonly on: string | null;
  /** Null for the gauge that a pattern states. */
  readonly when: Measurement['when'] | null;
  readonly stitches: readonly GaugeCount[];
  readonly rows: readonly GaugeCount[];
  readonly size: Size;
}

/** In the order of the front matter; none for kinds that are not measured. */
export function measuredStates(item: Item): readonly MeasuredState[] {
  if (item.kind === 'swatch' || item.kind === 'project') {
    const {measured} = item.fields;
    return measured.map(({when, on, stitches, rows, size}, index) => {
      const earlier = measured.slice(0, index).filter((other) => other.when === when).length;
      const label = earlier === 0 ? when : `${when} (${earlier + 1})`;
      return {label, on: on ?? null, when, stitches, rows, size: size ?? {}};
    });
  }
  if (item.kind === 'pattern' && item.fields.gauge) {
    const {stitches, rows} = item.fields.gauge;
    const label = 'stated in the pattern';
    return [{label, on: null, when: null, stitches: listOf(stitches), rows: listOf(rows), size: {}}];
  }
  return [];
}

/** Heading of a state's column: the label with the date. */
export function stateHeading({label, on}: MeasuredState, {settings}: Binder): string {
  return on === null ? label : `${label}, ${longDate(on, settings.language)}`;
}

/** The pair that blocking is judged by: the first state before it and the last after it, or null. */
export function blockingPair<T extends {readonly when: Measurement['when'] | null}>(
  states: readonly T[],
): {readonly before: T; readonly after: T} | null {
  const before = states.find(({when}) => when === 'before blocking');
  const after = states.findLast(({when}) => when === 'after blocking');
  return before && after ? {before, after} : null;
}

function listOf<T>(one: T | undefined): readonly T[] {
  return one === undefined ? [] : [one];
}
