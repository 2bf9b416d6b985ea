import type {Element} from 'hast';
import {s} from 'hastscript';
import type {ChartCell, ChartGrid, ChartRow} from '../knitting/chart/chart-grid.ts';
import type {Box} from './chart-box.ts';
import {chartScale, textWidth} from './chart-layout.ts';
import {closed, mm} from './chart-path.ts';
import {type FabricYarn, yarnOf} from './fabric-stitch.ts';

/** More rows than this would be too small to see; the picture shows the lowest ones. */
export const mostDrawnRows = 80;

/** The knitted face as it comes off the needles: every stitch a loop of yarn, the first row lowest. */
export function drawFabric(grid: ChartGrid, title: string, ratio: number): Element {
  const rows = grid.rows.slice(0, mostDrawnRows);
  const scale = chartScale(grid.width, ratio, new Set());
  const square = Math.min(scale.square, textWidth / Math.max(grid.width, 1));
  const rowHeight = square / ratio;
  const width = mm(grid.width * square);
  const height = mm((rows.length + 1) * rowHeight);
  const tension = 0.24 * Math.min(square, 1.3 * rowHeight);
  const content = rows
    .map((row, index) => drawRow(row, (rows.length - index - 0.5) * rowHeight, square, rowHeight, tension))
    .reverse();
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      fill: 'none',
      strokeLinecap: 'round',
      strokeLinejoin: 'round',
    },
    [
      s('title', title),
      s('path', {d: closed([0, 0], [width, 0], [width, height], [0, height]), fill: '#8a8a8a'}),
      ...content.flat(),
    ],
  );
}

/** So often is the width of each stitch shared with its neighbours. */
const easing = 4;

function drawRow(row: ChartRow, y: number, square: number, height: number, tension: number): Element[] {
  const parts = widened(row.cells).map(({cell, from, to}) => {
    const box: Box = {x: from * square, y, width: (to - from) * square, height};
    return yarnOf(cell, box);
  });
  const join = (what: keyof FabricYarn) => parts.map((part) => part[what]).join('');
  const hole = join('hole');
  return [
    ...(hole === '' ? [] : [s('path', {d: hole, fill: 'white'})]),
    ...strand(join('under'), tension),
    ...strand(join('over'), tension),
  ];
}

/** A strand of yarn: its outline, and the lighter yarn within. */
function strand(d: string, tension: number): Element[] {
  if (d === '') return [];
  return [
    s('path', {d, stroke: '#333', strokeWidth: mm(tension)}),
    s('path', {d, stroke: '#ececec', strokeWidth: mm(tension * 0.62)}),
  ];
}

/** Where fewer stitches stand, those beside the empty squares are wider: cloth has no gaps. */
function widened(cells: readonly ChartCell[]): {cell: ChartCell; from: number; to: number}[] {
  const stitches: {cell: ChartCell; from: number; to: number}[] = [];
  let at = 0;
  for (const cell of cells) {
    if (cell.kind !== 'no stitch') stitches.push({cell, from: at, to: at + cell.squares});
    at += cell.squares;
  }
  const edges = [
    0,
    ...stitches.slice(1).map(({from}, index) => (from + (stitches[index]?.to ?? from)) / 2),
    at,
  ];
  for (let round = 0; round < easing; round++) {
    for (let index = 1; index < stitches.length; index++) {
      const [before, behind] = [stitches[index - 1]?.cell.squares ?? 1, stitches[index]?.cell.squares ?? 1];
      const [left, right] = [edges[index - 1] ?? 0, edges[index + 1] ?? at];
      edges[index] = (left * behind + right * before) / (before + behind);
    }
  }
  return stitches.map(({cell}, index) => ({cell, from: edges[index] ?? 0, to: edges[index + 1] ?? at}));
}
