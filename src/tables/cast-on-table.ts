import {type CastOnCandidate, castOnCount, castOnRounding} from '../knitting/cast-on-count.ts';
import {
  formatLength,
  formatLengthDifference,
  formatNumber,
  type UnitOrder,
} from '../knitting/format-quantity.ts';
import {lengthOf} from '../knitting/gauge.ts';
import {
  anyNumber,
  multipleWords,
  parseStitchMultiple,
  type StitchMultiple,
} from '../knitting/stitch-multiple.ts';
import {spreadOver} from '../knitting/uncertainty.ts';
import {millimetres} from '../knitting/units.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {count, length, signedLength} from './attribute-readers.ts';
import {arithmeticTable, optional, required, withDefault} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, stitchGauge} from './read-gauge.ts';
import {lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

/** `::cast-on`: the stitches for a width, both numbers that the pattern's multiple allows, and the width each gives. */
export const castOnTable = arithmeticTable({
  id: 'cast-on',
  summary: 'stitches to cast on for a width, with both neighbours that the multiple allows',
  example: '::cast-on{width="48 cm" gauge="20 over 10 cm" multiple="6 + 5"}',
  attributes: {
    width: required(length),
    ease: optional(signedLength),
    multiple: withDefault(parseStitchMultiple, anyNumber),
    selvedges: withDefault(count, 0),
    gauge: gaugeAttributes.gauge,
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const gauge = stitchGauge(values, order);
    if (!gauge.ok) return gauge;
    const {summary, words} = gauge.value;
    const {width, ease, multiple, selvedges} = values;
    const request = {
      width: width.millimetres,
      ease: ease?.millimetres ?? millimetres(0),
      gauge: summary.mean,
      multiple,
      selvedges,
    };
    const result = castOnCount(request);
    if (!result.ok) return result;
    const {exact, wanted, fewer, more, chosen, isTie} = result.value;
    const spread = spreadOver(summary, (at) => lengthOf(chosen.pattern, at));
    return success(
      arithmeticFigure({
        name: 'cast-on',
        caption: 'Stitches to cast on',
        given: [
          ['Width', formatLength(width.millimetres, order)],
          ...(ease ? [['Ease', formatLengthDifference(ease.millimetres, order)] as const] : []),
          ['Gauge', words],
          ['Pattern', multipleWords(multiple)],
          ...(selvedges > 0
            ? [
                [
                  'Selvedges',
                  `${plural(selvedges, 'stitch', 'stitches')} for the seams, outside the width`,
                ] as const,
              ]
            : []),
        ],
        result: [
          [
            'Exact',
            `${formatNumber(exact, 2)}\u00a0sts for ${formatLength(wanted, order)}${selvedges > 0 ? ', without selvedges' : ''}`,
          ],
          ...neighbours(fewer, more, multiple, order),
          [
            'Cast on',
            `${chosen.castOn}\u00a0sts${isTie ? ': the exact number lies half-way, so the wider of the two' : ''}`,
          ],
          ['Width', formatLength(chosen.width, order)],
          ['Spread', spreadWords(spread, [summary], lengthShown(order))],
        ],
        instructions: [instruction(chosen, multiple, selvedges)],
        formulas: [
          `Exact: gauge × ${ease ? '(width + ease)' : 'width'}. Cast on: the nearest number that the pattern allows${selvedges > 0 ? ', plus the selvedges' : ''}. Width: pattern stitches ÷ gauge.`,
          spreadFormula,
        ],
        rounding: roundingWords(castOnRounding(multiple), 'exact stitches to two decimals', lengthRounding),
        source: 'Source: plain arithmetic; rounding a tie to the wider piece is common practice, no source.',
      }),
    );
  },
});

function neighbours(
  fewer: CastOnCandidate | null,
  more: CastOnCandidate,
  multiple: StitchMultiple,
  order: UnitOrder,
): readonly FigureLine[] {
  const line = (label: string, one: CastOnCandidate): FigureLine => {
    const repeats = multiple.of === 1 ? '' : `, ${plural(one.repeats, 'repeat')}`;
    const off = formatLengthDifference(one.off, order);
    return [label, `${one.castOn}\u00a0sts${repeats}: ${formatLength(one.width, order)}, off by ${off}`];
  };
  if (fewer?.castOn === more.castOn) return [line('Comes out', more)];
  return [...(fewer ? [line('Fewer', fewer)] : []), line('More', more)];
}

function instruction(
  {castOn, repeats}: CastOnCandidate,
  {of, plus}: StitchMultiple,
  selvedges: number,
): string {
  const over =
    plus === 0
      ? ''
      : plus > 0
        ? ` and ${plural(plus, 'stitch', 'stitches')} over`
        : ` less ${plural(-plus, 'stitch', 'stitches')}`;
  const parts = of === 1 ? '' : `: ${plural(repeats, 'repeat')} of ${of}${over}`;
  const edges =
    selvedges > 0 ? `, ${plural(selvedges, 'selvedge stitch', 'selvedge stitches')} included` : '';
  return `Cast on ${castOn} stitches${parts}${edges}.`;
}
