import {shoulderSteps, stepsInRows} from '../knitting/shoulder-steps.ts';
import {type Stitches, stitches} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {count, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, required} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, rowGauge} from './read-gauge.ts';
import {heightAttributes, heightLines, readHeight} from './read-height.ts';
import {spreadFormula} from './spread-words.ts';

/** `::steps`: a shoulder bound off in steps, and the same slope as short rows. */
export const stepsTable = arithmeticTable({
  id: 'steps',
  summary: 'a shoulder bound off in steps or worked as short rows',
  example: '::steps{shoulder=30 steps=3 across=103}',
  attributes: {
    shoulder: required(count),
    steps: optional(count),
    across: optional(count),
    ...heightAttributes,
    'row-gauge': gaugeAttributes['row-gauge'],
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const {shoulder, across} = values;
    const isSlope = values.rows !== null || values.height !== null;
    if ((values.steps === null) !== isSlope) {
      return unreadable(
        isSlope ? 'both the steps and their height are said' : 'the steps are not said',
        'Write `steps=3`, or how high the shoulder rises: `rows=6`, or `height="2 cm"` with `row-gauge="28 over 10 cm"`.',
      );
    }
    const height = isSlope ? readHeight(values, order) : null;
    if (height && !height.ok) return height;
    const hasGauge = values['row-gauge'] !== null || values['gauge-of'] !== null;
    const gauge = hasGauge ? rowGauge({...values, gauge: null}, order) : null;
    if (gauge && !gauge.ok) return gauge;
    const number = height ? stepsInRows(height.value.exact) : (values.steps ?? 0);
    const result = shoulderSteps(stitches(shoulder), number);
    if (!result.ok) return result;
    if (across !== null && across < 2 * shoulder) {
      return unreadable(
        `two shoulders of \`${shoulder}\` stitches are more than the \`${across}\` across`,
        `Write shoulders of at most ${Math.floor(across / 2)} stitches.`,
      );
    }
    const {steps, rows, unworked} = result.value;
    const neck = across === null ? null : across - 2 * shoulder;
    return success(
      arithmeticFigure({
        name: 'steps',
        caption: `A shoulder of ${plural(shoulder, 'stitch', 'stitches')} in ${plural(number, 'step')}`,
        given: [
          ['One shoulder', plural(shoulder, 'stitch', 'stitches')],
          ...(across === null ? [] : [['Across', plural(across, 'stitch', 'stitches')] as const]),
          ...(height ? height.value.given : gauge ? [['Row gauge', gauge.value.words] as const] : []),
        ],
        result: [
          ['Steps', `${steps.join(' + ')} = ${shoulder}`],
          ['Rows', `2 × ${number} = ${rows}`],
          ...(neck === null
            ? []
            : [['Neck', `${across} − 2 × ${shoulder} = ${plural(neck, 'stitch', 'stitches')}`] as const]),
          ...(gauge ? heightLines(rows, gauge.value, order) : []),
        ],
        instructions: [
          bindOffs(steps),
          `Or as short rows: ${shortRows(unworked)} Then work one row over all stitches.`,
        ],
        formulas: [
          `Steps: stitches ÷ steps, the rest as one stitch more in the first steps. Rows: two to a step, one for each shoulder.`,
          ...(gauge ? [spreadFormula] : []),
        ],
        rounding: stepRounding(isSlope, gauge !== null),
        source:
          'Source: plain division. The larger steps at the armhole edge are common practice, no source.',
      }),
    );
  },
});

/** `Bind off 11 stitches at the beginning of the next 2 rows, then 10 stitches at the beginning of the next 4 rows.` */
function bindOffs(steps: readonly Stitches[]): string {
  const sizes = [...new Set(steps)];
  const words = sizes.map((size) => {
    const rows = 2 * steps.filter((step) => step === size).length;
    return `${plural(size, 'stitch', 'stitches')} at the beginning of the next ${rows} rows`;
  });
  return `Bind off ${words.join(', then ')}.`;
}

function shortRows(unworked: readonly Stitches[]): string {
  const rows = unworked.flatMap((left, index) => {
    const last = plural(left, 'st');
    return [
      `Row ${2 * index + 1} (RS): K to last ${last}, w&t.`,
      `Row ${2 * index + 2} (WS): P to last ${last}, w&t.`,
    ];
  });
  return rows.length > 12
    ? `turn with ${englishList(unworked.map(String))} stitches left unworked at each end.`
    : rows.join(' ');
}

function stepRounding(isByHeight: boolean, hasLengths: boolean): string {
  const roundings = [
    ...(isByHeight
      ? ['steps to the nearest whole, half up, two rows to a step', 'exact rows to two decimals']
      : []),
    ...(hasLengths ? [lengthRounding] : []),
  ];
  const sum = 'The steps add up to the shoulder and differ by one stitch at most.';
  return roundings.length > 0 ? `${roundingWords(...roundings)} ${sum}` : sum;
}
