import type {Element} from 'hast';
import {s} from 'hastscript';
import type {SquareRange} from '../knitting/chart/chart-grid.ts';
import {workedColours} from '../knitting/chart/colour-facts.ts';
import type {ChartColour, ColourGrid} from '../knitting/chart/colour-grid.ts';
import {relativeLuminance} from '../knitting/chart/contrast.ts';
import {type Box, inBox} from './chart-box.ts';
import {chartSvg, repeatOutline, rowNumbers, squareLines} from './chart-frame-lines.ts';
import {type ChartScale, chartScale} from './chart-layout.ts';
import {circle, closed, stroke} from './chart-path.ts';

/** The chart of colours: filled squares, each colour but the first with a small mark, so that it can be read in grey. */
export function drawColourChart(grid: ColourGrid, name: string, ratio: number): Element[] {
  const every = new Set(Array.from({length: grid.width + 1}, (_, line) => line));
  const scale = chartScale(grid.width, ratio, every);
  return scale.parts.map((part, index) => {
    const isOnly = scale.parts.length === 1;
    const title = isOnly ? name : `${name}, part ${index + 1} of ${scale.parts.length} from the right`;
    return drawPart(grid, part, scale, title, index === 0 ? inWords(grid) : '');
  });
}

function drawPart(
  grid: ColourGrid,
  part: SquareRange,
  scale: ChartScale,
  title: string,
  words: string,
): Element {
  const {square, rowHeight} = scale;
  const fills = grid.colours.map(() => '');
  const marks = grid.colours.map(() => '');
  grid.rows.forEach(({cells}, row) => {
    const y = (grid.rows.length - 1 - row) * rowHeight;
    for (let from = part.from; from < part.to; ) {
      const colour = cells[from] ?? null;
      let to = from + 1;
      while (to < part.to && (cells[to] ?? null) === colour) to += 1;
      const x = (from - part.from) * square;
      if (colour !== null) {
        fills[colour] += rectangle({x, y, width: (to - from) * square, height: rowHeight});
        for (let at = from; at < to; at++) {
          marks[colour] += colourMark(colour, {
            x: (at - part.from) * square,
            y,
            width: square,
            height: rowHeight,
          });
        }
      }
      from = to;
    }
  });
  const width = (part.to - part.from) * square;
  const framed = grid.rows.map(({number, side, repeat}) => ({name: String(number), side, repeat}));
  return chartSvg(title, words, width, grid.rows.length * rowHeight, [
    ...grid.colours.flatMap((colour, index) =>
      paint(grid.colours, colour, fills[index] ?? '', marks[index] ?? ''),
    ),
    squareLines(grid.rows.length, part, scale, () => false),
    ...repeatOutline(framed, part, scale),
    ...rowNumbers(framed, width, scale),
  ]);
}

/** One square of a colour, for the key. */
export function colourSwatch(colours: readonly ChartColour[], index: number): Element {
  const box = {x: 0, y: 0, width: 5, height: 3.6};
  const colour = colours[index];
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: '5.6mm',
      height: '4.2mm',
      viewBox: '-0.3 -0.3 5.6 4.2',
      fill: 'currentColor',
    },
    [
      s('title', `square of ${colour?.name ?? ''}`),
      ...(colour ? paint(colours, colour, rectangle(box), colourMark(index, box)) : []),
      s('path', {d: rectangle(box), fill: 'none', stroke: 'currentColor', strokeWidth: 0.2}),
    ],
  );
}

function paint(colours: readonly ChartColour[], colour: ChartColour, fill: string, mark: string): Element[] {
  if (fill === '') return [];
  const hex = colour.hex ?? greyFor(colours, colour);
  const pen = relativeLuminance(hex) > 0.2 ? 'black' : 'white';
  const marks =
    mark === ''
      ? []
      : [s('path', {d: mark, fill: 'none', stroke: pen, strokeWidth: 0.3, strokeOpacity: 0.7})];
  return [s('path', {d: fill, fill: hex}), ...marks];
}

/** Colours whose look is not stated are drawn in greys, from light to dark in the order of the key. */
function greyFor(colours: readonly ChartColour[], colour: ChartColour): string {
  const unseen = colours.filter(({hex}) => hex === null);
  const step = unseen.length < 2 ? 0 : unseen.indexOf(colour) / (unseen.length - 1);
  const level = Math.round(245 - step * 185)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}

function colourMark(colour: number, box: Box): string {
  const line = (...points: readonly (readonly [number, number])[]) =>
    stroke(...points.map(([across, down]) => inBox(box, across, down)));
  const size = Math.min(box.width, box.height);
  switch (colour % 6) {
    case 0:
      return '';
    case 1:
      return circle(inBox(box, 0.5, 0.5), 0.08 * size);
    case 2:
      return line([0.35, 0.3], [0.65, 0.7]) + line([0.65, 0.3], [0.35, 0.7]);
    case 3:
      return circle(inBox(box, 0.5, 0.5), 0.24 * size);
    case 4:
      return line([0.3, 0.5], [0.7, 0.5]);
    default:
      return line([0.5, 0.25], [0.5, 0.75]);
  }
}

function rectangle({x, y, width, height}: Box): string {
  return closed([x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

function inWords(grid: ColourGrid): string {
  return grid.rows
    .map((row) => {
      const runs: {colour: number; count: number}[] = [];
      for (const colour of workedColours(row)) {
        const last = runs.at(-1);
        if (last?.colour === colour) last.count += 1;
        else runs.push({colour, count: 1});
      }
      const words = runs.map(({colour, count}) => `${count} ${grid.colours[colour]?.name ?? ''}`);
      return `Row ${row.number} (${row.side}): ${words.join(', ')}.`;
    })
    .join(' ');
}
