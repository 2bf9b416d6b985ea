import {bodySize, growthOf, growthOfPercent} from '../knitting/body-size.ts';
import {formatLengthDifference, formatPercentChange, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {type GaugeSummary, summarizeGauge} from '../knitting/gauge.ts';
import {type Spread, spreadOverBoth} from '../knitting/uncertainty.ts';
import {type CountUnit, millimetres} from '../knitting/units.ts';
import type {Item} from '../model/binder.ts';
import {type Result, success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {itemNamed, length, oneOf, percent, signedLength, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, required, withDefault} from './attributes.ts';
import {changeSource, lengthRounding, roundingWords} from './formula-words.ts';
import {blockingPair, measuredStates} from './measured-states.ts';
import {lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

/** `::body`: the finished measurement from body and ease, and the measurement to knit before blocking. */
export const bodyTable = arithmeticTable({
  id: 'body',
  summary: 'finished measurement from body and ease, and what to knit to before blocking',
  example: '::body{body="96 cm" ease="6 cm" gauge-of=S-07}',
  attributes: {
    body: required(length),
    ease: optional(signedLength),
    along: withDefault(oneOf('width', 'length'), 'width'),
    change: optional(percent),
    'gauge-of': optional(itemNamed('gauge-of')),
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const {body, ease, along} = values;
    const growth = growthFrom(values, along === 'width' ? 'stitches' : 'rows');
    if (!growth.ok) return growth;
    const {factor, words, spread: factors, gauges} = growth.value;
    const result = bodySize(body.millimetres, ease?.millimetres ?? millimetres(0), factor);
    if (!result.ok) return result;
    const {finished, knitted} = result.value;
    const shown = lengthShown(order);
    const spread = factors && {
      mean: knitted,
      least: finished.dividedBy(factors.most),
      most: finished.dividedBy(factors.least),
    };
    return success(
      arithmeticFigure({
        name: 'body',
        caption: `A ${along} on the body`,
        given: [
          ['Body', shown(body.millimetres)],
          ...easeLine(ease?.millimetres ?? null, order),
          ['Change on blocking', words],
        ],
        result: [
          ['Finished', shown(finished)],
          ['Before blocking', shown(knitted)],
          ['Blocking changes it by', formatLengthDifference(millimetres(finished.minus(knitted)), order)],
          ...(spread ? [['Spread before blocking', spreadWords(spread, gauges, shown)] as const] : []),
        ],
        instructions: [
          `Knit to ${shown(knitted)} on the needles${factor.equals(Fraction.one) ? '' : ', measured before blocking'}, for ${shown(finished)} when worn.`,
        ],
        formulas: [
          'Finished: body + ease. Before blocking: finished × 100 ÷ (100 + change in percent).',
          '1 in is exactly 2.54 cm: 4 in are 10.16 cm, and a gauge over 4 in is not one over 10 cm.',
          ...(gauges.length > 0
            ? [
                'Change from the gauge: 100 × (gauge before ÷ gauge after − 1), for fewer stitches are wider ones.',
                spreadFormula,
              ]
            : []),
        ],
        rounding: roundingWords(lengthRounding, 'percent to one decimal'),
        source: `Source: ${changeSource}; the inch by the international agreement of 1959; the rest is plain arithmetic.`,
      }),
    );
  },
});

interface Growth {
  readonly factor: Fraction;
  readonly words: string;
  readonly spread: Spread | null;
  readonly gauges: readonly GaugeSummary<CountUnit>[];
}

/** From the percent written, from an item's counts before and after blocking, or none at all. */
function growthFrom(
  {change, 'gauge-of': item}: {readonly change: Fraction | null; readonly 'gauge-of': Item | null},
  unit: CountUnit,
): Result<Growth> {
  if (change && item) {
    return unreadable('both `change` and `gauge-of` say the change on blocking', 'Write one of them.');
  }
  if (change) {
    return success({
      factor: growthOfPercent(change),
      words: formatPercentChange(change),
      spread: null,
      gauges: [],
    });
  }
  if (!item) return success({factor: Fraction.one, words: 'none', spread: null, gauges: []});
  const pair = blockingPair(measuredStates(item).filter((state) => state[unit].length > 0));
  if (!pair) {
    return unreadable(
      `\`${item.id}\` has no counts of ${unit} both before and after blocking`,
      'Count it at both times, or write the change, such as `change="+2.5 %"`.',
    );
  }
  const [before, after] = [
    summarizeGauge<CountUnit>(pair.before[unit]),
    summarizeGauge<CountUnit>(pair.after[unit]),
  ];
  const factor = growthOf(before.mean, after.mean);
  const percentage = factor.minus(Fraction.one).times(Fraction.ofInteger(100));
  return success({
    factor,
    words: `${formatPercentChange(percentage)}, from the ${unit} of ${item.id} before and after blocking`,
    spread: spreadOverBoth(before, after, growthOf),
    gauges: [before, after],
  });
}

function easeLine(ease: Fraction | null, order: UnitOrder): readonly FigureLine[] {
  return ease ? [['Ease', formatLengthDifference(millimetres(ease), order)]] : [];
}
