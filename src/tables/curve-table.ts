import {type CurveStep, curvedEdge} from '../knitting/curved-edge.ts';
import {stitches} from '../knitting/units.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {count, oneOf} from './attribute-readers.ts';
import {arithmeticTable, required, withDefault} from './attributes.ts';
import {gaugeAttributes} from './read-gauge.ts';
import {heightAttributes, readHeight} from './read-height.ts';
import {spreadFormula} from './spread-words.ts';

/** `::curve`: one edge of a neckline or raglan as steps on every second row. */
export const curveTable = arithmeticTable({
  id: 'curve',
  summary: 'one edge of a neckline or raglan as a curve of steps on every second row',
  example: '::curve{shape="neckline" stitches=16 rows=24 centre=12}',
  attributes: {
    shape: required(oneOf('neckline', 'raglan')),
    stitches: required(count),
    centre: withDefault(count, 0),
    ...heightAttributes,
    'row-gauge': gaugeAttributes['row-gauge'],
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const height = readHeight(values, binder.settings.units);
    if (!height.ok) return height;
    const {shape, stitches: width, centre} = values;
    const {rows, given, rounding, heightLines} = height.value;
    const edge = curvedEdge(shape, stitches(width), rows);
    if (!edge.ok) return edge;
    const {steps} = edge.value;
    const last = steps.at(-1)?.row ?? 0;
    return success(
      arithmeticFigure({
        name: 'curve',
        caption: `One edge of a ${shape}: ${plural(width, 'stitch', 'stitches')} over ${plural(rows, 'row')}`,
        given: [
          ['Stitches of one edge', `${width}`],
          ...given,
          ...(centre > 0
            ? [
                [
                  'Centre',
                  `${plural(centre, 'stitch', 'stitches')}, bound off or held before the curve`,
                ] as const,
              ]
            : []),
        ],
        result: [
          ['Gone on each row', steps.map(({row, stitches: gone}) => `row ${row}: ${gone}`).join('; ')],
          ['Together', `${steps.map(({stitches: gone}) => gone).join(' + ')} = ${width}`],
          ['Even at the head', plural(rows - last, 'row')],
          ['Off the curve', 'at most half a stitch on a row that is shaped'],
          ...heightLines,
          ...(centre > 0
            ? [['Whole width', `${centre} + 2 × ${width} = ${centre + 2 * width} stitches`] as const]
            : []),
        ],
        instructions: [
          `${centre > 0 ? `Bind off the ${centre} centre stitches and work each side by itself. ` : ''}At the shaped edge, on every second row: ${passages(steps, shape === 'neckline' ? 'bind off' : 'decrease')}.${rows - last > 1 ? ` Then work ${plural(rows - last, 'row')} even.` : ''}`,
        ],
        formulas: [
          shape === 'neckline'
            ? 'Stitches gone when the part t of the height is worked: stitches × √(1 − (1 − t)²), a quarter of an ellipse.'
            : 'Stitches gone when the part t of the height is worked: stitches × (3/4 × t + 1/4 × (2t − t²)), a straight line bowed a quarter of the way to a parabola.',
          'Each step: stitches gone after it, to the nearest stitch, less those gone before it.',
          ...(heightLines.length > 0 ? [spreadFormula] : []),
        ],
        rounding: `Rounded once, halves up: ${[...rounding, 'stitches gone to the nearest stitch'].join('; ')}.`,
        source: `Source: ${shape === 'neckline' ? 'the equation of the ellipse' : 'the equation of the parabola; a quarter of the bow is common practice, no source'}.`,
      }),
    );
  },
});

/** `bind off 4 stitches once, decrease 1 stitch 3 times, work 2 rows even, …`: neighbouring equal steps together. */
function passages(steps: readonly CurveStep[], several: string): string {
  const words: string[] = [];
  let previous = -1;
  let index = 0;
  while (index < steps.length) {
    const step = steps[index];
    if (!step) break;
    const skipped = index === 0 ? step.row - 1 : step.row - previous - 2;
    if (skipped > 0) words.push(`work ${plural(skipped, 'row')} even`);
    let times = 1;
    while (
      steps[index + times]?.stitches === step.stitches &&
      steps[index + times]?.row === step.row + 2 * times
    )
      times++;
    const work = step.stitches === 1 ? 'decrease 1 stitch' : `${several} ${step.stitches} stitches`;
    words.push(`${work} ${times === 1 ? 'once' : `${times} times`}`);
    previous = step.row + 2 * (times - 1);
    index += times;
  }
  return words.join(', ');
}
