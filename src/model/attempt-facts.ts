import {edgeEvenness} from '../knitting/edge-evenness.ts';
import {summarizeGauge} from '../knitting/gauge.ts';
import type {GaugeCount, Length} from '../knitting/quantity.ts';
import type {CountUnit, Gauge, Millimetres} from '../knitting/units.ts';
import type {Item} from './binder.ts';

/** One attempt with what follows from it; what was not recorded is null. */
export interface AttemptFacts {
  /** Year-month-day. */
  readonly on: string;
  readonly needles: readonly string[];
  readonly left: Length | null;
  readonly right: Length | null;
  /** Left minus right. */
  readonly difference: Millimetres | null;
  /** Mean of the counts. */
  readonly stitches: Gauge<'stitches'> | null;
  readonly rows: Gauge<'rows'> | null;
  readonly wrong: string | null;
  readonly helped: string | null;
}

/** The attempts at an item in the order written; none for kinds that are not knitted. */
export function attemptFacts({fields}: Item): readonly AttemptFacts[] {
  const attempts = 'attempts' in fields ? fields.attempts : [];
  return attempts.map(({on, needles, edges, stitches, rows, wrong, helped}) => {
    const [left, right] = [edges?.left ?? null, edges?.right ?? null];
    return {
      on,
      needles: needles ?? [],
      left,
      right,
      difference: left && right ? edgeEvenness(left.millimetres, right.millimetres).difference : null,
      stitches: meanOf<'stitches'>(stitches),
      rows: meanOf<'rows'>(rows),
      wrong: wrong || null,
      helped: helped || null,
    };
  });
}

function meanOf<U extends CountUnit>(counts: readonly GaugeCount[]): Gauge<U> | null {
  return counts.length > 0 ? summarizeGauge<U>(counts).mean : null;
}
