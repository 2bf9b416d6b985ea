import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {changeOfGauge, changeOfLength} from '../../src/knitting/blocking-change.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {gaugeOf, lengthOf} from '../../src/knitting/gauge.ts';
import {millimetres, stitches} from '../../src/knitting/units.ts';
import {gaugeCount, positiveFraction} from './arbitraries.ts';

const one = Fraction.one;
const asFactor = (percent: Fraction) => one.plus(percent.dividedBy(Fraction.ofInteger(100)));

// ISO 3759 and ISO 5077: dimensional change in percent = 100 × (after − before) ÷ before; shrinkage is below zero.
describe('the change of a length on blocking', () => {
  test.each([
    [100, 97, Fraction.ofRatio(-3, 1)],
    [100, 105, Fraction.ofRatio(5, 1)],
    [350, 336, Fraction.ofRatio(-4, 1)],
    [300, 300, Fraction.ofRatio(0, 1)],
    [104, 106, Fraction.ofRatio(25, 13)],
  ])('%d mm that become %d mm', (before, after, percent) => {
    expect(changeOfLength(millimetres(before), millimetres(after))).toEqual(percent);
  });
});

test('what did not change changed by nothing', () => {
  fc.assert(
    fc.property(positiveFraction, (length) => {
      expect(changeOfLength(millimetres(length), millimetres(length))).toEqual(Fraction.zero);
    }),
  );
});

test('two changes, one after the other, multiply as factors', () => {
  fc.assert(
    fc.property(positiveFraction, positiveFraction, positiveFraction, (a, b, c) => {
      const [first, second, third] = [millimetres(a), millimetres(b), millimetres(c)];
      const steps = asFactor(changeOfLength(first, second)).times(asFactor(changeOfLength(second, third)));
      expect(steps).toEqual(asFactor(changeOfLength(first, third)));
    }),
  );
});

test('the unit does not matter', () => {
  fc.assert(
    fc.property(positiveFraction, positiveFraction, positiveFraction, (before, after, factor) => {
      const scaled = changeOfLength(millimetres(before.times(factor)), millimetres(after.times(factor)));
      expect(scaled).toEqual(changeOfLength(millimetres(before), millimetres(after)));
    }),
  );
});

test('a gauge and the width of the same stitches change by factors that cancel', () => {
  fc.assert(
    fc.property(gaugeCount, gaugeCount, (a, b) => {
      const [before, after] = [gaugeOf<'stitches'>(a), gaugeOf<'stitches'>(b)];
      const width = changeOfLength(lengthOf(stitches(100), before), lengthOf(stitches(100), after));
      expect(asFactor(changeOfGauge(before, after)).times(asFactor(width))).toEqual(one);
    }),
  );
});
