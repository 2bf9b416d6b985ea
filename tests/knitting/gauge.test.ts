import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {countOver, gaugeOf, lengthOf, lengthOff, summarizeGauge} from '../../src/knitting/gauge.ts';
import {parseGaugeCount} from '../../src/knitting/quantity.ts';
import {millimetres, stitches} from '../../src/knitting/units.ts';
import {gaugeCount, gaugeCounts} from './arbitraries.ts';

const ratio = Fraction.ofRatio;
const tenCentimetres = millimetres(100);

function counts(...texts: readonly string[]) {
  return texts.map((text) => {
    const result = parseGaugeCount(text);
    if (!result.ok) throw new Error(text);
    return result.value;
  });
}

describe('counts over 10 cm: mean, lowest, highest, spread, spread in percent', () => {
  test.each([
    [['20 over 10 cm'], ratio(20, 1), ratio(20, 1), ratio(20, 1), ratio(0, 1), ratio(0, 1)],
    [
      ['20 over 10 cm', '20.5 over 10 cm', '20 over 10 cm'],
      ratio(121, 6),
      ratio(20, 1),
      ratio(41, 2),
      ratio(1, 2),
      ratio(300, 121),
    ],
    [['19 over 10 cm', '21 over 10 cm'], ratio(20, 1), ratio(19, 1), ratio(21, 1), ratio(2, 1), ratio(10, 1)],
    [['10 over 5 cm', '20 over 10 cm'], ratio(20, 1), ratio(20, 1), ratio(20, 1), ratio(0, 1), ratio(0, 1)],
  ])('%j', (texts, mean, lowest, highest, spread, percent) => {
    const summary = summarizeGauge<'stitches'>(counts(...texts));
    const over = (gauge: Fraction) => countOver(gauge, tenCentimetres);
    expect(over(summary.mean)).toEqual(mean);
    expect(over(summary.lowest)).toEqual(lowest);
    expect(over(summary.highest)).toEqual(highest);
    expect(over(summary.spread)).toEqual(spread);
    expect(summary.spreadPercent).toEqual(percent);
  });
});

test('4 in and 10 cm are never taken for the same length', () => {
  const [inches, centimetres] = counts('20 over 4 in', '20 over 10 cm');
  if (!inches || !centimetres) throw new Error('two counts were written');
  const ratio = gaugeOf<'stitches'>(centimetres).dividedBy(gaugeOf<'stitches'>(inches));
  expect(ratio).toEqual(Fraction.ofRatio(1016, 1000));
});

test('no counts at all are our bug', () => {
  expect(() => summarizeGauge([])).toThrow('at least one count');
});

test('the mean lies between the lowest and the highest count', () => {
  fc.assert(
    fc.property(gaugeCounts, (taken) => {
      const {lowest, mean, highest} = summarizeGauge(taken);
      expect(lowest.compare(mean)).toBeLessThanOrEqual(0);
      expect(mean.compare(highest)).toBeLessThanOrEqual(0);
    }),
  );
});

test('the order in which the places were counted does not matter', () => {
  fc.assert(
    fc.property(gaugeCounts, (taken) => {
      const {places: _, ...summary} = summarizeGauge(taken);
      expect(summarizeGauge(taken.toReversed())).toMatchObject(summary);
    }),
  );
});

test('the spread is zero exactly when all places agree', () => {
  fc.assert(
    fc.property(gaugeCounts, gaugeCount, (taken, one) => {
      const {spread, places} = summarizeGauge([...taken, one]);
      const agree = places.every((gauge) => places[0]?.equals(gauge));
      expect(spread.equals(Fraction.zero)).toBe(agree);
      expect(summarizeGauge([one, one, one]).spread).toEqual(Fraction.zero);
    }),
  );
});

test('the stitches that lie over a width make that width', () => {
  fc.assert(
    fc.property(fc.nat({max: 5000}), gaugeCount, (count, taken) => {
      const gauge = gaugeOf<'stitches'>(taken);
      expect(countOver(gauge, lengthOf(stitches(count), gauge))).toEqual(Fraction.ofInteger(count));
    }),
  );
});

test('knitted at the planned gauge nothing is off; at more stitches to the length the piece is too narrow', () => {
  fc.assert(
    fc.property(fc.integer({min: 1, max: 5000}), gaugeCount, gaugeCount, (count, a, b) => {
      const [planned, knitted] = [gaugeOf<'stitches'>(a), gaugeOf<'stitches'>(b)];
      const off = lengthOff(stitches(count), planned, knitted);
      expect(Math.sign(off.compare(Fraction.zero))).toBe(Math.sign(planned.compare(knitted)) + 0);
    }),
  );
});
