import {expect, test} from 'vitest';
import {edgeEvenness} from '../../src/knitting/edge-evenness.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {millimetres} from '../../src/knitting/units.ts';

// By hand: 138 − 143 = −5; their mean is 140.5, and 500 ÷ 140.5 = 1000 ÷ 281.
test.each([
  [138, 143, -5, Fraction.ofRatio(1000, 281)],
  [143, 138, 5, Fraction.ofRatio(1000, 281)],
  [100, 100, 0, Fraction.zero],
  [0, 10, -10, Fraction.ofInteger(200)],
  [0, 0, 0, null],
])('left %i mm, right %i mm', (left, right, difference, percent) => {
  const evenness = edgeEvenness(millimetres(left), millimetres(right));
  expect(evenness.difference.toNumber()).toBe(difference);
  expect(evenness.percent?.toString() ?? null).toBe(percent?.toString() ?? null);
});
