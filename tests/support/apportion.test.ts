import fc from 'fast-check';
import {expect, test} from 'vitest';
import {apportion} from '../../src/support/apportion.ts';

// By hand: 4.7, 1.6, 1.5, 1.2 and 1 units; after the whole ones, the two left over go to the remainders .7 and .6.
test.each([
  [[47, 16, 15, 12, 10], 10, [5, 2, 1, 1, 1]],
  [[16, 2], 20, [18, 2]],
  [[0, 5, 0], 20, [0, 20, 0]],
  [[999, 1], 20, [19, 1]],
  [[1, 1, 1], 2, [1, 1, 1]],
  [[0, 0], 20, [0, 0]],
  [[], 20, []],
])('%j in %i', (weights, whole, shares) => {
  expect(apportion(weights, whole)).toEqual(shares);
});

test('all units are given out, what weighs something gets one, and no share is more than one unit off unless that one came from it', () => {
  const weights = fc.array(fc.integer({min: 0, max: 60}), {minLength: 1, maxLength: 7});
  fc.assert(
    fc.property(weights, (list) => {
      fc.pre(list.some((weight) => weight > 0));
      const whole = 20;
      const shares = apportion(list, whole);
      const total = list.reduce((sum, weight) => sum + weight, 0);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(whole);
      shares.forEach((share, index) => {
        const weight = list[index] ?? 0;
        expect(share > 0).toBe(weight > 0);
        expect(share).toBeLessThan((weight * whole) / total + 1 + Number(share === 1));
      });
    }),
  );
});
