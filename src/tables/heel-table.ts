import {heelTurns, usualMiddle} from '../knitting/heel-turns.ts';
import {rows, stitches} from '../knitting/units.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {count} from './attribute-readers.ts';
import {arithmeticTable, optional, required} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, rowGauge} from './read-gauge.ts';
import {heightLines} from './read-height.ts';
import {spreadFormula} from './spread-words.ts';

/** `::heel`: a sock heel turned with short rows. */
export const heelTable = arithmeticTable({
  id: 'heel',
  summary: 'a sock heel turned with short rows',
  example: '::heel{stitches=30 middle=10}',
  attributes: {
    stitches: required(count),
    middle: optional(count),
    'row-gauge': gaugeAttributes['row-gauge'],
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const heel = stitches(values.stitches);
    const middle = values.middle === null ? usualMiddle(heel) : stitches(values.middle);
    const result = heelTurns(heel, middle);
    if (!result.ok) return result;
    const hasGauge = values['row-gauge'] !== null || values['gauge-of'] !== null;
    const gauge = hasGauge ? rowGauge({...values, gauge: null}, order) : null;
    if (gauge && !gauge.ok) return gauge;
    const {each, shorter, longer, first, last} = result.value;
    const all = rows(shorter + longer);
    return success(
      arithmeticFigure({
        name: 'heel',
        caption: `A heel of ${heel} stitches in short rows`,
        given: [
          ['Heel', plural(heel, 'stitch', 'stitches')],
          [
            'Middle',
            `${plural(middle, 'stitch', 'stitches')}${values.middle === null ? ', the usual third' : ''}`,
          ],
          ...(gauge ? [['Row gauge', gauge.value.words] as const] : []),
        ],
        result: [
          ['Turned at each side', `(${heel} − ${middle}) ÷ 2 = ${plural(each, 'stitch', 'stitches')}`],
          ['Shorter rows', `${shorter}: ${first} stitches in the first, ${last} in the last`],
          ['Longer rows', `${longer}: back to all ${heel} stitches`],
          ...(gauge ? heightLines(all, gauge.value, order) : []),
        ],
        instructions: [
          `Row 1 (RS): K${first}, w&t. Row 2 (WS): P${first - 1}, w&t. Work one stitch fewer in each row until the last, row ${shorter} (WS): P${last}, w&t.`,
          `Then work one stitch more in each row, picking up its wrap, until all ${heel} stitches are worked.`,
        ],
        formulas: [
          'Row r of the shorter rows works heel − r stitches; there are heel − middle of them, and as many longer ones.',
          ...(gauge ? [spreadFormula] : []),
        ],
        rounding: gauge ? roundingWords(lengthRounding) : 'Nothing is rounded.',
        source: 'Source: plain arithmetic. A third in the middle is common practice, no source.',
      }),
    );
  },
});
