import {type GaugeSummary, summarizeGauge} from '../knitting/gauge.ts';
import type {GaugeCount} from '../knitting/quantity.ts';
import {type Count, type CountUnit, rows, stitches} from '../knitting/units.ts';
import type {MeasuredState} from './measured-states.ts';

/** The words of one direction of the knitting, and the hundred that its width or height is worked out for. */
export interface GaugeDirection<U extends CountUnit> {
  readonly unit: U;
  readonly title: string;
  /** Behind a number: `sts` or `rows`. */
  readonly short: string;
  /** What so many of them make: `width` or `height`. */
  readonly extent: 'width' | 'height';
  readonly hundred: Count<U>;
}

export const across: GaugeDirection<'stitches'> = {
  unit: 'stitches',
  title: 'Stitches',
  short: 'sts',
  extent: 'width',
  hundred: stitches(100),
};

export const upward: GaugeDirection<'rows'> = {
  unit: 'rows',
  title: 'Rows',
  short: 'rows',
  extent: 'height',
  hundred: rows(100),
};

/** The counts of one direction in one state, put together; `summary` is null when there are none. */
export interface GaugeColumn<U extends CountUnit> {
  readonly label: string;
  readonly when: MeasuredState['when'];
  readonly counts: readonly GaugeCount[];
  readonly summary: GaugeSummary<U> | null;
}

/** One column for each state, so that stitches and rows stand in the same columns. */
export function gaugeColumns<U extends CountUnit>(
  direction: GaugeDirection<U>,
  states: readonly MeasuredState[],
): readonly GaugeColumn<U>[] {
  return states.map((state) => {
    const counts = state[direction.unit];
    const summary = counts.length > 0 ? summarizeGauge<U>(counts) : null;
    return {label: state.label, when: state.when, counts, summary};
  });
}
