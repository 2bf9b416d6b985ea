import {formatExact, formatLengthDifference, formatNumber} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import type {GaugeSummary} from '../knitting/gauge.ts';
import {type EdgeGauges, type EdgePart, lengthOfPart, type PickUpPart, pickUp} from '../knitting/pick-up.ts';
import {type PickUpBlock, pickUpBlocks} from '../knitting/pick-up-blocks.ts';
import {nearestSmallFraction} from '../knitting/small-fraction.ts';
import {anyNumber, multipleWords, parseStitchMultiple} from '../knitting/stitch-multiple.ts';
import {type Spread, spreadOverBoth} from '../knitting/uncertainty.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {count, gaugeCounts, itemNamed, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, withDefault} from './attributes.ts';
import {foldedWords} from './folded-words.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, readGauge, rowGauge, stitchGauge} from './read-gauge.ts';
import {countShown, lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

/** The largest denominator that is offered as a ratio to keep in mind. */
const mostInMind = 5;

/** `::pick-up`: stitches picked up along rows, bound-off stitches and a slant, from both gauges. */
export const pickUpTable = arithmeticTable({
  id: 'pick-up',
  summary: 'stitches to pick up along rows, bound-off stitches or a slanting edge',
  example: '::pick-up{rows=52 gauge="20 over 10 cm" row-gauge="26 over 10 cm"}',
  attributes: {
    'bound-off': withDefault(count, 0),
    rows: withDefault(count, 0),
    'slanting-rows': withDefault(count, 0),
    slant: withDefault(count, 0),
    multiple: withDefault(parseStitchMultiple, anyNumber),
    ...gaugeAttributes,
    band: optional(gaugeCounts),
    'band-of': optional(itemNamed('band-of')),
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const stitchwise = stitchGauge(values, order);
    if (!stitchwise.ok) return stitchwise;
    const rowwise = rowGauge(values, order);
    if (!rowwise.ok) return rowwise;
    const isOwn = values.band === null && values['band-of'] === null;
    const band = isOwn
      ? stitchwise
      : readGauge<'stitches'>(
          'stitches',
          {name: 'band', counts: values.band, item: values['band-of']},
          order,
        );
    if (!band.ok) return band;
    if (values.slant > 0 !== values['slanting-rows'] > 0) {
      return unreadable(
        'a slant needs its rows and its stitches',
        'Write both, such as `slanting-rows=40 slant=20`.',
      );
    }
    const [across, up, along] = [stitchwise.value.summary, rowwise.value.summary, band.value.summary];
    const edge = edgeOf(values);
    const result = pickUp(edge, {stitches: across.mean, rows: up.mean}, along.mean, values.multiple);
    if (!result.ok) return result;
    const {parts, total} = result.value;
    const spread = isOwn
      ? spreadOverBoth(across, up, (stitches, rows) => edgeLength(edge, {stitches, rows}).times(stitches))
      : spreadTimes(
          spreadOverBoth(across, up, (stitches, rows) => edgeLength(edge, {stitches, rows})),
          along,
        );
    return success(
      arithmeticFigure({
        name: 'pick-up',
        caption: 'Stitches to pick up along the edge',
        given: [
          ...edge.map((part): FigureLine => ['Along', partWords(part)]),
          ['Gauge of the piece', stitchwise.value.words],
          ['Row gauge of the piece', rowwise.value.words],
          ['Gauge of the band', isOwn ? 'that of the piece' : band.value.words],
          ['Band', multipleWords(values.multiple)],
        ],
        result: [
          ...parts.flatMap((part) =>
            partLines(part, lengthShown(order)(lengthOfPart(part, {stitches: across.mean, rows: up.mean}))),
          ),
          ['Exact', `${formatNumber(total.exact, 2)}\u00a0sts for ${lengthShown(order)(total.wanted)}`],
          [
            'Pick up',
            `${total.chosen.castOn}\u00a0sts, off by ${formatNumber(Fraction.ofInteger(total.chosen.castOn).minus(total.exact), 2)}\u00a0sts: ${formatLengthDifference(total.chosen.off, order)}`,
          ],
          ['Spread', spreadWords(spread, isOwn ? [across, up] : [across, up, along], countShown('sts'))],
        ],
        instructions: parts.map(
          (part) =>
            `Along ${partWords(part)}: pick up and knit ${part.picked} stitches: ${schemeWords(part.blocks)}.`,
        ),
        formulas: [
          'Exact: length of the edge × gauge of the band. Along rows, one row is worth gauge of the band ÷ row gauge of the piece; along bound-off stitches, gauge of the band ÷ gauge of the piece.',
          ...(values.slant > 0
            ? [
                'Length of a slant: √(width² + height²), the width being the stitches and the height the rows at the gauge of the piece.',
              ]
            : []),
          'Scheme: the places are shared into blocks, each leaving out (or adding) one; no two blocks differ by more than one place.',
          spreadFormula,
        ],
        rounding: roundingWords(
          'the whole edge to the nearest number that the band allows, a tie going to more',
          'stitches and ratios to two and three decimals',
          lengthRounding,
        ),
        source:
          'Source: the ratio of the two gauges, as published by the trade; leaving out single rows evenly is common practice.',
      }),
    );
  },
});

function edgeLength(edge: readonly EdgePart[], gauges: EdgeGauges): Fraction {
  return edge.reduce((sum, part) => sum.plus(lengthOfPart(part, gauges)), Fraction.zero);
}

/** A length that has a spread, times a gauge measured elsewhere. */
function spreadTimes({mean, least, most}: Spread, band: GaugeSummary<'stitches'>): Spread {
  return {mean: mean.times(band.mean), least: least.times(band.lowest), most: most.times(band.highest)};
}

function edgeOf(values: {
  readonly 'bound-off': number;
  readonly rows: number;
  readonly 'slanting-rows': number;
  readonly slant: number;
}): readonly EdgePart[] {
  const parts: readonly EdgePart[] = [
    {kind: 'bound-off stitches', places: values['bound-off'], slant: 0},
    {kind: 'slanting rows', places: values['slanting-rows'], slant: values.slant},
    {kind: 'rows', places: values.rows, slant: 0},
  ];
  return parts.filter(({places}) => places > 0);
}

function partLines(part: PickUpPart, length: string): readonly FigureLine[] {
  const {ratio} = part;
  const small = nearestSmallFraction(ratio, mostInMind);
  const isSmall = small.numerator > 0n && small.equals(ratio);
  const near = `${small.numerator} ${small.compare(Fraction.one) > 0 ? 'from' : 'of'} ${small.denominator}`;
  const inMind = Fraction.ofInteger(part.places).times(small);
  const exactRatio = ratio.denominator <= 99n ? `${formatRatio(ratio)} = ` : '';
  return [
    [`${partWords(part)}: length`, length],
    [
      `Stitches for each ${part.kind === 'bound-off stitches' ? 'of them' : 'row'}`,
      `${exactRatio}${formatNumber(ratio, 3)}${isSmall ? '' : ratioScheme(ratio)}`,
    ],
    ...(small.numerator > 0n
      ? [
          [
            'To keep in mind',
            `${near}, which gives ${formatExactOrShort(inMind)} instead of ${part.picked}`,
          ] as const,
        ]
      : []),
  ];
}

/** `, or 3 of 4, 3 of 4, 4 of 5`, when the exact ratio is one that can be counted. */
function ratioScheme(ratio: Fraction): string {
  if (ratio.denominator > 20n || ratio.numerator > 40n) return '';
  return `, or ${schemeWords(pickUpBlocks(Number(ratio.numerator), Number(ratio.denominator)))}`;
}

function formatRatio({numerator, denominator}: Fraction): string {
  return `${numerator}/${denominator}`;
}

function formatExactOrShort(value: Fraction): string {
  return value.isWhole() ? formatExact(value) : formatNumber(value, 1);
}

function schemeWords(blocks: readonly PickUpBlock[]): string {
  if (blocks.every(({picked, of}) => picked === of)) return '1 in each';
  return foldedWords(
    blocks.map(({picked, of}) => (picked > of ? `${picked} from ${of}` : `${picked} of ${of}`)),
  );
}

function partWords({kind, places, slant}: EdgePart): string {
  if (kind === 'bound-off stitches') return plural(places, 'bound-off stitch', 'bound-off stitches');
  const rows = plural(places, 'row');
  return kind === 'rows' ? rows : `${rows} slanting by ${plural(slant, 'stitch', 'stitches')}`;
}
