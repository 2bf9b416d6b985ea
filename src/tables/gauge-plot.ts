import type {Element} from 'hast';
import {s} from 'hastscript';
import {countOver} from '../knitting/gauge.ts';
import type {CountUnit} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import type {GaugeColumn, GaugeDirection} from './gauge-direction.ts';
import {formatOver, type GaugeScale} from './gauge-scale.ts';
import {type PlotScale, plotScale} from './plot-scale.ts';
import {stackDots} from './stack-dots.ts';

/** All measures in millimetres of paper. */
const labelWidth = 27;
const axisWidth = 48;
const meanWidth = 17;
const dotRadius = 0.9;
const dotPitch = 2.2;
const rowPadding = 3.4;
const axisHeight = 9;
const textSize = 2.6;

/**
 * A dot plot: one row for each state, one dot for each place counted, all on one scale; hollow dots before blocking,
 * full dots otherwise, and an upright stroke through the mean. Drawn with the text colour only.
 */
export function gaugePlot<U extends CountUnit>(
  direction: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  scale: GaugeScale,
): Element {
  const rows = columns.flatMap((column) => plotRow(column, scale));
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
  const width = labelWidth + axisWidth + meanWidth;
  const height = top + axisHeight;
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${width}mm`,
      height: `${mm(height)}mm`,
      viewBox: `0 0 ${width} ${mm(height)}`,
      fontSize: textSize,
      fill: 'currentColor',
    },
    [
      s('title', description(direction, rows, scale)),
      ...drawn,
      ...drawAxis(axis, top, `${direction.short} ${scale.words}`),
    ],
  );
}

interface PlotRow {
  readonly label: string;
  readonly isHollow: boolean;
  readonly values: readonly number[];
  readonly shownValues: readonly string[];
  readonly mean: number;
  readonly shownMean: string;
}

function plotRow<U extends CountUnit>(column: GaugeColumn<U>, scale: GaugeScale): readonly PlotRow[] {
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

function drawRow(row: PlotRow, axis: PlotScale, top: number): {content: Element[]; height: number} {
  const dots = stackDots(
    row.values.map((value) => xOf(value, axis)),
    dotPitch,
  );
  const height = (Math.max(...dots.map(({level}) => level)) + 1) * dotPitch + rowPadding;
  const base = top + height - dotPitch / 2 - dotRadius / 2;
  const meanX = mm(xOf(row.mean, axis));
  const stroke = {stroke: 'currentColor', strokeWidth: 0.25};
  const content = [
    s('text', {x: 0, y: mm(base + textSize / 3)}, row.label),
    s('line', {
      x1: labelWidth,
      x2: labelWidth + axisWidth,
      y1: mm(base),
      y2: mm(base),
      ...stroke,
      strokeOpacity: 0.3,
    }),
    s('line', {
      x1: meanX,
      x2: meanX,
      y1: mm(top + 1),
      y2: mm(base + dotPitch / 2),
      ...stroke,
      strokeWidth: 0.5,
    }),
    ...dots.map(({x, level}) =>
      s('circle', {
        cx: mm(x),
        cy: mm(base - level * dotPitch),
        r: dotRadius,
        fill: row.isHollow ? 'white' : 'currentColor',
        ...stroke,
      }),
    ),
    s('text', {x: labelWidth + axisWidth + 2, y: mm(base + textSize / 3)}, `mean ${row.shownMean}`),
  ];
  return {content, height};
}

function drawAxis(axis: PlotScale, top: number, words: string): Element[] {
  const stroke = {stroke: 'currentColor', strokeWidth: 0.25};
  const middle = {textAnchor: 'middle'};
  return [
    s('line', {x1: labelWidth, x2: labelWidth + axisWidth, y1: mm(top), y2: mm(top), ...stroke}),
    ...axis.ticks.flatMap(({value, label}) => {
      const x = mm(xOf(value, axis));
      return [
        s('line', {x1: x, x2: x, y1: mm(top), y2: mm(top + 1), ...stroke}),
        s('text', {x, y: mm(top + 1.4 + textSize), ...middle}, label),
      ];
    }),
    s('text', {x: labelWidth + axisWidth / 2, y: mm(top + 2 + 2.3 * textSize), ...middle}, words),
  ];
}

/** What a reader who cannot see the drawing is told. */
function description<U extends CountUnit>(
  direction: GaugeDirection<U>,
  rows: readonly PlotRow[],
  scale: GaugeScale,
): string {
  const said = rows.map(
    ({label, shownValues, shownMean}) => `${label} ${englishList(shownValues)}, mean ${shownMean}`,
  );
  return `${direction.title} ${scale.words} as dots on one scale: ${said.join('; ')}.`;
}

function xOf(value: number, axis: PlotScale): number {
  return labelWidth + ((value - axis.from) / (axis.to - axis.from)) * axisWidth;
}

/** Hundredths of a millimetre are finer than any printer draws. */
function mm(length: number): number {
  return Number(length.toFixed(2));
}
