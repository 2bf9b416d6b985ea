import type {Face, Strand} from '../knitting/rows/face.ts';
import type {Box} from './chart-box.ts';
import type {Mark} from './chart-mark.ts';
import {closed, type Point, stroke} from './chart-path.ts';

export type Crossing = Extract<Face, {shape: 'crossing'}>;

/** A strand of a crossing with the squares, counted from the left, that it fills below and above. */
export interface PlacedStrand {
  readonly strand: Strand;
  readonly bottom: number;
  readonly top: number;
  readonly isFront: boolean;
}

/** The outer strands change places, the middle one stays. The strand on top comes last. */
export function placedStrands({strands, front}: Crossing): PlacedStrand[] {
  const tops = startsOf(strands);
  const bottoms = startsOf(strands.toReversed()).reverse();
  return strands
    .map((strand, index) => ({
      strand,
      top: tops[index] ?? 0,
      bottom: bottoms[index] ?? 0,
      isFront: index === front,
    }))
    .sort((a, b) => Number(a.isFront) - Number(b.isFront));
}

/** Bands that cross; a strand that shows its purl side is a bar at either end of its way. */
export function crossingMark(face: Crossing, box: Box): Mark {
  const width = box.width / face.strands.reduce((sum, {stitches}) => sum + stitches, 0);
  const [low, high] = [box.y + box.height * 0.94, box.y + box.height * 0.06];
  let [lines, over] = ['', ''];
  for (const {strand, bottom, top, isFront} of placedStrands(face)) {
    const inset = 0.12 * width;
    const at = (square: number, y: number): Point => [box.x + square * width, y];
    const [leftFoot, rightFoot] = [at(bottom, low), at(bottom + strand.stitches, low)];
    const [leftHead, rightHead] = [at(top, high), at(top + strand.stitches, high)];
    if (isFront) {
      over += closed(
        shift(leftFoot, inset),
        shift(leftHead, inset),
        shift(rightHead, -inset),
        shift(rightFoot, -inset),
      );
    } else if (strand.surface === 'knit') {
      lines +=
        stroke(shift(leftFoot, inset), shift(leftHead, inset)) +
        stroke(shift(rightFoot, -inset), shift(rightHead, -inset));
    }
    if (strand.surface === 'purl') {
      for (const [square, down] of [
        [top, 0.2],
        [bottom, 0.8],
      ] as const) {
        const [x, y] = at(square + strand.stitches / 2, box.y + down * box.height);
        lines += stroke([x - 0.2 * width, y], [x + 0.2 * width, y]);
      }
    }
  }
  return {lines, over, solid: ''};
}

function shift([x, y]: Point, by: number): Point {
  return [x + by, y];
}

function startsOf(strands: readonly Strand[]): number[] {
  let at = 0;
  return strands.map(({stitches}) => {
    at += stitches;
    return at - stitches;
  });
}
