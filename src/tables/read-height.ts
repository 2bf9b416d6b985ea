import {mostCounted} from '../knitting/cannot-work.ts';
import {formatLength, formatNumber, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {countOver, lengthOf} from '../knitting/gauge.ts';
import type {GaugeCount, Length} from '../knitting/quantity.ts';
import {nearestWholeHalfUp} from '../knitting/rounding.ts';
import {spreadOver} from '../knitting/uncertainty.ts';
import {type Rows, rows} from '../knitting/units.ts';
import type {Item} from '../model/binder.ts';
import {type Result, success} from '../support/result.ts';
import type {FigureLine} from './arithmetic-figure.ts';
import {count, length, unreadable} from './attribute-readers.ts';
import {optional} from './attributes.ts';
import {type NamedGauge, rowGauge} from './read-gauge.ts';
import {lengthShown, spreadWords} from './spread-words.ts';

/** A height in rows, or as a length that the row gauge turns into rows. */
export const heightAttributes = {rows: optional(count), height: optional(length)};

export interface ReadHeight {
  readonly rows: Rows;
  /** Null when the rows were written and no gauge was. */
  readonly gauge: NamedGauge<'rows'> | null;
  readonly given: readonly FigureLine[];
  readonly rounding: readonly string[];
  /** Rows before rounding. */
  readonly exact: Fraction;
  /** The height that the rows make, and what the spread does to it; nothing without a gauge. */
  readonly heightLines: readonly FigureLine[];
}

/** Rows as written, or height × row gauge to the nearest row, half up. */
export function readHeight(
  written: {
    readonly rows: number | null;
    readonly height: Length | null;
    readonly 'row-gauge': readonly GaugeCount[] | null;
    readonly 'gauge-of': Item | null;
  },
  order: UnitOrder,
): Result<ReadHeight> {
  const {rows: counted, height} = written;
  if ((counted === null) === (height === null)) {
    return unreadable(
      counted === null ? 'the rows are not said' : 'both `rows` and `height` say how high it is',
      'Write `rows=60`, or `height="20 cm"` with `row-gauge="28 over 10 cm"`.',
    );
  }
  const hasGauge = written['row-gauge'] !== null || written['gauge-of'] !== null;
  const gauge = hasGauge || height ? rowGauge({...written, gauge: null}, order) : null;
  if (gauge && !gauge.ok) return gauge;
  const named = gauge?.value ?? null;
  const gaugeLine: readonly FigureLine[] = named ? [['Row gauge', named.words]] : [];
  const read = (whole: Rows, exact: Fraction) => ({
    rows: whole,
    exact,
    gauge: named,
    heightLines: named ? heightLines(whole, named, order) : [],
  });
  if (counted !== null) {
    const given: readonly FigureLine[] = [['Rows', `${counted}`], ...gaugeLine];
    return success({...read(rows(counted), Fraction.ofInteger(counted)), given, rounding: []});
  }
  if (!height || !named) return unreadable('the rows are not said', 'Write `rows=60`.');
  const exact = countOver(named.summary.mean, height.millimetres);
  if (exact.compare(Fraction.ofInteger(mostCounted)) > 0) {
    return unreadable(
      `the height would take more than \`${mostCounted}\` rows`,
      'Check the units of height and gauge.',
    );
  }
  return success({
    ...read(rows(nearestWholeHalfUp(exact)), exact),
    given: [
      ['Height', formatLength(height.millimetres, order)],
      ...gaugeLine,
      ['Rows', `${formatNumber(exact, 2)} exactly`],
    ],
    rounding: ['rows to the nearest row, half up, exact rows to two decimals'],
  });
}

/** How high so many rows are, at the mean gauge and at the lowest and highest place counted. */
export function heightLines(
  count: Rows,
  {summary}: NamedGauge<'rows'>,
  order: UnitOrder,
): readonly FigureLine[] {
  const spread = spreadOver(summary, (at) => lengthOf(count, at));
  return [
    [`Height of ${count} rows`, lengthShown(order)(spread.mean)],
    ['Spread', spreadWords(spread, [summary], lengthShown(order))],
  ];
}
