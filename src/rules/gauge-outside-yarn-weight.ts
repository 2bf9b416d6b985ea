import {Fraction} from '../knitting/fraction.ts';
import {countOver, summarizeGauge} from '../knitting/gauge.ts';
import {type YarnWeight, yarnWeightGaugeLength, yarnWeights} from '../knitting/yarn-weight.ts';
import type {Item} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';
import {exactNumber} from './parts/exact-number.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {isSpreadTooWide, stitchesAsSent} from './parts/gauge-counts.ts';
import {showNumber} from './parts/show-number.ts';

const hundred = Fraction.ofInteger(100);

/**
 * The stitch gauge fits the yarn weight that the item states.
 *
 * Why: a gauge far from the range of its yarn is most often a wrong weight, a count over inches written as
 * centimetres, or knitting too tight or too loose to wear well. The ranges hold for stockinette and are guidelines, so
 * ribs, cables and lace may rightly lie outside; that is why this is only worth knowing.
 *
 * Example: weight `4` and 27 stitches over 10 cm; the table gives 16 to 20 over 4 in for weight 4.
 *
 * Source of the ranges: Craft Yarn Council, Standard Yarn Weight System. The tolerance of 10 % beyond either end, which
 * also covers the gaps between the ranges: common practice, no source. A spread that is too wide comes first, as
 * `gauge-spread`; where the yarns of an item differ in weight, no range is known and nothing is said.
 */
export const gaugeOutsideYarnWeight: Rule<'tolerance'> = {
  id: 'gauge-outside-yarn-weight',
  summary: 'the stitch gauge fits the yarn weight that the item states',
  severity: 'info',
  options: {
    tolerance: {default: 10, meaning: 'how far beyond the range the gauge may lie, in percent of its end'},
  },
  check(binder, report, {tolerance}) {
    for (const item of binder.items) {
      const weight = statedWeight(item);
      const gauge = stitchesAsSent(item);
      if (!weight || !gauge || isSpreadTooWide(item, gauge)) continue;
      const count = countOver(summarizeGauge(gauge.counts).mean, yarnWeightGaugeLength);
      if (!isOutside(count, weight, exactNumber(tolerance))) continue;
      const named = `\`${weight.category}\` (${weight.name})`;
      report({
        file: item.file,
        ...scalarAt(item.places, ['yarn', 0, 'weight'], String(weight.category)),
        message: `\`${item.id}\` has \`${showNumber(count)}\` stitches over 4 in; yarn of weight ${named} is knitted at \`${showRange(weight)}\``,
        hint: 'Check the weight on the ball band and the counts; the range is for stockinette, and ribs, cables and lace may lie outside it.',
        related: [
          {file: item.file, place: valueAt(item.places, gauge.path), message: 'the gauge is written here'},
        ],
      });
    }
  },
};

/** The one weight of all yarns of the item; null when none is stated or when they differ. */
function statedWeight(item: Item): YarnWeight | null {
  const yarns = 'yarn' in item.fields ? (item.fields.yarn ?? []) : [];
  const [first, ...others] = new Set(yarns.map((yarn) => yarn.weight));
  return others.length > 0 ? null : (yarnWeights.find((weight) => weight.category === first) ?? null);
}

function isOutside(count: Fraction, {gauge: {from, to}}: YarnWeight, tolerance: Fraction): boolean {
  const slack = tolerance.dividedBy(hundred);
  const isBelow = from !== null && count.compare(from.times(Fraction.one.minus(slack))) < 0;
  return isBelow || (to !== null && count.compare(to.times(Fraction.one.plus(slack))) > 0);
}

function showRange({gauge: {from, to}}: YarnWeight): string {
  if (from && to) return `${showNumber(from)} to ${showNumber(to)}`;
  return from ? `${showNumber(from)} or more` : `${to ? showNumber(to) : 'any number'} or fewer`;
}
