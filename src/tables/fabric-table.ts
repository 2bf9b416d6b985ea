import {type ChartedRows, chartOfRows} from '../knitting/chart/chart-of-rows.ts';
import {readChart} from '../knitting/chart/read-chart.ts';
import {rowsOf} from '../knitting/rows/known-rows.ts';
import {failure, type Result, success} from '../support/result.ts';
import {count, itemNamed, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional} from './attributes.ts';
import {chartFigure} from './chart-figure.ts';
import {chartProportion} from './chart-proportion.ts';
import {type ChartBlock, chartBlock} from './chart-source.ts';
import {notDrawn} from './chart-table.ts';
import {computed} from './define-table.ts';
import {drawFabric, mostDrawnRows} from './fabric-drawing.ts';

/** `::fabric`: the knitted face that the written rows make. */
export const fabricTable = arithmeticTable({
  id: 'fabric',
  summary: 'a drawing of the knitted face that the written rows make',
  example: '::fabric{of=S-07 block=1}',
  attributes: {of: optional(itemNamed('of')), block: optional(count)},
  compute(values, binder, item) {
    const shown = values.of ?? item;
    const block = chartBlock(shown, values.block, ['rows', 'chart']);
    if (!block.ok) return block;
    const charted = chartedBlock(block.value);
    if (!charted.ok) return charted;
    const {grid, problems} = charted.value;
    if (!grid) return notDrawn(shown);
    const {ratio, words} = chartProportion(shown, binder.settings.units);
    const caption = `The fabric of ${shown.id} as its rows make it, seen from the right side: a drawing, not a photograph`;
    const isCut = grid.rows.length > mostDrawnRows;
    return success(
      computed(() =>
        chartFigure({
          name: 'fabric',
          caption,
          drawings: [drawFabric(grid, caption, ratio)],
          notes: [
            'V is a knit stitch, a bump across is a purl stitch, a white hole is a yarn over; the first row is the lowest.',
            ...(isCut ? [`The first ${mostDrawnRows} of ${grid.rows.length} rows are drawn.`] : []),
            ...problems.map(({message}) => `The rows do not come out: ${message.replaceAll('`', '')}.`),
            words.replace('Squares', 'Stitches'),
          ],
        }),
      ),
    );
  },
});

function chartedBlock(block: ChartBlock): Result<Pick<ChartedRows, 'grid' | 'problems'>> {
  if (block.language === 'rows') return success(chartOfRows(rowsOf(block)));
  const {chart, problems} = readChart(block.text);
  if (!chart) return failure(...problems);
  if (chart.kind === 'stitches') return success({grid: chart.grid, problems});
  return unreadable(
    'the chart shows colours, not stitches',
    'Show it with `::colour-chart`, or say which block is meant, such as `block=2`.',
  );
}
