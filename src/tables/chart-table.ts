import type {ChartGrid} from '../knitting/chart/chart-grid.ts';
import {chartOfRows} from '../knitting/chart/chart-of-rows.ts';
import {readChart} from '../knitting/chart/read-chart.ts';
import type {UnitOrder} from '../knitting/format-quantity.ts';
import {rowsOf} from '../knitting/rows/known-rows.ts';
import type {Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {plural} from '../support/plural.ts';
import {failure, type Result, success} from '../support/result.ts';
import {count, itemNamed, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional} from './attributes.ts';
import {drawChart} from './chart-drawing.ts';
import {chartFigure} from './chart-figure.ts';
import {drawChartKey} from './chart-key-drawing.ts';
import {type ChartProportion, chartProportion} from './chart-proportion.ts';
import {type ChartBlock, chartBlock} from './chart-source.ts';
import {colourChartFigure} from './colour-chart-figure.ts';
import {computed} from './define-table.ts';

/** `::chart`: the item's written rows as a chart, with its key. */
export const chartTable = arithmeticTable({
  id: 'chart',
  summary: 'the written rows of an item as a chart with its key',
  example: '::chart{of=S-07 block=1 size=1}',
  attributes: {of: optional(itemNamed('of')), block: optional(count), size: optional(count)},
  compute(values, binder, item) {
    const shown = values.of ?? item;
    const block = chartBlock(shown, values.block, ['rows', 'chart']);
    return block.ok ? chartOfBlock(block.value, shown, binder.settings.units, values.size ?? 1) : block;
  },
});

/** A `rows` or `chart` block drawn; also what stands in the place of a fenced `chart` block. */
export function chartOfBlock(
  block: ChartBlock,
  item: Item,
  order: UnitOrder,
  wantedSize = 1,
): Result<ComputedTable> {
  const proportion = chartProportion(item, order);
  if (block.language === 'rows') {
    const {grid, problems, size, sizeCount} = chartOfRows(rowsOf(block), wantedSize);
    if (wantedSize < 1 || wantedSize > Math.max(1, sizeCount)) {
      return unreadable(
        `the rows of \`${item.id}\` have ${plural(sizeCount, 'size', 'sizes')}, there is no size \`${wantedSize}\``,
        'Count the sizes as the rows give them, beginning with 1.',
      );
    }
    if (!grid) return notDrawn(item);
    return success(
      computed(() =>
        stitchFigure(grid, item, proportion, {size, troubles: problems.map(({message}) => message)}),
      ),
    );
  }
  const {chart, problems} = readChart(block.text);
  if (!chart) return failure(...problems);
  if (chart.kind === 'colours')
    return success(computed(() => colourChartFigure(chart.grid, item, proportion)));
  return success(computed(() => stitchFigure(chart.grid, item, proportion, {size: '', troubles: []})));
}

export function notDrawn(item: Item): Result<never> {
  return unreadable(
    `the rows of \`${item.id}\` cannot be drawn`,
    'Write the stitches above the rows, such as `cast on: 29`, and a label before each row; at most 400 rows of at most 400 stitches are drawn.',
  );
}

function stitchFigure(
  grid: ChartGrid,
  item: Item,
  {ratio, words}: ChartProportion,
  {size, troubles}: {readonly size: string; readonly troubles: readonly string[]},
) {
  const hasRepeat = grid.rows.some(({repeat}) => repeat);
  const again = grid.rows.filter(({times, number}) => times > 1 && number !== null);
  const sizeWords = size === '' ? '' : `, size ${size}`;
  const caption = `Chart of ${item.id}: ${plural(grid.rows.length, grid.isRound ? 'round' : 'row', grid.isRound ? 'rounds' : 'rows')}, begun on ${plural(grid.start * grid.passes, 'stitch', 'stitches')}${sizeWords}`;
  const drawings = drawChart(grid, caption, ratio);
  return chartFigure({
    name: 'chart',
    caption,
    drawings,
    key: [drawChartKey(grid, ratio)],
    notes: [
      grid.isRound
        ? 'Seen from the right side; every round is read from right to left.'
        : 'Seen from the right side; a row begins where its number stands, right-side rows at the right, wrong-side rows at the left.',
      ...(drawings.length > 1 ? [`Drawn in ${drawings.length} parts, the right-hand one first.`] : []),
      ...(grid.passes > 1
        ? [
            `One of ${grid.passes} equal parts is drawn; each ${grid.isRound ? 'round' : 'row'} works it ${grid.passes} times.`,
          ]
        : hasRepeat
          ? ['The bold outline marks the repeat.']
          : []),
      ...again.map(({label, times}) => `${label} is worked ${times} times in all.`),
      ...troubles.map((trouble) => `The rows do not come out: ${trouble.replaceAll('`', '')}.`),
      words,
    ],
  });
}
