import {expect, test} from 'vitest';
import {pageRanges} from '../../src/references/page-numbers.ts';

// Shortened ends as The Chicago Manual of Style, 17th ed., 9.61, gives them: 71–72, 3–10, 107–8, 321–28, 1496–500,
// 12991–3001.
test.each([
  ['57', [[57, 57]]],
  ['71–72', [[71, 72]]],
  ['3–10', [[3, 10]]],
  ['107–8', [[107, 108]]],
  ['321–28', [[321, 328]]],
  ['1496–500', [[1496, 1500]]],
  ['12991–3001', [[12991, 13001]]],
  [
    '57, 60-62; 70 & 72ff.',
    [
      [57, 57],
      [60, 62],
      [70, 70],
      [72, 72],
    ],
  ],
  ['xii, A3, 5', [[5, 5]]],
  ['', []],
])('%s', (text, ranges) => {
  expect(pageRanges(text).map(({from, to}) => [from, to])).toEqual(ranges);
});
