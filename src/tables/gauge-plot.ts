import type {Element} from 'hast';
import {countOver} from '../knitting/gauge.ts';
import type {CountUnit} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import type {GaugeColumn, GaugeDirection} from './gauge-direction.ts';
import {formatOver, type GaugeScale} from './gauge-scale.ts';
import {dotRadius, plotDot, plotDrawing, plotRow, plotStroke, xOnPlot} from './plot-frame.ts';
import {type PlotScale, plotScale} from './plot-scale.ts';
import {stackDots} from './stack-dots.ts';

/** Millimetres of paper. */
const dotPitch = 2.2;
const rowPadding = 3.4;

/**
 * A dot plot: one row for each state, one dot for each place counted, all on one scale; hollow dots before blocking,
 * full dots otherwise, and an upright stroke through the mean. Drawn with the text colour only.
 */
export function gaugePlot<U extends CountUnit>(
  direction: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  scale: GaugeScale,
): Element {
  const rows = columns.flatMap((column) => gaugeRow(column, scale));
  const axis = plotScale(
    rows.flatMap(({values}) => values),
    scale.finestStep,
  );
  const drawn: Element[] = [];
  let top = 0;
  for (const row of rows) {
    const {content, height} = drawRow(row, axis, top);
    drawn.push(...content);
    top += height;
  }
  return plotDrawing(drawn, top, {
    axis,
    words: `${direction.short} ${scale.words}`,
    description: description(direction, rows, scale),
  });
}

interface GaugeRow {
  readonly label: string;
  readonly isHollow: boolean;
  readonly values: readonly number[];
  readonly shownValues: readonly string[];
  readonly mean: number;
  readonly shownMean: string;
}

function gaugeRow<U extends CountUnit>(column: GaugeColumn<U>, scale: GaugeScale): readonly GaugeRow[] {
  const {label, when, summary} = column;
  if (!summary) return [];
  const values = summary.places.map((place) => countOver(place, scale.length));
  return [
    {
      label,
      isHollow: when === 'before blocking',
      values: values.map((value) => value.toNumber()),
      shownValues: summary.places.map((place) => formatOver(place, scale)),
      mean: countOver(summary.mean, scale.length).toNumber(),
      shownMean: formatOver(summary.mean, scale),
    },
  ];
}

function drawRow(row: GaugeRow, axis: PlotScale, top: number): {content: Element[]; height: number} {
  const dots = stackDots(
    row.values.map((value) => xOnPlot(value, axis)),
    dotPitch,
  );
  const height = (Math.max(...dots.map(({level}) => level)) + 1) * dotPitch + rowPadding;
  const base = top + height - dotPitch / 2 - dotRadius / 2;
  const meanX = xOnPlot(row.mean, axis);
  const marks = [
    plotStroke({x1: meanX, y1: top + 1, x2: meanX, y2: base + dotPitch / 2}, 0.5),
    ...dots.map(({x, level}) => plotDot(x, base - level * dotPitch, row.isHollow)),
  ];
  const content = plotRow(base, {label: row.label, marks, words: `mean ${row.shownMean}`});
  return {content, height};
}

/** What a reader who cannot see the drawing is told. */
function description<U extends CountUnit>(
  direction: GaugeDirection<U>,
  rows: readonly GaugeRow[],
  scale: GaugeScale,
): string {
  const said = rows.map(
    ({label, shownValues, shownMean}) => `${label} ${englishList(shownValues)}, mean ${shownMean}`,
  );
  return `${direction.title} ${scale.words} as dots on one scale: ${said.join('; ')}.`;
}
