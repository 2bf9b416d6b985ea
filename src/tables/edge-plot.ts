import type {Element} from 'hast';
import {edgeEvenness} from '../knitting/edge-evenness.ts';
import {formatNumber, type UnitOrder} from '../knitting/format-quantity.ts';
import {millimetresIn} from '../knitting/length-unit.ts';
import type {Millimetres} from '../knitting/units.ts';
import {dotRadius, plotDot, plotDrawing, plotRow, plotStroke, xOnPlot} from './plot-frame.ts';
import {type PlotScale, plotScale} from './plot-scale.ts';

/** The side edges of one attempt; null where one was not measured. */
export interface MeasuredEdges {
  readonly label: string;
  readonly left: Millimetres | null;
  readonly right: Millimetres | null;
}

/** Millimetres of paper. */
const rowHeight = 5.6;

/** The finest steps of the scale are 2 mm and a tenth of an inch: a finer one would make slips look like faults. */
const scales = {
  metric: {unit: 'cm', words: 'centimetres', finestStep: 2},
  inch: {unit: 'in', words: 'inches', finestStep: 1},
} as const;

/**
 * One row for each attempt: a hollow dot for the left edge, a full one for the right, on one scale of lengths; the
 * stroke between them is what they differ by. At least one edge of each was measured.
 */
export function edgePlot(attempts: readonly MeasuredEdges[], order: UnitOrder): Element {
  const {unit, words, finestStep} = scales[order];
  const inUnit = (length: Millimetres) => length.dividedBy(millimetresIn[unit]).toNumber();
  const lengths = attempts.flatMap(({left, right}) => [left, right].flatMap((edge) => edge ?? []));
  const axis = plotScale(lengths.map(inUnit), finestStep);
  const rows = attempts.flatMap((edges, index) => {
    const base = (index + 1) * rowHeight - 2;
    const at = (length: Millimetres | null) => (length ? xOnPlot(inUnit(length), axis) : null);
    const marks = edgeMarks(at(edges.left), at(edges.right), base);
    return plotRow(base, {label: edges.label, marks, words: apart(edges, order)});
  });
  return plotDrawing(rows, attempts.length * rowHeight, {
    axis,
    words: `left edge hollow, right edge full; ${words}`,
    description: describe(attempts, axis, order),
  });
}

/** The full dot lies below the hollow one where they meet, so that both are seen. */
function edgeMarks(left: number | null, right: number | null, base: number): Element[] {
  const stroke =
    left === null || right === null ? [] : [plotStroke({x1: left, y1: base, x2: right, y2: base}, 0.7)];
  const meets = left !== null && right !== null && Math.abs(left - right) < dotRadius;
  return [
    ...stroke,
    ...(right === null ? [] : [plotDot(right, base, false)]),
    ...(left === null ? [] : [plotDot(left, meets ? base - 2 * dotRadius : base, true)]),
  ];
}

/** `5 mm apart`, `0.20 in apart`; nothing where only one edge was measured. */
function apart({left, right}: MeasuredEdges, order: UnitOrder): string {
  if (!left || !right) return '';
  const difference = edgeEvenness(left, right).difference.absolute();
  const inches = difference.dividedBy(millimetresIn.in);
  return order === 'metric'
    ? `${formatNumber(difference, 0)}\u00a0mm apart`
    : `${formatNumber(inches, 2)}\u00a0in apart`;
}

/** What a reader who cannot see the drawing is told. */
function describe(attempts: readonly MeasuredEdges[], axis: PlotScale, order: UnitOrder): string {
  const {unit} = scales[order];
  const length = (edge: Millimetres | null) =>
    edge ? `${formatNumber(edge.dividedBy(millimetresIn[unit]), 1)}\u00a0${unit}` : 'not measured';
  const said = attempts.map((edges) => {
    const words = apart(edges, order);
    return `${edges.label}, left ${length(edges.left)}, right ${length(edges.right)}${words && `, ${words}`}`;
  });
  return `The left and the right edge of each attempt on a scale from ${axis.from} to ${axis.to}\u00a0${unit}: ${said.join('; ')}.`;
}
