import {expect, test} from 'vitest';
import {longDate} from '../../src/support/long-date.ts';

test.each([
  ['2026-06-22', 'en-GB', '22 June 2026'],
  ['2026-06-22', 'en-US', 'June 22, 2026'],
  ['2025-03-01', 'en-GB', '1 March 2025'],
  ['2025-12-31', 'en-US', 'December 31, 2025'],
  ['spring 2025', 'en-GB', 'spring 2025'],
  ['2025-13-01', 'en-GB', '2025-13-01'],
] as const)('%s in %s is %s', (date, language, shown) => {
  expect(longDate(date, language)).toBe(shown);
});
