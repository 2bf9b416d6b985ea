import {expect, it} from 'vitest';
import {makeCrossing} from '../../../src/knitting/rows/crossings.ts';
import {seenFromBehind} from '../../../src/knitting/rows/face.ts';
import {faceFromRight, faceFromWrong, type Stitch} from '../../../src/knitting/rows/stitch.ts';
import {makeTogether} from '../../../src/knitting/rows/stitch-makers.ts';
import {knit, purl, s2kp, ssk, ssp, yarnOver} from '../../../src/knitting/rows/stitches.ts';
import {everyStitch} from './arbitrary-steps.ts';

const lean = (stitch: Stitch, side: 'RS' | 'WS') => {
  const face = faceFromRight(stitch, side);
  return face.shape === 'decrease' ? `${face.surface}, ${face.lean}` : face.shape;
};

// Common knowledge of the trade, tried with needles: what each decrease looks like on the right side.
it.each([
  ['k2tog', makeTogether('knit', 2, false), 'knit, right'],
  ['k2tog tbl', makeTogether('knit', 2, true), 'knit, left'],
  ['ssk', ssk, 'knit, left'],
  ['s2kp', s2kp, 'knit, centre'],
] as const)('%s worked on the right side', (_, stitch, seen) => {
  expect(lean(stitch, 'RS')).toBe(seen);
});

it.each([
  ['p2tog', makeTogether('purl', 2, false), 'knit, right'],
  ['p2tog tbl', makeTogether('purl', 2, true), 'knit, left'],
  ['ssp', ssp, 'knit, left'],
] as const)('%s worked on the wrong side', (_, stitch, seen) => {
  expect(lean(stitch, 'WS')).toBe(seen);
});

it('a knit stitch of a wrong-side row is a purl from the right side', () => {
  expect(faceFromRight(knit, 'WS')).toEqual(faceFromRight(purl, 'RS'));
  expect(faceFromWrong(knit, 'RS')).toEqual(faceFromWrong(purl, 'WS'));
  expect(faceFromRight(yarnOver, 'WS')).toEqual(faceFromRight(yarnOver, 'RS'));
});

it('a crossing keeps its direction from behind, its strands and their surfaces change places', () => {
  expect(makeCrossing([2, 1], 'left', true)?.face).toEqual({
    shape: 'crossing',
    strands: [
      {stitches: 2, surface: 'knit'},
      {stitches: 1, surface: 'purl'},
    ],
    front: 0,
  });
  const behind = makeCrossing([2, 1], 'left', true);
  expect(behind && seenFromBehind(behind.face)).toEqual({
    shape: 'crossing',
    strands: [
      {stitches: 1, surface: 'knit'},
      {stitches: 2, surface: 'purl'},
    ],
    front: 0,
  });
});

it.each([
  [2, 2, 'right', false, '2/2 RC', 'C4B'],
  [3, 3, 'left', false, '3/3 LC', 'C6F'],
  [2, 1, 'left', true, '2/1 LPC', 'T3F'],
  [3, 1, 'right', true, '3/1 RPC', 'Cr4B'],
] as const)('%i over %i to the %s', (over, under, direction, isPurled, american, british) => {
  const names = makeCrossing([over, under], direction, isPurled)?.names;
  expect([names?.american.abbreviation, names?.british.abbreviation]).toEqual([american, british]);
});

it.each(everyStitch.map((stitch) => [stitch.id, stitch] as const))(
  '%s seen twice from behind is itself',
  (_, stitch) => {
    expect(seenFromBehind(seenFromBehind(stitch.face))).toEqual(stitch.face);
    expect(stitch.names.british.words).not.toBe('');
  },
);
