import type {Element} from 'hast';
import {s} from 'hastscript';
import type {PlotScale} from './plot-scale.ts';

/** All measures in millimetres of paper: a label, the axis, and words behind it. */
export const plotFrame = {
  labelWidth: 24,
  axisWidth: 38,
  wordsWidth: 16,
  axisHeight: 9,
  textSize: 2.6,
} as const;
export const dotRadius = 0.9;

const {labelWidth, axisWidth, wordsWidth, axisHeight, textSize} = plotFrame;
const thin = {stroke: 'currentColor', strokeWidth: 0.25};

/** The drawing around rows of dots that end `top` mm below its upper edge, with their axis below. Drawn with the text colour only. */
export function plotDrawing(
  rows: readonly Element[],
  top: number,
  {
    axis,
    words,
    description,
  }: {readonly axis: PlotScale; readonly words: string; readonly description: string},
): Element {
  const width = labelWidth + axisWidth + wordsWidth;
  const height = mm(top + axisHeight);
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      className: ['dots'],
      role: 'img',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      fontSize: textSize,
      fill: 'currentColor',
    },
    [s('title', description), ...rows, ...drawAxis(axis, top, words)],
  );
}

/** A row: the line that its marks stand on, its label before it and words behind it. */
export function plotRow(
  base: number,
  {label, marks, words}: {readonly label: string; readonly marks: readonly Element[]; readonly words: string},
): Element[] {
  const y = mm(base);
  const baseline = mm(base + textSize / 3);
  return [
    s('text', {x: 0, y: baseline}, label),
    s('line', {x1: labelWidth, x2: labelWidth + axisWidth, y1: y, y2: y, ...thin, strokeOpacity: 0.3}),
    ...marks,
    s('text', {x: labelWidth + axisWidth + 2, y: baseline}, words),
  ];
}

export function plotDot(x: number, y: number, isHollow: boolean): Element {
  const fill = isHollow ? 'white' : 'currentColor';
  return s('circle', {cx: mm(x), cy: mm(y), r: dotRadius, fill, ...thin});
}

export function plotStroke(
  {x1, y1, x2, y2}: {readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number},
  strokeWidth: number,
): Element {
  return s('line', {x1: mm(x1), x2: mm(x2), y1: mm(y1), y2: mm(y2), ...thin, strokeWidth});
}

export function xOnPlot(value: number, axis: PlotScale): number {
  return labelWidth + ((value - axis.from) / (axis.to - axis.from)) * axisWidth;
}

function drawAxis(axis: PlotScale, top: number, words: string): Element[] {
  const middle = {textAnchor: 'middle'};
  return [
    s('line', {x1: labelWidth, x2: labelWidth + axisWidth, y1: mm(top), y2: mm(top), ...thin}),
    ...axis.ticks.flatMap(({value, label}) => {
      const x = mm(xOnPlot(value, axis));
      return [
        s('line', {x1: x, x2: x, y1: mm(top), y2: mm(top + 1), ...thin}),
        s('text', {x, y: mm(top + 1.4 + textSize), ...middle}, label),
      ];
    }),
    s('text', {x: labelWidth + axisWidth / 2, y: mm(top + 2 + 2.3 * textSize), ...middle}, words),
  ];
}

/** Hundredths of a millimetre are finer than any printer draws. */
function mm(length: number): number {
  return Number(length.toFixed(2));
}
