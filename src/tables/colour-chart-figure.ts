import type {Element} from 'hast';
import {h} from 'hastscript';
import type {ColourGrid} from '../knitting/chart/colour-grid.ts';
import type {Item} from '../model/binder.ts';
import {plural} from '../support/plural.ts';
import {chartFigure} from './chart-figure.ts';
import type {ChartProportion} from './chart-proportion.ts';
import {colourSwatch, drawColourChart} from './colour-drawing.ts';

export function colourChartCaption(grid: ColourGrid, item: Item): string {
  const size = `${plural(grid.width, 'stitch', 'stitches')} by ${plural(grid.rows.length, 'row', 'rows')}`;
  return `Colour chart of ${item.id}: ${size}, ${grid.method}`;
}

/** A chart of colours with its key. */
export function colourChartFigure(grid: ColourGrid, item: Item, {ratio, words}: ChartProportion): Element {
  const caption = colourChartCaption(grid, item);
  return chartFigure({
    name: 'chart',
    caption,
    drawings: drawColourChart(grid, caption, ratio),
    key: [
      h('table', {className: ['key']}, [
        h('thead', [h('tr', [h('th', {scope: 'col'}, 'Square'), h('th', {scope: 'col'}, 'Colour')])]),
        h(
          'tbody',
          grid.colours.map(({name}, index) =>
            h('tr', [h('th', {scope: 'row'}, [colourSwatch(grid.colours, index)]), h('td', name)]),
          ),
        ),
      ]),
    ],
    notes: [
      grid.isRound
        ? 'Knit every round; rounds are read from right to left.'
        : 'Knit on right-side rows and purl on wrong-side rows; a row begins where its number stands.',
      ...(grid.rows.some(({repeat}) => repeat) ? ['The bold outline marks the repeat.'] : []),
      words,
    ],
  });
}
