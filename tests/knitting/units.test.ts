import {describe, expect, test} from 'vitest';
import {changeOfGauge, changeOfLength} from '../../src/knitting/blocking-change.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {lengthOf} from '../../src/knitting/gauge.ts';
import {
  millimetres,
  perMillimetre,
  type Rows,
  rows,
  type Stitches,
  stitches,
} from '../../src/knitting/units.ts';

const perTenCentimetres = <U extends 'stitches' | 'rows'>(count: number) =>
  perMillimetre<U>(Fraction.ofRatio(count, 100));

describe('checked constructors', () => {
  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])('%d is no count', (count) => {
    expect(() => stitches(count)).toThrow(RangeError);
    expect(() => rows(count)).toThrow(RangeError);
  });

  test('a gauge is above zero', () => {
    expect(() => perMillimetre(Fraction.zero)).toThrow(RangeError);
    expect(() => perMillimetre(Fraction.ofInteger(-1))).toThrow(RangeError);
  });

  test('a plain number of millimetres is whole', () => {
    expect(millimetres(105)).toEqual(Fraction.ofInteger(105));
    expect(() => millimetres(25.4)).toThrow(RangeError);
  });
});

// The compiler runs over this file in `npm run types`: a mixture that compiled would make its @ts-expect-error an error.
test('stitches, rows, lengths and gauges do not mix', () => {
  const stitchGauge = perTenCentimetres<'stitches'>(20);
  const rowGauge = perTenCentimetres<'rows'>(28);

  // @ts-expect-error Rows are not stitches.
  const taken: Stitches = rows(4);
  // @ts-expect-error The sum of stitches and rows is neither.
  const sum: Stitches = stitches(3) + rows(4);
  // @ts-expect-error A plain number has not been checked.
  const unchecked: Rows = 4;
  // @ts-expect-error Stitches make a width by the stitch gauge, not by the row gauge.
  lengthOf(stitches(100), rowGauge);
  // @ts-expect-error Rows make a height by the row gauge, not by the stitch gauge.
  lengthOf(rows(100), stitchGauge);
  // @ts-expect-error A length is no gauge.
  lengthOf(stitches(100), millimetres(100));
  // @ts-expect-error The change of a gauge compares stitches with stitches.
  changeOfGauge(stitchGauge, rowGauge);
  // @ts-expect-error The change of a length compares lengths.
  changeOfLength(millimetres(100), stitchGauge);

  expect([taken, sum, unchecked]).toEqual([4, 7, 4]);
});
