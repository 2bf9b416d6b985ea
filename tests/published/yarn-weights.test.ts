import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {countOver, gaugeOf} from '../../src/knitting/gauge.ts';
import {parseGaugeCount} from '../../src/knitting/quantity.ts';
import {
  type YarnWeightRange,
  yarnWeightGaugeLength,
  yarnWeights,
  yarnWeightsFor,
} from '../../src/knitting/yarn-weight.ts';
// Craft Yarn Council, Standard Yarn Weight System, https://www.craftyarncouncil.com
import published from './data/yarn-weights.json' with {type: 'json'};

const ends = ({from, to}: YarnWeightRange) => [from?.toNumber() ?? null, to?.toNumber() ?? null];

test('our table is the published table, line by line', () => {
  expect(
    yarnWeights.map(({category, name, gauge, needle, wraps}) => ({
      category,
      name,
      gauge_sts_per_4in_stockinette: ends(gauge),
      needle_mm: ends(needle),
      wpi: ends(wraps),
    })),
  ).toEqual(published.rows);
});

/** `22 sts / 4 in`, `26 sts` (over 4 in, as the table counts), `12 wpi`, `4.5 mm needle`. */
function weightsFor(input: string) {
  if (input.endsWith('wpi')) return yarnWeightsFor('wraps', Fraction.ofInteger(Number.parseInt(input, 10)));
  if (input.endsWith('mm needle')) {
    return yarnWeightsFor('needle', Fraction.ofRatio(Number.parseFloat(input) * 4, 4));
  }
  const count = parseGaugeCount(input.includes('in') ? input : `${input} over 4 in`);
  if (!count.ok) throw new Error(input);
  return yarnWeightsFor('gauge', countOver(gaugeOf(count.value), yarnWeightGaugeLength));
}

describe('boundaries of the published ranges', () => {
  test.each(published.boundary_checks)('$input', ({input, expected}) => {
    expect(weightsFor(input).map(({category}) => category)).toEqual(expected);
  });

  test.each(published.rows)('both ends of category $category belong to it', (row) => {
    for (const end of row.gauge_sts_per_4in_stockinette.filter((value) => value !== null)) {
      const found = yarnWeightsFor('gauge', Fraction.ofInteger(end));
      expect(found.map(({category}) => category)).toContain(row.category);
    }
  });
});

test('20 stitches over 10 cm are more than 20 over 4 in, and fall between 4 and 3', () => {
  expect(weightsFor('20 sts / 4 in').map(({category}) => category)).toEqual([4]);
  const count = parseGaugeCount('20 sts over 10 cm');
  expect(count.ok && yarnWeightsFor('gauge', countOver(gaugeOf(count.value), yarnWeightGaugeLength))).toEqual(
    [],
  );
});
