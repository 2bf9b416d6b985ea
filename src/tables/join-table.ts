import type {UnitOrder} from '../knitting/format-quantity.ts';
import {formatLengthDifference, formatPercent} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {joinEdges} from '../knitting/join-edges.ts';
import type {Spread} from '../knitting/uncertainty.ts';
import {spreadOver, spreadOverBoth} from '../knitting/uncertainty.ts';
import {millimetres} from '../knitting/units.ts';
import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {count, unreadable} from './attribute-readers.ts';
import {arithmeticTable, required} from './attributes.ts';
import {foldedWords} from './folded-words.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {gaugeAttributes, rowGauge, stitchGauge, type WrittenGauge} from './read-gauge.ts';
import {lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

/** `::join`: two edges with different counts sewn together, which meets which. */
export const joinTable = arithmeticTable({
  id: 'join',
  summary: 'two edges of different counts joined: which meets which, with pins at the quarters',
  example: '::join{edge="45 sts" to="60 rows"}',
  attributes: {edge: required(edgeOf), to: required(edgeOf), ...gaugeAttributes},
  compute(values, binder) {
    const order = binder.settings.units;
    const {edge, to} = values;
    const result = joinEdges(edge.count, to.count);
    if (!result.ok) return result;
    const hasGauge = values.gauge !== null || values['row-gauge'] !== null || values['gauge-of'] !== null;
    const lengths = hasGauge ? lengthsOf(edge, to, values, order) : null;
    if (lengths && !lengths.ok) return lengths;
    const {fewer, meets, kinds, pins} = result.value;
    const [short, long] = fewer === 'one' ? [edge, to] : [to, edge];
    const words = (times: number) => `1 ${one(short)} to ${plural(times, one(long), long.unit)}`;
    return success(
      arithmeticFigure({
        name: 'join',
        caption: `${edgeWords(edge)} joined to ${edgeWords(to)}`,
        given: [['One edge', edgeWords(edge)], ['The other', edgeWords(to)], ...(lengths?.value.given ?? [])],
        result: [
          [
            'Meets',
            kinds.map(({meets: each, times}) => `${words(each)}, ${plural(times, 'time')}`).join('; '),
          ],
          [
            'Together',
            `${kinds.map(({meets: each, times}) => `${times} × ${each}`).join(' + ')} = ${long.count} ${long.unit}, ${kinds.map(({times}) => times).join(' + ')} = ${short.count} ${short.unit}`,
          ],
          ...pins.map(
            ({part, one: first, other}): FigureLine => [
              `Pin at ${part}`,
              `after ${countWords(edge, first)} and ${countWords(to, other)}`,
            ],
          ),
          ...(lengths?.value.lines ?? []),
        ],
        instructions: [`From the beginning of the seam: ${foldedWords(meets.map(words))}.`],
        formulas: [
          'The longer edge is shared over the shorter one: after the first n of the shorter, n × longer ÷ shorter of the longer are met, cut to a whole number.',
          ...(lengths
            ? ['Length: count ÷ gauge. Eased in: 100 × (longer − shorter) ÷ shorter.', spreadFormula]
            : []),
        ],
        rounding: lengths
          ? `${roundingWords(lengthRounding, 'percent to one decimal')} The counts are exact: no two meetings differ by more than one.`
          : 'Nothing is lost: the counts add up, and no two meetings differ by more than one.',
        source: 'Source: plain arithmetic.',
      }),
    );
  },
});

interface Edge {
  readonly count: number;
  readonly unit: 'stitches' | 'rows';
}

/** How long both edges are, and how much of the longer one the seam takes up. */
function lengthsOf(
  edge: Edge,
  to: Edge,
  values: WrittenGauge,
  order: UnitOrder,
): Result<{readonly given: readonly FigureLine[]; readonly lines: readonly FigureLine[]}> {
  const units = new Set([edge.unit, to.unit]);
  const across = units.has('stitches') ? stitchGauge(values, order) : null;
  const up = units.has('rows') ? rowGauge(values, order) : null;
  if (across && !across.ok) return across;
  if (up && !up.ok) return up;
  const [stitchwise, rowwise] = [across?.value, up?.value];
  const gauges = [stitchwise?.summary, rowwise?.summary].flatMap((summary) => summary ?? []);
  const length = (one: Edge, at: {stitches: Fraction; rows: Fraction}) =>
    Fraction.ofInteger(one.count).dividedBy(at[one.unit]);
  const difference = (at: {stitches: Fraction; rows: Fraction}) => length(edge, at).minus(length(to, at));
  const unknown = Fraction.one;
  const spread: Spread =
    stitchwise && rowwise
      ? spreadOverBoth(stitchwise.summary, rowwise.summary, (stitches, rows) => difference({stitches, rows}))
      : stitchwise
        ? spreadOver(stitchwise.summary, (stitches) => difference({stitches, rows: unknown}))
        : rowwise
          ? spreadOver(rowwise.summary, (rows) => difference({stitches: unknown, rows}))
          : {mean: Fraction.zero, least: Fraction.zero, most: Fraction.zero};
  const mean = {stitches: stitchwise?.summary.mean ?? unknown, rows: rowwise?.summary.mean ?? unknown};
  const [first, second] = [length(edge, mean), length(to, mean)];
  const shorter = first.compare(second) < 0 ? first : second;
  const eased = spread.mean.absolute().dividedBy(shorter).times(Fraction.ofInteger(100));
  const shown = (value: Fraction) => formatLengthDifference(millimetres(value), order);
  return success({
    given: [
      ...(stitchwise ? [['Gauge', stitchwise.words] as const] : []),
      ...(rowwise ? [['Row gauge', rowwise.words] as const] : []),
    ],
    lines: [
      [`Length of ${edgeWords(edge)}`, lengthShown(order)(first)],
      [`Length of ${edgeWords(to)}`, lengthShown(order)(second)],
      ['Difference, eased in', `${shown(spread.mean)}, ${formatPercent(eased)} of the shorter`],
      ['Spread of the difference', spreadWords(spread, gauges, shown)],
    ],
  });
}

function edgeOf(text: string): Result<Edge> {
  const {unit = ''} = /\d\s*(?<unit>\p{L}+)\.?\s*$/u.exec(text)?.groups ?? {};
  const number = count(text);
  if (!number.ok) return number;
  if (/^(?:sts?|stitch(?:es)?)$/i.test(unit)) return success({count: number.value, unit: 'stitches'});
  if (/^(?:rows?|rounds?|rnds?)$/i.test(unit)) return success({count: number.value, unit: 'rows'});
  return unreadable(
    `\`${text}\` does not say stitches or rows`,
    'Write the count and what is counted, such as `45 sts` or `60 rows`.',
  );
}

function one({unit}: Edge): string {
  return unit === 'rows' ? 'row' : 'stitch';
}

function countWords(edge: Edge, number: number): string {
  return plural(number, one(edge), edge.unit);
}

function edgeWords(edge: Edge): string {
  return countWords(edge, edge.count);
}
