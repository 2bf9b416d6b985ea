import type {Element} from 'hast';
import {s} from 'hastscript';
import type {ChartGrid, ChartRow, ChartTurn, SquareRange} from '../knitting/chart/chart-grid.ts';
import type {Box} from './chart-box.ts';
import type {ChartScale} from './chart-layout.ts';
import {mm, stroke} from './chart-path.ts';

/** The marks of the turns that lie in `part`: a bar where the work is turned, a loop round the foot of a wrapped stitch. */
export function turnMarks({rows}: ChartGrid, part: SquareRange, {square, rowHeight}: ChartScale): Element[] {
  let marks = '';
  rows.forEach((row, index) => {
    const line = turnLine(row);
    if (line === null || row.turn === null || line < part.from || line > part.to) return;
    const box = {
      x: (line - part.from - (row.side === 'RS' ? 1 : 0)) * square,
      y: (rows.length - 1 - index) * rowHeight,
      width: square,
      height: rowHeight,
    };
    marks += turnMark(row.turn, box, row.side === 'RS' ? 'right' : 'left');
  });
  return marks === '' ? [] : [turnPath(marks)];
}

/** `box` is the first stitch left unworked; the work is turned at its `edge`. */
export function turnMark(turn: ChartTurn, {x, y, width, height}: Box, edge: 'left' | 'right'): string {
  const at = edge === 'right' ? x + width : x;
  const bar = stroke([at, y], [at, y + height]);
  if (turn === 'plain') return bar;
  // A loop round the foot of the stitch, open to the side from which it is laid.
  const inwards = edge === 'right' ? -1 : 1;
  const [foot, top] = [y + height - 0.35, y + height * 0.55];
  const far = at + inwards * width * 0.62;
  return `${bar}M${mm(at)} ${mm(foot)}H${mm(far)}V${mm(top)}H${mm(at + inwards * width * 0.25)}`;
}

export function turnPath(marks: string): Element {
  return s('path', {
    d: marks,
    fill: 'none',
    stroke: 'currentColor',
    strokeWidth: 0.5,
    strokeLinejoin: 'round',
  });
}

/** The line between squares, counted from the left, at which the row is turned; null when it is worked to its end. */
function turnLine({cells, side, turn}: ChartRow): number | null {
  if (turn === null) return null;
  let line = 0;
  let last = 0;
  for (const {kind, squares} of cells) {
    if (kind === 'worked' && side === 'RS') return line;
    line += squares;
    if (kind === 'worked') last = line;
  }
  return side === 'WS' && last > 0 ? last : null;
}
