import {formatExact, formatMillimetres, formatNumber} from '../knitting/format-quantity.ts';
import type {Fraction} from '../knitting/fraction.ts';
import {countOver, summarizeGauge} from '../knitting/gauge.ts';
import type {Gauge} from '../knitting/units.ts';
import {
  type YarnWeight,
  type YarnWeightRange,
  yarnWeightGaugeLength,
  yarnWeights,
  yarnWeightsFor,
} from '../knitting/yarn-weight.ts';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {englishList} from '../support/english-list.ts';
import {computedFigure} from './computed-figure.ts';
import {computed, notComputed, type Table} from './define-table.ts';
import {roundingWords} from './formula-words.ts';
import {formatOver, overTenCentimetres} from './gauge-scale.ts';
import {type MeasuredState, measuredStates} from './measured-states.ts';

/** `::yarn-weight`: what the stated yarn weight's line of the trade's table says, and which lines the gauge falls in. */
export const yarnWeightTable: Table = {
  id: 'yarn-weight',
  summary: 'the stated yarn weight and the weights that the mean gauge falls in',
  compute: yarnWeightContent,
};

function yarnWeightContent(_binder: Binder, item: Item): ComputedTable {
  const stated = statedWeights(item);
  if (stated.length === 0) {
    return notComputed(
      `\`${item.id}\` states no yarn weight`,
      'Write the number of the ball band under `yarn`, such as `weight: 4`.',
    );
  }
  const states = measuredStates(item).filter(({stitches}) => stitches.length > 0);
  const counted = states.findLast(({when}) => when === 'after blocking') ?? states.at(-1);
  if (!counted) {
    return notComputed(
      `\`${item.id}\` has no stitch counts to compare with its yarn weight`,
      'Write the counts under `measured`, such as `stitches: [20 over 10 cm, 20.5 over 10 cm]`.',
    );
  }
  const {mean} = summarizeGauge<'stitches'>(counted.stitches);
  return computed(() =>
    computedFigure({
      name: 'yarn-weight',
      caption: `Yarn weight of ${item.id}: as stated, and as knitted`,
      columns: ['Yarn weight', 'stitches over 4\u00a0in in stockinette', 'needles', 'wraps over 1\u00a0in'],
      groups: [
        {title: null, lines: stated.map((weight) => weightLine(`Stated: ${weightName(weight)}`, weight))},
        {title: null, lines: [knittedLine(counted, mean)]},
      ],
      drawings: [],
      formulas: [
        'Mean: each count divided by the length it was counted over, all added up and divided by how many there are; over 4\u00a0in, which is 10.16\u00a0cm.',
        'The ranges are those of stockinette, a guide and no rule: another fabric has another gauge, and a pattern’s own gauge governs.',
      ],
      rounding: roundingWords('gauge over 4\u00a0in to two decimals', overTenCentimetres.rounding),
      source: 'Source: Standard Yarn Weight System, the yarn trade’s published table.',
    }),
  );
}

function statedWeights(item: Item): readonly YarnWeight[] {
  const yarns = 'yarn' in item.fields ? (item.fields.yarn ?? []) : [];
  const stated = new Set(yarns.map(({weight}) => weight));
  return yarnWeights.filter(({category}) => stated.has(category));
}

function weightLine(label: string, {gauge, needle, wraps}: YarnWeight) {
  return {
    label,
    cells: [
      `${rangeText(gauge, formatExact)}\u00a0sts`,
      rangeText(needle, formatMillimetres),
      rangeText(wraps, formatExact),
    ],
  };
}

/** The gauge is compared unrounded, so that 20.004 is above a range that ends with 20. */
function knittedLine({label}: MeasuredState, gauge: Gauge<'stitches'>) {
  const mean = countOver(gauge, yarnWeightGaugeLength);
  const weights = yarnWeightsFor('gauge', mean).map(weightName);
  const verdict =
    weights.length > 0 ? `within ${englishList(weights)}` : `within no range: ${neighbours(mean)}`;
  const shown = `${formatNumber(mean, 2)}\u00a0sts (${formatOver(gauge, overTenCentimetres)}\u00a0sts ${overTenCentimetres.words})`;
  return {label: `Knitted, ${label}`, cells: [`${shown}: ${verdict}`, '', '']};
}

/** Between which two weights of the table a gauge lies that falls in none. */
function neighbours(mean: Fraction): string {
  const finer = yarnWeights.findLast(({gauge: {from}}) => from !== null && from.compare(mean) > 0);
  const thicker = yarnWeights.find(({gauge: {to}}) => to !== null && to.compare(mean) < 0);
  return [thicker && `above ${weightName(thicker)}`, finer && `below ${weightName(finer)}`]
    .filter((words) => words !== undefined)
    .join(', ');
}

function rangeText({from, to}: YarnWeightRange, format: (value: Fraction) => string): string {
  if (from === null) return to === null ? '' : `up to ${format(to)}`;
  return to === null ? `from ${format(from)}` : `${format(from)} to ${format(to)}`;
}

function weightName({category, name}: YarnWeight): string {
  return `${category}\u00a0${name}`;
}
