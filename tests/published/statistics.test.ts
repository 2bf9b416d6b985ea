import fc from 'fast-check';
// A general-purpose statistics library, https://simple-statistics.github.io
import {extent, mean} from 'simple-statistics';
import {describe, expect, test} from 'vitest';
import type {Fraction} from '../../src/knitting/fraction.ts';
import {countOver, summarizeGauge} from '../../src/knitting/gauge.ts';
import {parseGaugeCount} from '../../src/knitting/quantity.ts';
import {millimetres} from '../../src/knitting/units.ts';

const overTenCentimetres = (gauge: Fraction) => countOver(gauge, millimetres(100)).toNumber();

function summaryOf(counts: readonly number[]) {
  return summarizeGauge<'stitches'>(
    counts.map((count) => {
      const result = parseGaugeCount(`${count} over 10 cm`);
      if (!result.ok) throw new Error(`${count}`);
      return result.value;
    }),
  );
}

describe('mean, lowest, highest and spread are those of simple-statistics', () => {
  // Quarter stitches and their sums are exact in a double, so both means are the one nearest double.
  const quarters = fc.integer({min: 1, max: 400}).map((count) => count / 4);

  test('for counts in quarter stitches at up to twenty places', () => {
    fc.assert(
      fc.property(fc.array(quarters, {minLength: 1, maxLength: 20}), (counts) => {
        const summary = summaryOf(counts);
        const [lowest, highest] = extent(counts);
        expect(overTenCentimetres(summary.lowest)).toBe(lowest);
        expect(overTenCentimetres(summary.highest)).toBe(highest);
        expect(overTenCentimetres(summary.spread)).toBe(highest - lowest);
        expect(overTenCentimetres(summary.mean)).toBe(mean(counts));
        expect(summary.spreadPercent.toNumber()).toBeCloseTo((100 * (highest - lowest)) / mean(counts), 10);
      }),
    );
  });
});
