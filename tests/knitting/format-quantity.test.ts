import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {
  formatAsWritten,
  formatExact,
  formatLength,
  formatLengthDifference,
  formatMeasured,
  formatMillimetres,
  formatNumber,
  formatPercent,
  formatPercentChange,
} from '../../src/knitting/format-quantity.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {parseLength} from '../../src/knitting/quantity.ts';
import {millimetres} from '../../src/knitting/units.ts';
import {anyFraction, lengthUnit, writtenNumber} from './arbitraries.ts';

/** No-break spaces are shown as `~`, as they cannot be told apart on a page of code. */
const visible = (text: string) => text.replaceAll('\u00a0', '~');
const tenths = (value: number) => Fraction.ofRatio(value, 10);

function length(text: string) {
  const result = parseLength(text);
  if (!result.ok) throw new Error(text);
  return result.value;
}

describe('numbers have exactly the decimals asked for and a true minus sign', () => {
  test.each([
    [Fraction.ofRatio(121, 6), 1, '20.2'],
    [Fraction.ofInteger(27), 1, '27.0'],
    [Fraction.ofRatio(-1, 2), 1, '−0.5'],
    [Fraction.ofRatio(-1, 100), 1, '0.0'],
    [Fraction.ofRatio(1, 3), 2, '0.33'],
    [Fraction.ofRatio(5, 2), 0, '3'],
    [Fraction.ofRatio(999, 1000), 2, '1.00'],
  ])('%o to %d decimals', (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text);
  });
});

describe('exact numbers', () => {
  test.each([
    [Fraction.ofInteger(20), '20'],
    [tenths(205), '20.5'],
    [Fraction.ofRatio(22, 3), '7⅓'],
    [Fraction.ofRatio(-1, 3), '−⅓'],
    [Fraction.zero, '0'],
  ])('%o', (value, text) => {
    expect(visible(formatExact(value))).toBe(text);
  });
});

describe('lengths in both units', () => {
  test.each([
    ['10.2 cm', '10.2~cm (4~in)', '4~in (10.2~cm)'],
    ['50 cm', '50.0~cm (19⅝~in)', '19⅝~in (50.0~cm)'],
    ['4 in', '10.2~cm (4~in)', '4~in (10.2~cm)'],
    ['1 mm', '0.1~cm (under 1⁄16~in)', 'under 1⁄16~in (0.1~cm)'],
    ['0 cm', '0.0~cm (0~in)', '0~in (0.0~cm)'],
  ])('%s', (text, metric, inch) => {
    expect(visible(formatLength(length(text).millimetres, 'metric'))).toBe(metric);
    expect(visible(formatLength(length(text).millimetres, 'inch'))).toBe(inch);
  });
});

describe('measured lengths keep what was written', () => {
  test.each([
    ['15 3/16 in', '38.6~cm (15~3⁄16~in)', '15~3⁄16~in (38.6~cm)'],
    ['10.25 cm', '10.25~cm (4~in)', '4~in (10.25~cm)'],
    ['102 mm', '102~mm (4~in)', '4~in (102~mm)'],
    ['1/2 yd', '45.7~cm (0.5~yd)', '0.5~yd (45.7~cm)'],
  ])('%s', (text, metric, inch) => {
    expect(visible(formatMeasured(length(text), 'metric'))).toBe(metric);
    expect(visible(formatMeasured(length(text), 'inch'))).toBe(inch);
  });
});

describe('differences and changes carry a sign', () => {
  test.each([
    [40, '+4.0~cm (+1⅝~in)'],
    [-8, '−0.8~cm (−⅜~in)'],
    [1, '+0.1~cm (under 1⁄16~in)'],
    [0, '0.0~cm (0~in)'],
  ])('%d mm', (difference, text) => {
    expect(visible(formatLengthDifference(millimetres(difference), 'metric'))).toBe(text);
  });

  test.each([
    [tenths(26), '+2.6~%'],
    [tenths(-25), '−2.5~%'],
    [Fraction.ofRatio(1, 100), '0.0~%'],
  ])('%o percent', (percent, text) => {
    expect(visible(formatPercentChange(percent))).toBe(text);
  });

  test('a share has none', () => {
    expect(visible(formatPercent(tenths(26)))).toBe('2.6~%');
    expect(visible(formatMillimetres(Fraction.ofRatio(9, 4)))).toBe('2.25~mm');
  });
});

test('a written length, shown as written and read again, is the same length', () => {
  fc.assert(
    fc.property(writtenNumber, lengthUnit, ({text}, unit) => {
      const written = length(`${text} ${unit}`);
      const read = length(formatAsWritten(written));
      expect(read.millimetres).toEqual(written.millimetres);
      expect(read.unit).toBe(unit);
    }),
  );
});

test('a shown length, read again, is at most half a millimetre, or a sixteenth of an inch, from the length', () => {
  fc.assert(
    fc.property(fc.integer({min: 160, max: 1_000_000}), (hundredths) => {
      const exact = millimetres(Fraction.ofRatio(hundredths, 100));
      const [metric = '', inch = ''] = formatLength(exact, 'metric').replace(')', '').split(' (');
      const away = (text: string) => length(text).millimetres.minus(exact).absolute();
      expect(away(metric).compare(Fraction.ofRatio(1, 2))).toBeLessThanOrEqual(0);
      expect(away(inch).compare(Fraction.ofRatio(254, 160))).toBeLessThanOrEqual(0);
    }),
  );
});

test('a number shown with decimals differs by at most half a unit of the last', () => {
  fc.assert(
    fc.property(anyFraction, fc.nat({max: 4}), (value, decimals) => {
      const shown = formatNumber(value, decimals).replace('−', '-');
      const digits = BigInt(shown.replace('.', ''));
      const scale = 10n ** BigInt(decimals);
      const away = new Fraction(digits, scale).minus(value).absolute();
      expect(away.compare(new Fraction(1n, 2n * scale))).toBeLessThanOrEqual(0);
    }),
  );
});
