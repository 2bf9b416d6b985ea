import {formatNumber} from '../knitting/format-quantity.ts';
import {type Interval, slope} from '../knitting/slope.ts';
import {stitches} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {success} from '../support/result.ts';
import {arithmeticFigure} from './arithmetic-figure.ts';
import {count, oneOf} from './attribute-readers.ts';
import {arithmeticTable, required, withDefault} from './attributes.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes} from './read-gauge.ts';
import {heightAttributes, readHeight} from './read-height.ts';
import {spreadFormula} from './spread-words.ts';

/** `::slope`: from so many stitches to so many over so many rows, at one edge or both. */
export const slopeTable = arithmeticTable({
  id: 'slope',
  summary: 'shaping from one stitch count to another over so many rows, every k-th and next row',
  example: '::slope{from=38 to=60 rows=108}',
  attributes: {
    from: required(count),
    to: required(count),
    edges: withDefault(oneOf('both', 'one'), 'both'),
    on: withDefault(oneOf('every row', 'right-side rows'), 'every row'),
    ...heightAttributes,
    'row-gauge': gaugeAttributes['row-gauge'],
    'gauge-of': gaugeAttributes['gauge-of'],
  },
  compute(values, binder) {
    const order = binder.settings.units;
    const height = readHeight(values, order);
    if (!height.ok) return height;
    const {rows, given, rounding, heightLines} = height.value;
    const {from, to} = values;
    const edges = values.edges === 'both' ? 2 : 1;
    const onlyRight = values.on === 'right-side rows';
    const result = slope({from: stitches(from), to: stitches(to), rows, edges, onlyRight});
    if (!result.ok) return result;
    const {change, times, intervals, shapingRows, evenRows, mostOff, mostOffInGroups} = result.value;
    const where = edges === 2 ? 'at each end' : 'at the shaped edge';
    return success(
      arithmeticFigure({
        name: 'slope',
        caption: `From ${from} to ${to} stitches over ${rows} rows`,
        given: [
          ['Stitches', `${from} to ${to}`],
          ...given,
          ['Edges', edges === 2 ? 'both' : 'one'],
          ['Shaped on', onlyRight ? 'right-side rows only' : 'any row'],
        ],
        result: [
          [
            'Shaping rows',
            `${Math.abs(to - from)} ÷ ${edges} = ${times}, ${plural(edges, 'stitch', 'stitches')} each`,
          ],
          ['Intervals', sumOf(intervals, evenRows, rows)],
          ['On rows', englishList(shapingRows.map(String))],
          [
            'Off the straight line',
            `at most ${formatNumber(mostOff, 2)} rows on the rows named, ${formatNumber(mostOffInGroups, 2)} in groups`,
          ],
          ...heightLines,
        ],
        instructions: [
          `${change === 'decrease' ? 'Decrease' : 'Increase'} 1 stitch ${where} ${words(intervals)}${evenRows > 0 ? `, then work ${plural(evenRows, 'row')} even` : ''}: ${to} stitches. For the straightest edge work the shaping on the rows named instead.`,
        ],
        formulas: [
          `Shaping rows: difference ÷ stitches of one shaping row. Rows ÷ shaping rows = k and a rest: the rest at k + ${onlyRight ? 2 : 1}, the others at k${onlyRight ? ', counted in pairs of rows' : ''}. On rows: the number of the shaping × rows ÷ shaping rows, cut to a whole ${onlyRight ? 'pair, of which the first row, a right-side row, is shaped' : 'row'}.`,
          ...(heightLines.length > 0 ? [spreadFormula] : []),
        ],
        rounding: roundingWords(
          ...rounding,
          'rows off the line to two decimals',
          ...(heightLines.length > 0 ? [lengthRounding] : []),
        ),
        source:
          'Source: plain division; see the worked examples of sleeves published by the trade. Which interval comes first is common practice, no source.',
      }),
    );
  },
});

function words(intervals: readonly Interval[]): string {
  const [only] = intervals;
  if (only?.every === 1 && intervals.length === 1) return `on every row, ${plural(only.times, 'time')}`;
  return englishList(
    intervals.map(({every, times}) => `every ${ordinal(every)} row ${plural(times, 'time')}`),
  );
}

function sumOf(intervals: readonly Interval[], evenRows: number, rows: number): string {
  const terms = intervals.map(({every, times}) => `${times} × ${every}`);
  return `${[...terms, ...(evenRows > 0 ? [`${evenRows}`] : [])].join(' + ')} = ${rows} rows`;
}

function ordinal(number: number): string {
  const last = number % 10;
  const isTeen = Math.floor(number / 10) % 10 === 1;
  return `${number}${isTeen || last > 3 || last === 0 ? 'th' : ['th', 'st', 'nd', 'rd'][last]}`;
}
