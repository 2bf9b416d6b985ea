import {changeOfGauge, changeOfLength} from '../knitting/blocking-change.ts';
import {
  formatAsWritten,
  formatExact,
  formatLength,
  formatLengthDifference,
  formatPercent,
  formatPercentChange,
  type UnitOrder,
} from '../knitting/format-quantity.ts';
import type {Fraction} from '../knitting/fraction.ts';
import {type GaugeSummary, lengthOf, lengthOff} from '../knitting/gauge.ts';
import type {GaugeCount} from '../knitting/quantity.ts';
import type {CountUnit, Gauge} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import {capitalized} from './capitalized.ts';
import type {FigureGroup} from './computed-figure.ts';
import type {GaugeColumn, GaugeDirection} from './gauge-direction.ts';
import {formatOverBoth} from './gauge-scale.ts';
import {blockingPair} from './measured-states.ts';

const notCounted = 'not counted';
const oneCount = 'one count only';

/** The lines of one direction: what was counted, then everything worked out from it, with the change on blocking last. */
export function gaugeLines<U extends CountUnit>(
  direction: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  order: UnitOrder,
): FigureGroup {
  const {title, short, extent, hundred} = direction;
  const pair = blockingPair(columns);
  const [before, after] = [pair?.before.summary, pair?.after.summary];

  const line = (
    label: string,
    show: (summary: GaugeSummary<U>) => string,
    change: Fraction | null = null,
  ) => ({
    label,
    cells: [
      ...columns.map(({summary}) => (summary ? show(summary) : notCounted)),
      ...(pair ? [change ? formatPercentChange(change) : ''] : []),
    ],
  });
  const hasSpread = columns.some(({counts}) => counts.length > 1);
  const spreadLine = () =>
    line('Spread', ({places, spread, spreadPercent}) =>
      places.length > 1
        ? `${formatOverBoth(spread, short, order)}, ${formatPercent(spreadPercent)} of the mean`
        : oneCount,
    );
  const offLine = (place: 'lowest' | 'highest') =>
    line(`Difference, ${place} count`, (summary) =>
      summary.places.length > 1
        ? formatLengthDifference(lengthOff(hundred, summary.mean, summary[place]), order)
        : oneCount,
    );
  const extentOf = (gauge: Gauge<U>) => lengthOf(hundred, gauge);

  return {
    title,
    lines: [
      {
        label: 'Counted',
        cells: [...columns.map(({counts}) => countsText(counts, short)), ...(pair ? [''] : [])],
      },
      line(
        'Mean',
        ({mean}) => formatOverBoth(mean, short, order),
        before && after ? changeOfGauge(before.mean, after.mean) : null,
      ),
      line(
        `${capitalized(extent)} of 100 ${direction.unit}`,
        ({mean}) => formatLength(extentOf(mean), order),
        before && after ? changeOfLength(extentOf(before.mean), extentOf(after.mean)) : null,
      ),
      ...(hasSpread ? [spreadLine(), offLine('lowest'), offLine('highest')] : []),
    ],
  };
}

/** `20, 20.5 and 20 sts over 10 cm`; counts over another length follow behind a semicolon. */
export function countsText(counts: readonly GaugeCount[], short: string): string {
  if (counts.length === 0) return notCounted;
  const groups = new Map<string, string[]>();
  for (const {count, over} of counts) {
    const length = formatAsWritten(over);
    groups.set(length, [...(groups.get(length) ?? []), formatExact(count)]);
  }
  return [...groups]
    .map(([length, shown]) => `${englishList(shown)}\u00a0${short} over ${length}`)
    .join('; ');
}
