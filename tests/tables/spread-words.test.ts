import {expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {summarizeGauge} from '../../src/knitting/gauge.ts';
import {parseGaugeCount} from '../../src/knitting/quantity.ts';
import {spreadWords} from '../../src/tables/spread-words.ts';

function gauge(...texts: readonly string[]) {
  return summarizeGauge<'stitches'>(
    texts.flatMap((text) => {
      const count = parseGaugeCount(text);
      return count.ok ? [count.value] : [];
    }),
  );
}

const show = (value: Fraction) => `${value.toNumber()}`;
const [four, five] = [Fraction.ofInteger(4), Fraction.ofInteger(5)];

test('a spread says what was measured: a range, counts that agree, or that one count shows none', () => {
  const two = [gauge('20 over 10 cm', '21 over 10 cm')];
  expect(spreadWords({least: four, mean: four, most: five}, two, show)).toBe('4 to 5 at the gauge measured');
  expect(spreadWords({least: four, mean: four, most: four}, two, show)).toBe('4, all counts alike');
  expect(spreadWords({least: four, mean: four, most: four}, [gauge('20 over 10 cm')], show)).toMatch(
    /one count/,
  );
});
