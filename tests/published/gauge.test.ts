import {describe, expect, test} from 'vitest';
import {changeOfLength} from '../../src/knitting/blocking-change.ts';
import type {Fraction} from '../../src/knitting/fraction.ts';
import {countOver, gaugeOf, lengthOf, lengthOff} from '../../src/knitting/gauge.ts';
import {type GaugeCount, parseGaugeCount, parseLength} from '../../src/knitting/quantity.ts';
import {nearestDecimalHalfAwayFromZero} from '../../src/knitting/rounding.ts';
import {type Millimetres, millimetres, stitches} from '../../src/knitting/units.ts';
// Worked examples from books and blogs of the trade; each names its page in `source`.
import published from './data/shaping-gauge.json' with {type: 'json'};

const inch = length('1 in');

function length(text: string): Millimetres {
  const result = parseLength(text);
  if (!result.ok) throw new Error(text);
  return result.value.millimetres;
}

function count(text: string): GaugeCount {
  const result = parseGaugeCount(text);
  if (!result.ok) throw new Error(text);
  return result.value;
}

const gauge = (text: string) => gaugeOf<'stitches'>(count(text));
const inInches = (measure: Millimetres) => measure.dividedBy(inch);
const rounded = (value: Fraction, decimals: number) =>
  nearestDecimalHalfAwayFromZero(value, decimals).toNumber();

function example(id: string) {
  const found = published.examples.find((entry) => entry.id === id);
  if (!found) throw new Error(`no published example ${id}`);
  return found.expected;
}

test('G1: 200 stitches planned at 5 to the inch and knitted at 5.25', () => {
  const [planned, knitted] = [gauge('5 sts per in'), gauge('5.25 sts per in')];
  const off = lengthOff(stitches(200), planned, knitted);
  expect({
    planned_in: rounded(inInches(lengthOf(stitches(200), planned)), 3),
    actual_in: rounded(inInches(lengthOf(stitches(200), knitted)), 3),
    difference_in: rounded(inInches(off), 3),
    percent: rounded(changeOfLength(lengthOf(stitches(200), planned), lengthOf(stitches(200), knitted)), 2),
  }).toEqual(example('G1'));
});

test('G3: 184 stitches at four gauges, and 2.71 in of difference where the source says almost 3.5', () => {
  const gauges = ['4 sts per in', '4.25 sts per in', '4.5 sts per in', '3.5 sts per in'].map(gauge);
  const [planned, knitted] = gauges;
  if (!planned || !knitted) throw new Error('four gauges were written');
  expect({
    in_: gauges.map((each) => rounded(inInches(lengthOf(stitches(184), each)), 2)),
    difference_at_4_25: rounded(inInches(lengthOff(stitches(184), planned, knitted)), 2),
  }).toEqual(example('G3'));
});

describe('gauge over another length', () => {
  const perInch = (text: string, decimals = 3) => rounded(countOver(gaugeOf(count(text)), inch), decimals);

  test('G6: 18 stitches and 24 rows over 4 in', () => {
    expect({per_in: [perInch('18 sts over 4 in'), perInch('24 rows over 4 in')]}).toEqual(example('G6'));
  });

  test('G7: 18 stitches over 4 in are 4.5 to the inch; the 4.25 of the source would be 17', () => {
    expect(perInch('18 stitches per 4 inches')).toBe(4.5);
    expect(perInch('17 stitches per 4 inches')).toBe(4.25);
    expect(example('G7')).toMatchObject({correct: 4.5});
  });

  test('G8: 15 stitches and 22 rows over 3 in', () => {
    expect({
      sts_per_in: perInch('15 sts over 3 in'),
      rows_per_in: perInch('22 rows over 3 in', 2),
    }).toEqual(example('G8'));
  });

  test('G10: 22 stitches over 4 in are not 22 over 10 cm', () => {
    const overTenCentimetres = countOver(gauge('22 sts over 4 in'), millimetres(100));
    expect({sts_per_10cm: rounded(overTenCentimetres, 3)}).toEqual(example('G10'));
  });

  test('O1: 8 in at 4.5 stitches and 45 in at 6 rows to the inch', () => {
    expect({
      sts: countOver(gauge('4.5 sts per in'), length('8 in')).toNumber(),
      rows: countOver(gaugeOf<'rows'>(count('6 rows per in')), length('45 in')).toNumber(),
    }).toMatchObject({sts: example('O1').sts, rows: example('O1').rows});
  });
});

test('every published gauge example is checked here', () => {
  expect(published.examples.map(({id}) => id)).toEqual(['G1', 'G3', 'G6', 'G7', 'G8', 'G10', 'O1']);
});
