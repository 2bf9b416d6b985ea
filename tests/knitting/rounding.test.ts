import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {
  nearestDecimalHalfAwayFromZero,
  nearestEighthHalfAwayFromZero,
  nearestMultipleHalfAwayFromZero,
} from '../../src/knitting/rounding.ts';
import {anyFraction, positiveFraction} from './arbitraries.ts';

describe('rounded to one decimal, halves away from zero', () => {
  test.each([
    [225, 23],
    [-225, -23],
    [224, 22],
    [-224, -22],
    [5, 1],
    [-5, -1],
    [4, 0],
    [-4, 0],
    [0, 0],
  ])('%d hundredths are %d tenths', (hundredths, tenths) => {
    const rounded = nearestDecimalHalfAwayFromZero(Fraction.ofRatio(hundredths, 100), 1);
    expect(rounded).toEqual(Fraction.ofRatio(tenths, 10));
  });
});

describe('rounded to the nearest eighth, halves away from zero', () => {
  test.each([
    [1, 0, 'a thirty-second is nearer to nothing'],
    [2, 1, 'a sixteenth is half-way'],
    [-2, -1, 'half-way below zero'],
    [5, 1, ''],
    [6, 2, 'half-way'],
  ])('%d thirty-seconds are %d eighths %s', (thirtySeconds, eighths) => {
    const rounded = nearestEighthHalfAwayFromZero(Fraction.ofRatio(thirtySeconds, 32));
    expect(rounded).toEqual(Fraction.ofRatio(eighths, 8));
  });
});

test('the rounded value is a multiple of the step, at most half a step away, and rounding again changes nothing', () => {
  fc.assert(
    fc.property(anyFraction, positiveFraction, (value, step) => {
      const rounded = nearestMultipleHalfAwayFromZero(value, step);
      expect(rounded.dividedBy(step).isWhole()).toBe(true);
      const twiceAway = rounded.minus(value).absolute().times(Fraction.ofInteger(2));
      expect(twiceAway.compare(step)).toBeLessThanOrEqual(0);
      expect(nearestMultipleHalfAwayFromZero(rounded, step)).toEqual(rounded);
    }),
  );
});

test('rounding the opposite gives the opposite', () => {
  fc.assert(
    fc.property(anyFraction, positiveFraction, (value, step) => {
      const opposite = nearestMultipleHalfAwayFromZero(Fraction.zero.minus(value), step);
      expect(opposite).toEqual(Fraction.zero.minus(nearestMultipleHalfAwayFromZero(value, step)));
    }),
  );
});
