import {changeOfLength} from '../knitting/blocking-change.ts';
import {
  formatLength,
  formatLengthDifference,
  formatMeasured,
  formatPercentChange,
  type UnitOrder,
} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {type Millimetres, millimetres} from '../knitting/units.ts';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import type {Size} from '../model/schema/item-fields.ts';
import {capitalized} from './capitalized.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed, notComputed, type Table} from './define-table.ts';
import {changeFormula, changeSource, lengthRounding, roundingWords} from './formula-words.ts';
import {blockingPair, type MeasuredState, measuredStates, stateHeading} from './measured-states.ts';

/** `::size`: the four edges as measured, their means and differences, and the change on blocking. */
export const sizeTable: Table = {
  id: 'size',
  summary: 'the four edges with mean width and height, unevenness and change on blocking',
  compute: sizeContent,
};

const edges = ['top', 'bottom', 'left', 'right'] as const;
type Edge = (typeof edges)[number];

function sizeContent(binder: Binder, item: Item): ComputedTable {
  const states = measuredStates(item).filter(({size}) => edges.some((edge) => size[edge]));
  if (states.length === 0) {
    return notComputed(
      `\`${item.id}\` has no measured edges`,
      'Write the edges under `measured`, such as `size: { top: 10.2 cm, bottom: 10.4 cm, left: 10.6 cm, right: 10.5 cm }`.',
    );
  }
  const {units} = binder.settings;
  const hasChange = blockingPair(states) !== null;
  return computed(() =>
    computedFigure({
      name: 'size',
      caption: `Size of ${item.id}: the edges, laid flat`,
      columns: [
        'Edge',
        ...states.map((state) => stateHeading(state, binder)),
        ...(hasChange ? ['change'] : []),
      ],
      groups: [{title: null, lines: sizeLines(states, units)}],
      drawings: [],
      formulas: [
        'Mean width: (top + bottom) ÷ 2. Mean height: (left + right) ÷ 2.',
        ...(hasChange ? [changeFormula] : []),
      ],
      rounding: `The edges stand as measured. ${roundingWords(lengthRounding, ...(hasChange ? ['percent to one decimal'] : []))}`,
      source: hasChange
        ? `Source: ${changeSource}; the rest is plain arithmetic on the edges.`
        : 'Source: plain arithmetic on the edges.',
    }),
  );
}

function sizeLines(states: readonly MeasuredState[], order: UnitOrder): FigureGroup['lines'] {
  const pair = blockingPair(states);

  const line = (label: string, show: (size: Size) => string | null, change: string) => ({
    label,
    cells: [...states.map(({size}) => show(size) ?? 'not measured'), ...(pair ? [change] : [])],
  });
  const changeOf = (measure: (size: Size) => Millimetres | null): string => {
    const [before, after] = pair ? [measure(pair.before.size), measure(pair.after.size)] : [null, null];
    if (!before || !after || before.equals(Fraction.zero)) return '';
    return formatPercentChange(changeOfLength(before, after));
  };
  const edgeLine = (edge: Edge) =>
    line(
      capitalized(edge),
      ({[edge]: length}) => (length ? formatMeasured(length, order) : null),
      changeOf((size) => size[edge]?.millimetres ?? null),
    );
  const meanLine = (label: string, one: Edge, other: Edge) =>
    line(
      label,
      (size) => withBoth(size, one, other, (a, b) => formatLength(meanOf(a, b), order)),
      changeOf((size) => withBoth(size, one, other, meanOf)),
    );
  const differenceLine = (one: Edge, other: Edge) =>
    line(
      `${capitalized(one)} minus ${other}`,
      (size) => withBoth(size, one, other, (a, b) => formatLengthDifference(millimetres(a.minus(b)), order)),
      '',
    );

  return [
    ...edges.map(edgeLine),
    meanLine('Mean width', 'top', 'bottom'),
    meanLine('Mean height', 'left', 'right'),
    differenceLine('top', 'bottom'),
    differenceLine('left', 'right'),
  ];
}

/** Null unless both edges were measured. */
function withBoth<T>(
  size: Size,
  one: Edge,
  other: Edge,
  combine: (a: Millimetres, b: Millimetres) => T,
): T | null {
  const [a, b] = [size[one], size[other]];
  return a && b ? combine(a.millimetres, b.millimetres) : null;
}

function meanOf(a: Millimetres, b: Millimetres): Millimetres {
  return millimetres(a.plus(b).dividedBy(Fraction.ofInteger(2)));
}
