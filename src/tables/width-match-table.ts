import {formatLengthDifference, formatNumber} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {spreadEvenly} from '../knitting/spread-evenly.ts';
import {spreadWork, writeSpread} from '../knitting/spread-work.ts';
import {spreadOverBoth} from '../knitting/uncertainty.ts';
import {type Stitches, stitches} from '../knitting/units.ts';
import {type WidthMatch, widthMatch} from '../knitting/width-match.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {count, gaugeCounts, itemNamed} from './attribute-readers.ts';
import {arithmeticTable, optional, required} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, readGauge, stitchGauge} from './read-gauge.ts';
import {countShown, lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

/** `::width-match`: stitches to add and take at the foot and head of cables so that the fabric does not flare. */
export const widthMatchTable = arithmeticTable({
  id: 'width-match',
  summary: 'stitches to add at the foot and take at the head of cables so that the fabric does not flare',
  example: '::width-match{panel=48 cables="26 over 10 cm" gauge="20 over 10 cm"}',
  attributes: {
    panel: required(count),
    cables: optional(gaugeCounts),
    'cables-of': optional(itemNamed('cables-of')),
    gauge: gaugeAttributes.gauge,
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const plainGauge = stitchGauge(values, order);
    if (!plainGauge.ok) return plainGauge;
    const cabled = readGauge<'stitches'>(
      'stitches',
      {name: 'cables', counts: values.cables, item: values['cables-of']},
      order,
    );
    if (!cabled.ok) return cabled;
    const [plain, cables] = [plainGauge.value.summary, cabled.value.summary];
    const panel = stitches(values.panel);
    const result = widthMatch(panel, cables.mean, plain.mean);
    if (!result.ok) return result;
    const {exact, plain: under, change, panelWidth, plainWidth, off} = result.value;
    const spread = spreadOverBoth(plain, cables, (at, over) =>
      Fraction.ofInteger(panel).dividedBy(over).times(at),
    );
    return success(
      arithmeticFigure({
        name: 'width-match',
        caption: `Plain fabric as wide as a panel of ${plural(panel, 'stitch', 'stitches')} in cables`,
        given: [
          ['Panel', plural(panel, 'stitch', 'stitches')],
          ['Gauge of the cables', cabled.value.words],
          ['Gauge of the plain fabric', plainGauge.value.words],
        ],
        result: [
          ['Width of the panel', lengthShown(order)(panelWidth)],
          [
            'As wide in plain fabric',
            `${formatNumber(exact, 2)}\u00a0sts, so ${under}: ${lengthShown(order)(plainWidth)}`,
          ],
          ['Change', `${panel} − ${under} = ${change < 0 ? `−${-change}` : change} stitches`],
          ['Left over', formatLengthDifference(off, order)],
          ['Spread', spreadWords(spread, [plain, cables], countShown('plain sts'))],
        ],
        instructions: shapingRows(panel, result.value),
        formulas: [
          'Width of the panel: stitches ÷ gauge of the cables. As wide in plain fabric: that width × gauge of the plain fabric.',
          spreadFormula,
        ],
        rounding: roundingWords(
          'plain stitches to the nearest stitch, half up, shown to two decimals',
          lengthRounding,
        ),
        source:
          'Source: plain arithmetic on the two gauges; adding and taking the stitches in one row at the foot and the head of the cables is common practice.',
      }),
    );
  },
});

/** The row at the foot and the row at the head; more change than one row takes is said to need several. */
function shapingRows(panel: Stitches, {plain, change}: WidthMatch): readonly string[] {
  if (change === 0) return ['The panel is as wide as the plain fabric: neither add nor take a stitch.'];
  const isMore = change > 0;
  return [
    `At the foot of the cables, over ${plain} stitches. ${shapingRow(isMore, plain, Math.abs(change))}`,
    `At their head, over ${panel} stitches. ${shapingRow(!isMore, panel, Math.abs(change))}`,
  ];
}

function shapingRow(isIncrease: boolean, over: Stitches, places: number): string {
  const kind = isIncrease ? 'bar increases' : 'decreases';
  const work = spreadWork(kind, 0);
  const spread = spreadEvenly({stitches: over, places, work, ends: 'half', needsNeighbours: false});
  return spread.ok
    ? writeSpread(spread.value, kind, 0, false).join(' ')
    : `${isIncrease ? 'Add' : 'Take'} ${plural(places, 'stitch', 'stitches')} in several rows: one row takes at most ${Math.floor(over / work.uses)}.`;
}
