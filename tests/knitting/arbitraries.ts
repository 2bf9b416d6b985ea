import fc from 'fast-check';
import {Fraction} from '../../src/knitting/fraction.ts';
import type {LengthUnit} from '../../src/knitting/length-unit.ts';
import {type GaugeCount, parseGaugeCount} from '../../src/knitting/quantity.ts';

/** Any fraction, negative ones included, with numbers beyond what a double holds. */
export const anyFraction: fc.Arbitrary<Fraction> = fc
  .tuple(fc.bigInt({min: -(10n ** 20n), max: 10n ** 20n}), fc.bigInt({min: 1n, max: 10n ** 12n}))
  .map(([numerator, denominator]) => new Fraction(numerator, denominator));

export const positiveFraction: fc.Arbitrary<Fraction> = anyFraction
  .map((fraction) => fraction.absolute())
  .filter((fraction) => !fraction.equals(Fraction.zero));

export const lengthUnit: fc.Arbitrary<LengthUnit> = fc.constantFrom('mm', 'cm', 'm', 'in', 'yd');

/** A number as a knitter writes it, with the value it stands for. */
export const writtenNumber: fc.Arbitrary<{text: string; value: Fraction}> = fc.oneof(
  fc.nat({max: 99999}).map((whole) => ({text: `${whole}`, value: Fraction.ofInteger(whole)})),
  fc.tuple(fc.nat({max: 9999}), fc.nat({max: 999})).map(([whole, thousandths]) => ({
    text: `${whole}.${String(thousandths).padStart(3, '0')}`,
    value: Fraction.ofRatio(whole * 1000 + thousandths, 1000),
  })),
  fc
    .tuple(
      fc.nat({max: 999}),
      fc.nat({max: 64}),
      fc.integer({min: 1, max: 64}),
      fc.constantFrom(' ', '\u00a0', '-'),
    )
    .map(([whole, over, under, gap]) => ({
      text: `${whole}${gap}${over}/${under}`,
      value: Fraction.ofRatio(whole * under + over, under),
    })),
  fc.tuple(fc.nat({max: 999}), fc.constantFrom('', ' ')).map(([whole, gap]) => ({
    text: `${whole}${gap}¾`,
    value: Fraction.ofRatio(whole * 4 + 3, 4),
  })),
);

/** Text close to what is parsed, so that properties reach beyond the first character. */
export const nearlyQuantity: fc.Arbitrary<string> = fc.oneof(
  fc.string(),
  fc.string({unit: 'grapheme'}),
  fc
    .array(
      fc.constantFrom(
        '2',
        '20',
        '.',
        ',',
        '5',
        '½',
        '/',
        ' ',
        '-',
        '−',
        'over',
        'per',
        'cm',
        'in',
        '"',
        '″',
        'g',
        'oz',
        'sts',
        'US',
        'UK',
        'size',
        'mm',
        '(',
        ')',
        '0',
        '000',
        '=',
        '\n',
      ),
      {maxLength: 12},
    )
    .map((parts) => parts.join('')),
);

/** Counts that a knitter could have taken: whole, half or quarter stitches over 10 cm, 4 in or 1 in. */
export const gaugeCount: fc.Arbitrary<GaugeCount> = fc
  .tuple(fc.integer({min: 1, max: 400}), fc.constantFrom('10 cm', '4 in', '1 in', '50 mm'))
  .map(([quarters, over]) => {
    const result = parseGaugeCount(`${quarters}/4 over ${over}`);
    if (!result.ok) throw new Error(`not a gauge count: ${quarters}/4 over ${over}`);
    return result.value;
  });

export const gaugeCounts: fc.Arbitrary<GaugeCount[]> = fc.array(gaugeCount, {minLength: 1, maxLength: 12});
