import {polygonArea} from 'd3-polygon';
import fc from 'fast-check';
import Outside from 'fraction.js';
import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {areaInside, placeOutline} from '../../src/knitting/pieces/piece-outline.ts';
import {gauges, samplePieces, work} from '../knitting/pieces/sample-pieces.ts';

// fraction.js 5, a general-purpose library of exact fractions.
describe('fractions agree with fraction.js', () => {
  const whole = fc.integer({min: -1_000_000, max: 1_000_000});
  const pair = fc.tuple(
    whole,
    whole.filter((value) => value !== 0),
  );

  test.each([
    ['plus', 'add'],
    ['minus', 'sub'],
    ['times', 'mul'],
    ['dividedBy', 'div'],
  ] as const)('%s is %s', (ours, theirs) => {
    fc.assert(
      fc.property(pair, pair, ([a, b], [c, d]) => {
        fc.pre(ours !== 'dividedBy' || c !== 0);
        const result = Fraction.ofRatio(a, b)[ours](Fraction.ofRatio(c, d));
        const expected = new Outside(a, b)[theirs](new Outside(c, d));
        expect(`${result.numerator}/${result.denominator}`).toBe(`${expected.s * expected.n}/${expected.d}`);
      }),
    );
  });

  test('the order is the same', () => {
    fc.assert(
      fc.property(pair, pair, ([a, b], [c, d]) => {
        expect(Fraction.ofRatio(a, b).compare(Fraction.ofRatio(c, d))).toBe(
          new Outside(a, b).compare(new Outside(c, d)),
        );
      }),
    );
  });
});

// d3-polygon 3, a general-purpose library of plane geometry; its area is signed by the direction of the outline.
describe('areas of schematics agree with d3-polygon', () => {
  test.each(Object.entries(samplePieces))('%s', (_, text) => {
    const {worked, problems} = work(text);
    expect(problems).toEqual([]);
    expect(worked.panels.length).toBeGreaterThan(0);
    for (const panel of worked.panels) {
      const points = placeOutline(panel, gauges);
      const corners = points.map(({x, y}): [number, number] => [x.toNumber(), y.toNumber()]);
      // Ours is exact; theirs adds doubles, so the last digits may differ.
      expect(areaInside(points).toNumber()).toBeCloseTo(Math.abs(polygonArea(corners)), 6);
    }
  });
});
