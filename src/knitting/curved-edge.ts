import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted, mostPlaces} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {nearestWholeHalfUp, squareRootNotAbove} from './rounding.ts';
import type {Rows, Stitches} from './units.ts';

/** `neckline`: a quarter of an ellipse, flat at its foot and upright at its head. `raglan`: a bow that is steepest at its foot. */
export type CurveShape = 'neckline' | 'raglan';

/** What one edge loses on one row; `row` counts from 1 at the foot of the curve. */
export interface CurveStep {
  readonly row: number;
  readonly stitches: number;
}

export interface CurvedEdge {
  /** Only rows on which something is worked. */
  readonly steps: readonly CurveStep[];
  /** How many rows lie between one chance to shape and the next: an edge is bound off at the beginning of every other row. */
  readonly every: 2;
}

/**
 * A curve of one edge as steps on every second row: after each step the stitches gone are the curve's own, rounded half
 * up, so that the edge is never more than half a stitch off the curve on a shaping row.
 *
 * `neckline`: width × √(1 − (1 − t)²), the equation of the ellipse, t being the part of the height worked. `raglan`:
 * width × ((1 − b) × t + b × (2t − t²)) with b = 1/4, a straight line bowed a quarter of the way to a parabola: common
 * practice, no source for the quarter.
 */
export function curvedEdge(shape: CurveShape, width: Stitches, height: Rows): Result<CurvedEdge> {
  const chances = Math.floor(height / 2);
  if (width === 0 || chances === 0) {
    return cannotWork(
      `a curve of \`${width}\` stitches over \`${height}\` rows cannot be shaped`,
      'Write at least 1 stitch and 2 rows.',
    );
  }
  if (width > mostCounted || chances > mostPlaces) {
    return cannotWork(
      `a curve of \`${width}\` stitches over \`${height}\` rows is more than a piece of knitting has`,
      `Write up to ${mostCounted} stitches and ${2 * mostPlaces} rows.`,
    );
  }
  const gone = (step: number) => (shape === 'neckline' ? onEllipse : onBow)(width, step, chances);
  const steps = Array.from({length: chances}, (_, index) => ({
    row: 2 * index + 1,
    stitches: gone(index + 1) - gone(index),
  }));
  return success({steps: steps.filter(({stitches}) => stitches > 0), every: 2});
}

/**
 * Nearest whole number to width × √(step × (2 × chances − step)) ÷ chances, half up, without leaving whole numbers: k is
 * right when (2k − 1) × chances is not above the root of 4 × width² × step × (2 × chances − step).
 */
function onEllipse(width: number, step: number, chances: number): number {
  const [w, s, c] = [BigInt(width), BigInt(step), BigInt(chances)];
  const doubled = squareRootNotAbove(4n * w * w * s * (2n * c - s)) / c;
  return Number((doubled + 1n) / 2n);
}

function onBow(width: number, step: number, chances: number): number {
  const worked = Fraction.ofRatio(step, chances);
  const parabola = worked.times(Fraction.ofInteger(2).minus(worked));
  const bowed = worked.times(threeQuarters).plus(parabola.times(quarter));
  return nearestWholeHalfUp(bowed.times(Fraction.ofInteger(width)));
}

const quarter = new Fraction(1n, 4n);
const threeQuarters = new Fraction(3n, 4n);
