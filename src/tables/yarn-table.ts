import {formatExact, formatNumber, formatPercent, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {millimetresIn} from '../knitting/length-unit.ts';
import {spreadOverBoth} from '../knitting/uncertainty.ts';
import type {Millimetres} from '../knitting/units.ts';
import {
  areaOf,
  type ColourShare,
  gramsForArea,
  type PieceShape,
  skeinsFor,
  withMargin,
  yarnForStitches,
} from '../knitting/yarn-amount.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {count, percent, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, required, withDefault} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, rowGauge, stitchGauge, type WrittenGauge} from './read-gauge.ts';
import {lengthShown, spreadFormula, spreadWords} from './spread-words.ts';
import {colours, mass, pieces, putUp, swatchSize, unravelled} from './yarn-readers.ts';

/** `::yarn`: yarn from a weighed swatch or from the yarn in a stitch, with margin, skeins and colours. */
export const yarnTable = arithmeticTable({
  id: 'yarn',
  summary: 'yarn needed, from a weighed swatch or the yarn in a stitch, in skeins and by colour',
  example: '::yarn{pieces="2 of 50 cm x 56 cm" swatch="15 cm x 15 cm" weighs="9 g" put-up="200 m / 100 g"}',
  attributes: {
    'put-up': required(putUp),
    margin: withDefault(percent, Fraction.ofInteger(10)),
    colours: withDefault(colours, []),
    pieces: optional(pieces),
    swatch: optional(swatchSize),
    weighs: optional(mass),
    stitches: optional(count),
    unravelled: optional(unravelled),
    ...gaugeAttributes,
  },
  compute(values, binder) {
    const order = binder.settings.units;
    if (values.margin.compare(Fraction.zero) < 0) {
      return unreadable(
        'a margin below zero leaves too little yarn',
        'Write a margin such as `margin="10 %"`.',
      );
    }
    const need = values.unravelled ? byStitches(values, order) : byArea(values, order);
    if (!need.ok) return need;
    const {amount, unit, given, lines, formula, source, rounding} = need.value;
    const {margin, colours: shares, 'put-up': skein} = values;
    const all = withMargin(amount, margin);
    const perSkein = unit === 'g' ? skein.grams : metres(skein.length.millimetres);
    const parts = skeinsFor(all, perSkein, shares);
    if (!parts.ok) return parts;
    const shown = (value: Fraction) => `${formatNumber(value, unit === 'g' ? 1 : 0)}\u00a0${unit}`;
    const total = parts.value.reduce((sum, {skeins}) => sum + skeins, 0);
    return success(
      arithmeticFigure({
        name: 'yarn',
        caption: 'Yarn needed',
        given: [
          ...given,
          ['One skein', skein.text],
          ['Margin', formatPercent(margin)],
          ...colourLine(shares),
        ],
        result: [
          ...lines,
          ['Yarn', shown(amount)],
          ['With the margin', shown(all)],
          ...parts.value.map(
            ({colour, amount: part, skeins}): FigureLine => [
              colour ?? 'Skeins',
              `${shown(part)} ÷ ${shown(perSkein)} = ${formatNumber(part.dividedBy(perSkein), 2)}, so ${plural(skeins, 'skein')}`,
            ],
          ),
        ],
        instructions: [
          `Buy ${total === 0 ? 'nothing' : plural(total, 'skein')} of one dye lot${shares.length > 0 ? ` for each colour: ${englishList(parts.value.map(({colour, skeins}) => `${skeins} of ${colour}`))}` : ''}.`,
        ],
        formulas: [
          formula,
          'With the margin: yarn × (100 + margin) ÷ 100. Skeins: yarn ÷ what one skein holds, colour by colour, always up to a whole skein.',
          ...(values.unravelled && values.pieces ? [spreadFormula] : []),
        ],
        rounding: roundingWords(
          unit === 'g' ? 'grams to one decimal' : 'metres to the nearest metre',
          'skeins up to a whole one, shown to two decimals',
          ...rounding,
        ),
        source,
      }),
    );
  },
});

interface YarnNeed {
  readonly amount: Fraction;
  readonly unit: 'g' | 'm';
  readonly given: readonly FigureLine[];
  readonly lines: readonly FigureLine[];
  readonly formula: string;
  readonly source: string;
  readonly rounding: readonly string[];
}

interface YarnInputs extends WrittenGauge {
  readonly pieces: readonly PieceShape[] | null;
  readonly swatch: PieceShape | null;
  readonly weighs: Fraction | null;
  readonly stitches: number | null;
  readonly unravelled: {readonly stitches: number; readonly length: Millimetres} | null;
}

function byArea({pieces: shapes, swatch, weighs}: YarnInputs, order: UnitOrder): Result<YarnNeed> {
  if (!shapes || !swatch || !weighs) {
    return unreadable(
      'there is nothing to work the yarn out from',
      'Write `pieces`, `swatch` and `weighs`, or `unravelled` with `stitches` or with `pieces` and a gauge.',
    );
  }
  const [area, swatchArea] = [totalArea(shapes), areaOf(swatch)];
  return success({
    amount: gramsForArea(area, swatchArea, weighs),
    unit: 'g',
    given: [
      ...shapes.map((shape) => pieceLine(shape, order)),
      ['Swatch', `${sizeWords(swatch, order)}, ${formatNumber(weighs, 1)}\u00a0g`],
    ],
    lines: [
      ['Area of the pieces', areaWords(area, order)],
      ['Area of the swatch', areaWords(swatchArea, order)],
    ],
    formula:
      'Area: how many × (lower width + upper width) ÷ 2 × height. Yarn: area of the pieces × weight of the swatch ÷ area of the swatch.',
    source:
      'Source: the proportion of areas as published by the trade (autumnbreezedesigns.com, “How much yarn”). The margin is common practice, no source.',
    rounding: ['areas to whole square centimetres and square inches', lengthRounding],
  });
}

function byStitches(inputs: YarnInputs, order: UnitOrder): Result<YarnNeed> {
  const {pieces: shapes, stitches, unravelled: sample} = inputs;
  if (!sample || (stitches === null) === (shapes === null)) {
    return unreadable(
      'the stitches of the piece are not said, or said twice',
      'Write `stitches=24000`, or `pieces` with `gauge` and `row-gauge`.',
    );
  }
  const perStitch = (count: Fraction) => metres(yarnForStitches(count, sample.stitches, sample.length));
  const common = {
    unit: 'm' as const,
    formula: `Yarn: stitches × length unravelled ÷ stitches unravelled.${shapes ? ' Stitches: area × gauge × row gauge.' : ''}`,
    source: 'Source: plain arithmetic. The margin is common practice, no source.',
  };
  const sampleLine: FigureLine = [
    'Unravelled',
    `${plural(sample.stitches, 'stitch', 'stitches')} from ${formatNumber(metres(sample.length), 2)}\u00a0m`,
  ];
  if (stitches !== null) {
    return success({
      ...common,
      amount: perStitch(Fraction.ofInteger(stitches)),
      given: [['Stitches', `${stitches}`], sampleLine],
      lines: [],
      rounding: ['the length unravelled to 1\u00a0cm'],
    });
  }
  const across = stitchGauge(inputs, order);
  if (!across.ok) return across;
  const up = rowGauge(inputs, order);
  if (!up.ok) return up;
  const area = totalArea(shapes ?? []);
  const spread = spreadOverBoth(across.value.summary, up.value.summary, (wide, high) =>
    perStitch(area.times(wide).times(high)),
  );
  const count = area.times(across.value.summary.mean).times(up.value.summary.mean);
  return success({
    ...common,
    amount: spread.mean,
    given: [
      ...(shapes ?? []).map((shape) => pieceLine(shape, order)),
      sampleLine,
      ['Gauge', across.value.words],
      ['Row gauge', up.value.words],
    ],
    lines: [
      ['Area of the pieces', areaWords(area, order)],
      ['Stitches', formatNumber(count, 0)],
      [
        'Spread of the yarn',
        spreadWords(
          spread,
          [across.value.summary, up.value.summary],
          (value) => `${formatNumber(value, 0)}\u00a0m`,
        ),
      ],
    ],
    rounding: [
      'stitches to the nearest whole',
      'the length unravelled to 1\u00a0cm',
      'areas to whole square centimetres and square inches',
      lengthRounding,
    ],
  });
}

function totalArea(shapes: readonly PieceShape[]): Fraction {
  return shapes.reduce((sum, shape) => sum.plus(areaOf(shape)), Fraction.zero);
}

function pieceLine(shape: PieceShape, order: UnitOrder): FigureLine {
  return [plural(shape.times, 'piece'), sizeWords(shape, order)];
}

function sizeWords({lower, upper, height}: PieceShape, order: UnitOrder): string {
  const shown = lengthShown(order);
  return `${shown(lower)} wide${lower.equals(upper) ? '' : ` to ${shown(upper)}`}, ${shown(height)} high`;
}

function areaWords(area: Fraction, order: UnitOrder): string {
  const metric = `${formatNumber(area.dividedBy(Fraction.ofInteger(100)), 0)}\u00a0cm²`;
  const inch = `${formatNumber(area.dividedBy(millimetresIn.in).dividedBy(millimetresIn.in), 0)}\u00a0sq\u00a0in`;
  return order === 'metric' ? `${metric} (${inch})` : `${inch} (${metric})`;
}

function colourLine(shares: readonly ColourShare[]): readonly FigureLine[] {
  const words = shares.map(({colour, percent: part}) => `${colour} ${formatExact(part)}\u00a0%`);
  return words.length > 0 ? [['Colours', englishList(words)]] : [];
}

function metres(length: Fraction): Fraction {
  return length.dividedBy(millimetresIn.m);
}
