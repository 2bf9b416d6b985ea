import fc from 'fast-check';
import {median as publishedMedian, quantile} from 'simple-statistics';
import {describe, expect, test} from 'vitest';
import {median, quartiles} from '../../src/dev/bench-median.ts';

const times = fc.array(fc.double({min: 0, max: 1e6, noNaN: true}), {minLength: 1, maxLength: 30});

describe('the median', () => {
  test.each([
    [[3], 3],
    [[3, 1, 2], 2],
    [[4, 1, 3, 2], 2.5],
    [[100, 1, 1, 1, 1, 1, 100], 1],
  ])('of %j is %d', (values, expected) => {
    expect(median(values)).toBe(expected);
  });

  test('is that of simple-statistics, and the order of the measurements does not matter', () => {
    fc.assert(
      fc.property(times, (values) => {
        expect(median(values)).toBeCloseTo(publishedMedian(values), 6);
        expect(median(values.toReversed())).toBe(median(values));
      }),
    );
  });

  test('of nothing is no number, so that a row without measurements cannot pass for fast', () => {
    expect(median([])).toBeNaN();
  });
});

describe('the quartiles', () => {
  // R's `quantile(c(1, 2, 3, 4, 10))`, whose standard is the same definition 7.
  test('of 1, 2, 3, 4 and 10 are 2 and 4', () => {
    expect(quartiles([10, 1, 3, 2, 4])).toEqual([2, 4]);
  });

  test('of 1, 2, 3 and 4 lie between the values: 1.75 and 3.25', () => {
    expect(quartiles([1, 2, 3, 4])).toEqual([1.75, 3.25]);
  });

  test('agree with simple-statistics where both definitions meet, at five values', () => {
    const five = [5.5, 2.25, 9, 1, 3];
    expect(quartiles(five)).toEqual([quantile(five, 0.25), quantile(five, 0.75)]);
  });

  test('of two measurements say nothing', () => {
    expect(quartiles([1, 2])).toBeNull();
  });
});
