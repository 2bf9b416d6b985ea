import type {Fraction} from '../knitting/fraction.ts';
import {gaugeOf, summarizeGauge} from '../knitting/gauge.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {type CountedGauge, countedGauges, isSpreadTooWide} from './parts/gauge-counts.ts';
import {showNumber} from './parts/show-number.ts';

/**
 * The counts of one gauge lie no further apart than the syllabus allows: highest minus lowest, in percent of their
 * mean.
 *
 * Why: a gauge is only worth its mean if the knitting is even; a count that stands alone is a slip of the ruler or a
 * change of tension, and everything computed from the mean would carry it along.
 *
 * Example: `stitches: [20 over 10 cm, 20 over 10 cm, 22 over 10 cm]` spreads 9.7 % around 20.7, where `spread: 5` is
 * allowed. The finding stands at the count that is farthest from the mean.
 */
export const gaugeSpread: Rule = {
  id: 'gauge-spread',
  summary: 'the counts of one gauge lie no further apart than the syllabus allows',
  severity: 'warning',
  check(binder, report) {
    for (const item of binder.items) {
      for (const gauge of countedGauges(item)) {
        if (!isSpreadTooWide(item, gauge)) continue;
        const {spreadPercent, mean} = summarizeGauge(gauge.counts);
        const allowed = item.requirement?.limits.gauge?.spread;
        const {index, text} = farthest(gauge, mean);
        report({
          file: item.file,
          ...scalarAt(item.places, [...gauge.path, index], text),
          message: `the ${gauge.what} counted ${gauge.when} spread \`${showNumber(spreadPercent)} %\` around their mean, and this count lies farthest from it; the syllabus allows \`${allowed} %\``,
          hint: 'Count there again, away from the edges; if the count holds, the tension changed there.',
        });
      }
    }
  },
};

/** The count farthest from the mean; of two equally far the later one. */
function farthest({counts}: CountedGauge, mean: Fraction): {index: number; text: string} {
  const distances = counts.map((count) => gaugeOf(count).minus(mean).absolute());
  const index = distances.reduce(
    (best, distance, here) => (distance.compare(distances[best] ?? distance) >= 0 ? here : best),
    0,
  );
  return {index, text: counts[index]?.text ?? ''};
}
