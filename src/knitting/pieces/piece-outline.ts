import {Fraction} from '../fraction.ts';
import {squareRootToThousandths} from '../rounding.ts';
import {type Gauge, type Millimetres, millimetres} from '../units.ts';
import type {Panel, Point, Stretch} from './worked-piece.ts';

export interface PieceGauges {
  readonly stitches: Gauge<'stitches'>;
  readonly rows: Gauge<'rows'>;
}

/** A point in millimetres: to the right of the middle, and up from the foot. */
export interface PlacedPoint {
  readonly x: Millimetres;
  readonly y: Millimetres;
}

/**
 * The outline of a panel, anticlockwise from the lower left, in half stitches and rows. Each edge is straight from the
 * start of a step to its end; stitches bound off at once make a level edge. Parts stand on what was divided.
 */
export function outlineOf({base, parts}: Panel): readonly Point[] {
  const points = [
    ...base.right,
    ...parts.flatMap(({left, right}) => [...right, ...left.toReversed()]),
    ...base.left.toReversed(),
  ];
  return points.filter((point, index) => !isSame(point, points.at(index - 1)));
}

/** Half a stitch is half of 1 ÷ gauge wide; laid flat, a tube is half as wide as it is round. */
export function placePoint(
  {x, row}: Point,
  {stitches, rows}: PieceGauges,
  {isRound, stretches}: Pick<Panel, 'isRound' | 'stretches'>,
): PlacedPoint {
  const halves = Fraction.ofInteger(isRound ? 4 : 2);
  return {
    x: millimetres(Fraction.ofInteger(x).dividedBy(halves).dividedBy(stitches)),
    y: heightOf(row, stretches, rows),
  };
}

export function placeOutline(panel: Panel, gauges: PieceGauges): readonly PlacedPoint[] {
  return outlineOf(panel).map((point) => placePoint(point, gauges, panel));
}

/** The height of so many rows: rows ÷ gauge, those of a stretch by its stated length. */
export function heightOf(count: number, stretches: readonly Stretch[], gauge: Gauge<'rows'>): Millimetres {
  const stated = stretches.map(({from, to, length}) => {
    const within = Math.max(0, Math.min(count, to) - from);
    return {within, length: to > from ? length.times(Fraction.ofRatio(within, to - from)) : Fraction.zero};
  });
  const rest = count - stated.reduce((sum, {within}) => sum + within, 0);
  const lengths = stated.reduce((sum, {length}) => sum.plus(length), Fraction.zero);
  return millimetres(lengths.plus(Fraction.ofInteger(rest).dividedBy(gauge)));
}

/**
 * Square millimetres inside an outline: half the sum of x₁ × y₂ − x₂ × y₁ over its sides, the area formula of surveyors
 * (A. L. F. Meister, 1769; C. F. Gauss). Above zero for an outline that goes anticlockwise.
 */
export function areaInside(points: readonly PlacedPoint[]): Fraction {
  const twice = points.reduce((sum, point, index) => {
    const next = points[(index + 1) % points.length] ?? point;
    return sum.plus(point.x.times(next.y)).minus(next.x.times(point.y));
  }, Fraction.zero);
  return twice.dividedBy(Fraction.ofInteger(2));
}

/** Length along the points, each side cut to a thousandth of a millimetre (Pythagoras). */
export function lengthAlong(points: readonly PlacedPoint[]): Millimetres {
  const sum = points.slice(1).reduce<Fraction>((total, point, index) => {
    const before = points[index] ?? point;
    const [across, up] = [point.x.minus(before.x), point.y.minus(before.y)];
    return total.plus(squareRootToThousandths(across.times(across).plus(up.times(up))));
  }, Fraction.zero);
  return millimetres(sum);
}

function isSame(one: Point, other: Point | undefined): boolean {
  return other !== undefined && one.x === other.x && one.row === other.row;
}
