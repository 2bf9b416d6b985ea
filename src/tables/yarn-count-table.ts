import {formatNumber} from '../knitting/format-quantity.ts';
import type {PutUp} from '../knitting/quantity.ts';
import {metresPerHundredGrams, metricCountOf, texOf, yarnWeightsByLength} from '../knitting/yarn-count.ts';
import type {Item} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {itemNamed, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional} from './attributes.ts';
import {roundingWords} from './formula-words.ts';
import {putUp} from './yarn-readers.ts';

/** `::yarn-count`: tex and metric count of a yarn from its put-up, and the yarn weights it may be. */
export const yarnCountTable = arithmeticTable({
  id: 'yarn-count',
  summary: 'tex and metric count of a yarn from length and mass, with the yarn weights it may be',
  example: '::yarn-count{put-up="200 m / 100 g"}',
  attributes: {'put-up': optional(putUp), of: optional(itemNamed('of'))},
  compute(values, _binder, item) {
    const asked = values.of ?? item;
    const written = values['put-up'] ?? putUpOf(asked);
    if (!written) {
      return unreadable(
        `\`${asked.id}\` states no put-up`,
        'Write `put-up="200 m / 100 g"` here, or `put-up` under `yarn` in the item.',
      );
    }
    const metres = metresPerHundredGrams(written);
    const weights = yarnWeightsByLength(metres).map(({category, name}) => `${category}\u00a0${name}`);
    return success(
      arithmeticFigure({
        name: 'yarn-count',
        caption: 'How thick the yarn is',
        given: [['Put-up', `${written.text}${values['put-up'] ? '' : `, as ${asked.id} states it`}`]],
        result: [
          ['Tex', `${formatNumber(texOf(written), 0)}\u00a0tex: grams of 1000\u00a0m`],
          ['Metric count', `Nm\u00a0${formatNumber(metricCountOf(written), 2)}: metres of 1\u00a0g`],
          ['Length', `${formatNumber(metres, 0)}\u00a0m of 100\u00a0g`],
          [
            'Yarn weight by length',
            weights.length > 0 ? englishList(weights, 'or') : 'between the ranges of the shop tables',
          ],
        ],
        instructions: ['Length alone does not settle the weight: the gauge of a swatch does.'],
        formulas: ['Tex: 1000 × grams ÷ metres. Metric count: metres ÷ grams, which is 1000 ÷ tex.'],
        rounding: roundingWords('tex and metres to the nearest whole', 'metric count to two decimals'),
        source:
          'Source: ISO 1144 for tex and its conversion. Yarn weight by length: common practice, shop tables that disagree; the trade’s own standard publishes no lengths.',
      }),
    );
  },
});

function putUpOf(item: Item): PutUp | null {
  const yarns = 'yarn' in item.fields ? (item.fields.yarn ?? []) : [];
  return yarns.flatMap((yarn) => yarn['put-up'] ?? [])[0] ?? null;
}
