import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {areaInside, lengthAlong, placeOutline} from '../../src/knitting/pieces/piece-outline.ts';
import {readPiece} from '../../src/knitting/pieces/read-piece.ts';
import {workPiece} from '../../src/knitting/pieces/work-piece.ts';
import {millimetres, perMillimetre} from '../../src/knitting/units.ts';

/** At this gauge half a stitch and a row are 1 mm each, so that outlines are lattice polygons. */
const gauges = {
  stitches: perMillimetre<'stitches'>(Fraction.ofRatio(1, 2)),
  rows: perMillimetre<'rows'>(Fraction.one),
};

type Corner = readonly [x: number, y: number];

function outline(text: string): readonly Corner[] {
  const panel = workPiece(readPiece(text).piece, gauges.rows).panels[0];
  return panel ? placeOutline(panel, gauges).map(({x, y}) => [x.toNumber(), y.toNumber()]) : [];
}

function area(corners: readonly Corner[]): number {
  const points = corners.map(([x, y]) => ({x: millimetres(x), y: millimetres(y)}));
  return areaInside(points).toNumber();
}

describe('areas by the school formulas of Euclid', () => {
  test.each([
    [
      'a square of 10 mm',
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
      100,
    ],
    [
      'a triangle of 3, 4 and 5 mm',
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
      6,
    ],
    [
      'a trapezium of 10 and 4 mm, 6 mm high',
      [
        [0, 0],
        [10, 0],
        [7, 6],
        [3, 6],
      ],
      42,
    ],
    [
      'an L of two rectangles, 8 × 2 and 2 × 5 mm',
      [
        [0, 0],
        [8, 0],
        [8, 2],
        [2, 2],
        [2, 7],
        [0, 7],
      ],
      26,
    ],
  ] as const)('%s', (_name, corners, expected) => {
    expect(area(corners)).toBe(expected);
    expect(area(corners.toReversed())).toBe(-expected);
  });

  test('the long side of a triangle of 3 and 4 is 5 (Pythagoras)', () => {
    const points = [
      {x: millimetres(0), y: millimetres(3)},
      {x: millimetres(4), y: millimetres(0)},
    ];
    expect(lengthAlong(points).toNumber()).toBe(5);
  });
});

/** G. Pick, "Geometrisches zur Zahlenlehre", Prague 1899: the area is the points inside, and half those on the edge, less one. */
function byPick(corners: readonly Corner[]): number {
  const sides = corners.map((from, index) => [from, corners[(index + 1) % corners.length] ?? from] as const);
  const onEdge = sides.reduce((sum, [[a, b], [c, d]]) => sum + divisor(Math.abs(a - c), Math.abs(b - d)), 0);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  let inside = 0;
  for (let x = Math.min(...xs); x <= Math.max(...xs); x++) {
    for (let y = Math.min(...ys); y <= Math.max(...ys); y++) {
      if (!sides.some((side) => isOn(side, x, y)) && isInside(sides, x, y)) inside += 1;
    }
  }
  return inside + onEdge / 2 - 1;
}

type Side = readonly [Corner, Corner];

function isOn([[a, b], [c, d]]: Side, x: number, y: number): boolean {
  const isBetween = x >= Math.min(a, c) && x <= Math.max(a, c) && y >= Math.min(b, d) && y <= Math.max(b, d);
  return isBetween && (c - a) * (y - b) === (d - b) * (x - a);
}

/** A ray to the right crosses the outline an odd number of times. */
function isInside(sides: readonly Side[], x: number, y: number): boolean {
  const crossed = sides.filter(
    ([[a, b], [c, d]]) => b > y !== d > y && x < a + ((y - b) / (d - b)) * (c - a),
  );
  return crossed.length % 2 === 1;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

describe('areas by Pick’s theorem', () => {
  test('a vest front with both its sides', () => {
    const corners = outline(
      [
        'cast on 20\nwork 10 rows\ndivide: 9 left, 2 on a holder, 9 right\neach side:',
        'at the armhole edge: bind off 2; decrease 1 every other row 2 times; work 2 rows',
        'at the neck edge: decrease 1 every other row 3 times; work 2 rows',
        'bind off',
      ].join('\n'),
    );
    // By hand: 40 × 10 below; each side from 18 to 14 at once, then 2 rows straight outside, 4 rows losing 4, and 2 rows
    // straight; the neck takes 6 over 6 rows. 2 × (14 × 8 − (4 × 4 ÷ 2 + 4 × 2) − (6 × 6 ÷ 2 + 6 × 2)) = 132.
    expect(area(corners)).toBe(532);
    expect(byPick(corners)).toBe(532);
  });

  test('any piece that narrows by steps has the area that counting points gives', () => {
    const small = fc.integer({min: 1, max: 3});
    const step = fc.oneof(
      fc.integer({min: 1, max: 6}).map((rows) => `work ${rows} rows`),
      fc
        .tuple(small, small)
        .map(([every, times]) => `decrease 1 at each edge every ${every}th row ${times} times`),
      fc
        .tuple(small, small)
        .map(([every, times]) => `increase 1 at right edge every ${every}th row ${times} times`),
      small.map((count) => `bind off ${count} at the beginning of the next 2 rows`),
      small.map((count) => `bind off in steps ${count}, ${count} at left edge`),
    );
    fc.assert(
      fc.property(fc.array(step, {minLength: 1, maxLength: 4}), (steps) => {
        const corners = outline(['cast on 40', 'work 1 row', ...steps, 'bind off'].join('\n'));
        expect(area(corners)).toBe(byPick(corners));
      }),
    );
  });
});
