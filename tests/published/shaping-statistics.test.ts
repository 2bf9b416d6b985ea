import fc from 'fast-check';
// A general-purpose statistics library, https://simple-statistics.github.io
import {max, mean, min, quantileSorted} from 'simple-statistics';
import {expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {summarizeGauge} from '../../src/knitting/gauge.ts';
import {parseGaugeCount} from '../../src/knitting/quantity.ts';
import {sharesOf, sharesWithHalfEnds} from '../../src/knitting/share-evenly.ts';
import {spreadOver} from '../../src/knitting/uncertainty.ts';

test('the spread of a width is the least and the greatest width over all places counted, and its mean that of the mean gauge', () => {
  const quarters = fc.array(fc.integer({min: 40, max: 200}), {minLength: 1, maxLength: 12});
  fc.assert(
    fc.property(quarters, fc.integer({min: 1, max: 400}), (counts, many) => {
      const gauge = summarizeGauge<'stitches'>(
        counts.map((count) => {
          const result = parseGaugeCount(`${count}/4 over 10 cm`);
          if (!result.ok) throw new Error(`${count}`);
          return result.value;
        }),
      );
      const spread = spreadOver(gauge, (at) => Fraction.ofInteger(many).dividedBy(at));
      const widths = counts.map((count) => (many * 400) / count);
      expect(spread.least.toNumber()).toBeCloseTo(min(widths), 9);
      expect(spread.most.toNumber()).toBeCloseTo(max(widths), 9);
      expect(spread.mean.toNumber()).toBeCloseTo((many * 400) / mean(counts), 9);
    }),
  );
});

test('spread places lie within one stitch of the exact even positions', () => {
  fc.assert(
    fc.property(fc.integer({min: 1, max: 999}), fc.integer({min: 1, max: 60}), (total, places) => {
      const positions = (spaces: readonly number[]) =>
        spaces.map((_, index) => spaces.slice(0, index + 1).reduce((a, b) => a + b, 0));
      for (const [index, position] of positions(sharesOf(total, places)).entries()) {
        expect(Math.abs(position - (total * (index + 1)) / places)).toBeLessThan(1);
      }
      const halfEnds = positions(sharesWithHalfEnds(total, places)).slice(0, -1);
      for (const [index, position] of halfEnds.entries()) {
        expect(Math.abs(position - (total * (2 * index + 1)) / (2 * places))).toBeLessThan(1);
      }
      // The median place lies at the middle of the row, to a stitch.
      expect(Math.abs(quantileSorted(halfEnds, 0.5) - total / 2)).toBeLessThan(1);
    }),
  );
});
