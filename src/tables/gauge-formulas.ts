import {formatAsWritten, formatExact, formatLength, type UnitOrder} from '../knitting/format-quantity.ts';
import {type GaugeSummary, lengthOf} from '../knitting/gauge.ts';
import type {GaugeCount} from '../knitting/quantity.ts';
import type {CountUnit, Millimetres} from '../knitting/units.ts';
import type {GaugeColumn, GaugeDirection} from './gauge-direction.ts';
import {formatOver, type GaugeScale, gaugeScales} from './gauge-scale.ts';

/** `Stitches before blocking: (20 + 20.5 + 20) ÷ 3 = 20.2 sts over 10 cm; after blocking: …`, for each state counted. */
export function workedMeans<U extends CountUnit>(
  {title, short}: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  order: UnitOrder,
): string {
  const [scale] = gaugeScales(order);
  return worked(title, columns, ({mean}, counts) => {
    return `${meanOver(counts, scale)} = ${formatOver(mean, scale)}\u00a0${short} ${scale.words}`;
  });
}

/** `Stitches before blocking: 100 ÷ ((19.5 + 20) ÷ 2 ÷ 10 cm) = 50.6 cm (19 7/8 in); …`, for each state counted. */
export function workedExtents<U extends CountUnit>(
  {title, hundred}: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  order: UnitOrder,
): string {
  return worked(title, columns, ({mean}, counts) => {
    return `${hundred} ÷ (${meanPerLength(counts)}) = ${formatLength(lengthOf(hundred, mean), order)}`;
  });
}

function worked<U extends CountUnit>(
  title: string,
  columns: readonly GaugeColumn<U>[],
  show: (summary: GaugeSummary<U>, counts: readonly GaugeCount[]) => string,
): string {
  const states = columns.flatMap(({label, counts, summary}) =>
    summary ? [`${label}: ${show(summary, counts)}`] : [],
  );
  return `${title} ${states.join('; ')}.`;
}

/** The mean over the scale's length, written out; nothing is divided and multiplied by the same length. */
function meanOver(counts: readonly GaugeCount[], scale: GaugeScale): string {
  if (commonLength(counts)?.equals(scale.length)) return meanOfCounts(counts);
  return `${meanPerLength(counts)} × ${scale.lengthWords}`;
}

function meanPerLength(counts: readonly GaugeCount[]): string {
  const [first] = counts;
  if (first && commonLength(counts)) return `${meanOfCounts(counts)} ÷ ${formatAsWritten(first.over)}`;
  const terms = counts.map(({count, over}) => `${formatExact(count)} ÷ ${formatAsWritten(over)}`);
  return `(${terms.join(' + ')}) ÷ ${counts.length}`;
}

function meanOfCounts(counts: readonly GaugeCount[]): string {
  const terms = counts.map(({count}) => formatExact(count)).join(' + ');
  return counts.length === 1 ? terms : `(${terms}) ÷ ${counts.length}`;
}

/** The length that all counts were taken over, or null when it differs. */
function commonLength(counts: readonly GaugeCount[]): Millimetres | null {
  const [first] = counts;
  const isCommon = first && counts.every(({over}) => over.millimetres.equals(first.over.millimetres));
  return isCommon ? first.over.millimetres : null;
}
