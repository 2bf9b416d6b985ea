import type {Element} from 'hast';
import {s} from 'hastscript';
import type {ChartGrid, SquareRange} from '../knitting/chart/chart-grid.ts';
import {type ChartKey, chartKey} from '../knitting/chart/chart-key.ts';
import {writeRowSteps} from '../knitting/chart/grid-to-rows.ts';
import type {Box} from './chart-box.ts';
import {chartSvg, repeatOutline, rowNumbers, squareLines} from './chart-frame-lines.ts';
import {type ChartScale, chartScale} from './chart-layout.ts';
import type {Mark} from './chart-mark.ts';
import {markOf} from './chart-marks.ts';
import {closed} from './chart-path.ts';
import {turnMarks} from './chart-turns.ts';

/** The drawings of a chart of stitches: one, or several from right to left when it is wider than the leaf. */
export function drawChart(grid: ChartGrid, name: string, ratio: number): Element[] {
  const key = chartKey(grid);
  const placed = placeCells(grid);
  const scale = chartScale(grid.width, ratio, wholeEdges(placed, grid));
  return scale.parts.map((part, index) => {
    const isOnly = scale.parts.length === 1;
    const title = isOnly ? name : `${name}, part ${index + 1} of ${scale.parts.length} from the right`;
    return drawPart(grid, placed, {key, scale, part, title, words: index === 0 ? inWords(grid) : ''});
  });
}

interface PlacedCell {
  readonly row: number;
  readonly from: number;
  readonly cell: ChartGrid['rows'][number]['cells'][number];
}

function placeCells({rows}: ChartGrid): PlacedCell[] {
  return rows.flatMap(({cells}, row) => {
    let at = 0;
    return cells.map((cell) => {
      at += cell.squares;
      return {row, from: at - cell.squares, cell};
    });
  });
}

/** The lines between squares at which no row has a stitch that is wider than one square. */
function wholeEdges(placed: readonly PlacedCell[], {width}: ChartGrid): ReadonlySet<number> {
  const edges = new Set(Array.from({length: width + 1}, (_, line) => line));
  for (const {from, cell} of placed) {
    for (let line = from + 1; line < from + cell.squares; line++) edges.delete(line);
  }
  return edges;
}

interface Part {
  readonly key: ChartKey;
  readonly scale: ChartScale;
  readonly part: SquareRange;
  readonly title: string;
  readonly words: string;
}

function drawPart(
  grid: ChartGrid,
  placed: readonly PlacedCell[],
  {key, scale, part, title, words}: Part,
): Element {
  const {square, rowHeight} = scale;
  const shown = placed.filter(({from, cell}) => from < part.to && from + cell.squares > part.from);
  const boxOf = ({row, from, cell}: PlacedCell): Box => ({
    x: (from - part.from) * square,
    y: (grid.rows.length - 1 - row) * rowHeight,
    width: cell.squares * square,
    height: rowHeight,
  });
  let [empty, waiting] = ['', ''];
  const marks: Mark[] = [];
  const covered = new Set<string>();
  for (const placedCell of shown) {
    const {cell, row, from} = placedCell;
    const box = boxOf(placedCell);
    for (let line = from + 1; line < from + cell.squares; line++) covered.add(`${row} ${line}`);
    if (cell.kind === 'no stitch') empty += outlineOf(box);
    else if (cell.kind === 'unworked') waiting += outlineOf(box);
    else
      marks.push(markedCell(cell.face, key.entryOf(cell, grid.rows[row] ?? {side: 'RS'})?.variant ?? 0, box));
  }
  const framed = grid.rows.map(({number, label, side, repeat, isSound}) => ({
    name: `${number ?? (/^\d/.test(label) ? label : '')}${isSound ? '' : '!'}`,
    side,
    repeat,
  }));
  const width = (part.to - part.from) * square;
  return chartSvg(title, words, width, grid.rows.length * rowHeight, [
    ...(empty === '' ? [] : [s('path', {d: empty, fillOpacity: 0.28})]),
    ...(waiting === '' ? [] : [s('path', {d: waiting, fillOpacity: 0.1})]),
    squareLines(grid.rows.length, part, scale, (row, line) => covered.has(`${row} ${line}`)),
    ...drawMarks(marks),
    ...turnMarks(grid, part, scale),
    ...repeatOutline(framed, part, scale),
    ...rowNumbers(framed, width, scale),
  ]);
}

/** A symbol; of several that look alike, the later ones carry ticks at the upper left. */
export function markedCell(face: Parameters<typeof markOf>[0], variant: number, box: Box): Mark {
  const mark = markOf(face, box);
  let ticks = '';
  for (let tick = 0; tick < variant; tick++) {
    const x = box.x + 0.35 + tick * 0.4;
    ticks += `M${x.toFixed(2)} ${(box.y + 0.25).toFixed(2)}v0.6`;
  }
  return {...mark, lines: mark.lines + ticks};
}

/** All symbols of a drawing in at most three paths. */
export function drawMarks(marks: readonly Mark[]): Element[] {
  const join = (what: keyof Mark) => marks.map((mark) => mark[what]).join('');
  const [lines, over, solid] = [join('lines'), join('over'), join('solid')];
  const pen = {stroke: 'currentColor', strokeWidth: 0.35, strokeLinecap: 'round', strokeLinejoin: 'round'};
  return [
    ...(lines === '' ? [] : [s('path', {d: lines, fill: 'none', ...pen})]),
    ...(over === '' ? [] : [s('path', {d: over, fill: 'white', ...pen})]),
    ...(solid === '' ? [] : [s('path', {d: solid})]),
  ];
}

function outlineOf({x, y, width, height}: Box): string {
  return closed([x, y], [x + width, y], [x + width, y + height], [x, y + height]);
}

/** What a reader who cannot see the drawing is told: the same rows in words. */
function inWords({rows}: ChartGrid): string {
  return rows.map((row) => `${row.label} (${row.side}): ${writeRowSteps(row)}.`).join(' ');
}
