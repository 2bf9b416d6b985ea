import fc from 'fast-check';
import {expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {anyFraction, positiveFraction} from './arbitraries.ts';

const law = (title: string, property: fc.IRawProperty<unknown>) => test(title, () => fc.assert(property));

law(
  'addition commutes',
  fc.property(anyFraction, anyFraction, (a, b) => a.plus(b).equals(b.plus(a))),
);

law(
  'addition and multiplication associate',
  fc.property(anyFraction, anyFraction, anyFraction, (a, b, c) => {
    expect(a.plus(b).plus(c)).toEqual(a.plus(b.plus(c)));
    expect(a.times(b).times(c)).toEqual(a.times(b.times(c)));
  }),
);

law(
  'multiplication distributes over addition',
  fc.property(anyFraction, anyFraction, anyFraction, (a, b, c) => {
    expect(a.times(b.plus(c))).toEqual(a.times(b).plus(a.times(c)));
  }),
);

law(
  'subtracting undoes adding, dividing undoes multiplying',
  fc.property(anyFraction, positiveFraction, (a, b) => {
    expect(a.plus(b).minus(b)).toEqual(a);
    expect(a.times(b).dividedBy(b)).toEqual(a);
  }),
);

law(
  'comparing agrees with BigInt cross products',
  fc.property(anyFraction, anyFraction, (a, b) => {
    const [left, right] = [a.numerator * b.denominator, b.numerator * a.denominator];
    expect(Math.sign(a.compare(b))).toBe(left < right ? -1 : left > right ? 1 : 0);
  }),
);

law(
  'a fraction is in lowest terms with a denominator above zero, whatever it was made from',
  fc.property(
    fc.bigInt(),
    fc.bigInt().filter((n) => n !== 0n),
    fc.bigInt({min: 1n, max: 1000n}),
    (n, d, k) => {
      const fraction = new Fraction(n, d);
      expect(new Fraction(n * k, d * k)).toEqual(fraction);
      expect(fraction.denominator > 0n).toBe(true);
      expect(fraction.numerator * d).toBe(n * fraction.denominator);
    },
  ),
);

test('a denominator of zero is our bug', () => {
  expect(() => new Fraction(1n, 0n)).toThrow(RangeError);
  expect(() => Fraction.one.dividedBy(Fraction.zero)).toThrow(RangeError);
  expect(() => Fraction.ofInteger(0.5)).toThrow(RangeError);
});
