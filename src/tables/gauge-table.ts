import type {Element} from 'hast';
import type {UnitOrder} from '../knitting/format-quantity.ts';
import type {CountUnit} from '../knitting/units.ts';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed, notComputed, type Table} from './define-table.ts';
import {changeFormula, changeSource, lengthRounding, roundingWords} from './formula-words.ts';
import {across, type GaugeDirection, gaugeColumns, upward} from './gauge-direction.ts';
import {workedExtents, workedMeans} from './gauge-formulas.ts';
import {gaugeLines} from './gauge-lines.ts';
import {gaugePlot} from './gauge-plot.ts';
import {gaugeScales} from './gauge-scale.ts';
import {blockingPair, type MeasuredState, measuredStates, stateHeading} from './measured-states.ts';

/**
 * `::gauge`: the counts of stitches and rows, their mean and spread, the width of 100 stitches and the height of 100
 * rows with the difference that the spread makes, and the change on blocking; with a dot plot of the counts.
 */
export const gaugeTable: Table = {
  id: 'gauge',
  summary: 'counts of stitches and rows with mean, spread, width of 100 stitches and change on blocking',
  compute: gaugeContent,
};

function gaugeContent(binder: Binder, item: Item): ComputedTable {
  const states = measuredStates(item).filter(({stitches, rows}) => stitches.length + rows.length > 0);
  if (states.length === 0) {
    return notComputed(
      `\`${item.id}\` has no gauge counts`,
      'Write the counts under `measured`, such as `stitches: [20 over 10 cm, 20.5 over 10 cm]`.',
    );
  }
  return computed(() => gaugeFigure(binder, item.id, states));
}

function gaugeFigure(binder: Binder, id: string, states: readonly MeasuredState[]): Element {
  const order = binder.settings.units;
  const parts = [...gaugePart(across, states, order), ...gaugePart(upward, states, order)];
  const hasChange = blockingPair(states) !== null;
  const hasSpread = states.some(({stitches, rows}) => stitches.length > 1 || rows.length > 1);
  const [first, second] = gaugeScales(order);
  return computedFigure({
    name: 'gauge',
    caption: `Gauge of ${id}: what was counted, and what follows from it`,
    columns: [
      'Gauge',
      ...states.map((state) => stateHeading(state, binder)),
      ...(hasChange ? ['change'] : []),
    ],
    groups: parts.map(({group}) => group),
    drawings: parts.flatMap(({plot}) => plot),
    formulas: [
      `Mean: each count divided by the length it was counted over, all added up and divided by how many there are. ${parts.map(({means}) => means).join(' ')}`,
      `Width of 100 stitches, height of 100 rows: 100 ÷ mean. ${parts.map(({extents}) => extents).join(' ')}`,
      ...(hasSpread ? spreadFormulas : []),
      ...(hasChange ? [changeFormula] : []),
    ],
    rounding: roundingWords(first.rounding, second.rounding, lengthRounding, 'percent to one decimal'),
    source: hasChange
      ? `Source: ${changeSource}; the rest is plain arithmetic on the counts.`
      : 'Source: plain arithmetic on the counts.',
  });
}

const spreadFormulas = [
  'Spread: the highest count minus the lowest, over the same length; in percent, 100 × spread ÷ mean.',
  'Difference at the lowest and at the highest count: 100 ÷ that count, minus 100 ÷ mean.',
];

interface GaugePart {
  readonly group: FigureGroup;
  readonly means: string;
  readonly extents: string;
  /** Nothing when each state was counted at one place: a single dot shows no spread. */
  readonly plot: readonly Element[];
}

/** Everything about one direction; nothing when it was never counted. */
function gaugePart<U extends CountUnit>(
  direction: GaugeDirection<U>,
  states: readonly MeasuredState[],
  order: UnitOrder,
): readonly GaugePart[] {
  const columns = gaugeColumns(direction, states);
  if (columns.every(({summary}) => summary === null)) return [];
  return [
    {
      group: gaugeLines(direction, columns, order),
      means: workedMeans(direction, columns, order),
      extents: workedExtents(direction, columns, order),
      plot: columns.some(({counts}) => counts.length > 1)
        ? [gaugePlot(direction, columns, gaugeScales(order)[0])]
        : [],
    },
  ];
}
