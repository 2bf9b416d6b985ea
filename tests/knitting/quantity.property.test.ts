import fc from 'fast-check';
import {expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {millimetresIn} from '../../src/knitting/length-unit.ts';
import {parseNeedleSize} from '../../src/knitting/needle-size.ts';
import {parseGaugeCount, parseLength, parsePutUp} from '../../src/knitting/quantity.ts';
import {lengthUnit, nearlyQuantity, writtenNumber} from './arbitraries.ts';

test.each([
  ['parseLength', parseLength],
  ['parseGaugeCount', parseGaugeCount],
  ['parsePutUp', parsePutUp],
  ['parseNeedleSize', parseNeedleSize],
] as const)(
  '%s never throws; it gives a value, or problems with a message, a hint and a span within the text',
  (_, parse) => {
    fc.assert(
      fc.property(nearlyQuantity, (text) => {
        const result = parse(text);
        if (result.ok) return;
        expect(result.problems.length).toBeGreaterThan(0);
        for (const {message, hint, span} of result.problems) {
          expect(message).not.toBe('');
          expect(hint).toMatch(/\.$/);
          expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
        }
      }),
      {numRuns: 1000},
    );
  },
);

test('a length means its number times its unit, exactly', () => {
  fc.assert(
    fc.property(writtenNumber, lengthUnit, fc.constantFrom('', ' ', '\u00a0'), ({text, value}, unit, gap) => {
      const result = parseLength(`${text}${gap}${unit}`);
      expect(result.ok && result.value.millimetres).toEqual(value.times(millimetresIn[unit]));
    }),
  );
});

test('converting to another unit and back gives the same length, exactly', () => {
  fc.assert(
    fc.property(writtenNumber, lengthUnit, lengthUnit, ({value}, from, to) => {
      const there = value.times(millimetresIn[from]).dividedBy(millimetresIn[to]);
      expect(there.times(millimetresIn[to]).dividedBy(millimetresIn[from])).toEqual(value);
    }),
  );
});

test('a gauge count keeps count and length apart, exactly', () => {
  fc.assert(
    fc.property(writtenNumber, writtenNumber, lengthUnit, (count, over, unit) => {
      fc.pre(!count.value.equals(Fraction.zero) && !over.value.equals(Fraction.zero));
      const result = parseGaugeCount(`${count.text} sts over ${over.text} ${unit}`);
      expect(result.ok && result.value.count).toEqual(count.value);
      expect(result.ok && result.value.over.millimetres).toEqual(over.value.times(millimetresIn[unit]));
    }),
  );
});
