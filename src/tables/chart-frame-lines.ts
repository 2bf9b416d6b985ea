import type {Element} from 'hast';
import {s} from 'hastscript';
import type {SquareRange} from '../knitting/chart/chart-grid.ts';
import type {Side} from '../knitting/rows/face.ts';
import type {ChartScale} from './chart-layout.ts';
import {numberWidth} from './chart-layout.ts';
import {mm, stroke} from './chart-path.ts';

/** What the frame of any chart needs to know of a row. */
export interface FramedRow {
  readonly name: string;
  readonly side: Side;
  readonly repeat: SquareRange | null;
}

const textSize = 2.4;

/** The thin lines between squares, as one path; `insides` are the squares that a wide stitch covers. */
export function squareLines(
  rows: number,
  {from, to}: SquareRange,
  {square, rowHeight}: ChartScale,
  isCovered: (row: number, line: number) => boolean,
): Element {
  let lines = '';
  for (let row = 0; row <= rows; row++) {
    lines += stroke([0, row * rowHeight], [(to - from) * square, row * rowHeight]);
  }
  for (let line = from; line <= to; line++) {
    let start: number | null = null;
    for (let row = 0; row <= rows; row++) {
      const isDrawn = row < rows && !isCovered(rows - 1 - row, line);
      if (isDrawn) start ??= row;
      if (!isDrawn && start !== null) {
        lines += stroke(
          [(line - from) * square, start * rowHeight],
          [(line - from) * square, row * rowHeight],
        );
        start = null;
      }
    }
  }
  return s('path', {d: lines, fill: 'none', stroke: 'currentColor', strokeWidth: 0.12, strokeOpacity: 0.6});
}

/** A bold outline round the repeat, stepped where it shifts from row to row. */
export function repeatOutline(
  rows: readonly FramedRow[],
  {from, to}: SquareRange,
  {square, rowHeight}: ChartScale,
): Element[] {
  let outline = '';
  const clip = (range: SquareRange | null | undefined) => {
    if (!range) return null;
    const cut = {from: Math.max(range.from, from), to: Math.min(range.to, to)};
    return cut.to > cut.from ? {...cut, opensLeft: range.from < from, opensRight: range.to > to} : null;
  };
  const x = (line: number) => (line - from) * square;
  rows.forEach(({repeat}, index) => {
    const here = clip(repeat);
    if (!here) return;
    const top = (rows.length - 1 - index) * rowHeight;
    if (!here.opensLeft) outline += stroke([x(here.from), top], [x(here.from), top + rowHeight]);
    if (!here.opensRight) outline += stroke([x(here.to), top], [x(here.to), top + rowHeight]);
    const draw = (y: number, ranges: readonly (readonly [number, number])[]) => {
      for (const [a, b] of ranges) if (b > a) outline += stroke([x(a), y], [x(b), y]);
    };
    const above = clip(rows[index + 1]?.repeat);
    draw(top, above ? differences(here, above) : [[here.from, here.to]]);
    if (!clip(rows[index - 1]?.repeat)) draw(top + rowHeight, [[here.from, here.to]]);
  });
  if (outline === '') return [];
  return [
    s('path', {d: outline, fill: 'none', stroke: 'currentColor', strokeWidth: 0.55, strokeLinecap: 'square'}),
  ];
}

/** Where one of the two rows is in the repeat and the other is not. */
function differences(a: SquareRange, b: SquareRange): (readonly [number, number])[] {
  return [
    [Math.min(a.from, b.from), Math.min(Math.max(a.from, b.from), Math.min(a.to, b.to))],
    [Math.max(Math.min(a.to, b.to), Math.max(a.from, b.from)), Math.max(a.to, b.to)],
  ];
}

/** The row numbers, each on the side where its row begins. */
export function rowNumbers(rows: readonly FramedRow[], width: number, {rowHeight}: ChartScale): Element[] {
  return (['RS', 'WS'] as const).flatMap((side) => {
    const lines = rows.flatMap((row, index) =>
      row.side === side && row.name !== ''
        ? [
            s(
              'tspan',
              {x: side === 'RS' ? mm(width + 1) : -1, y: mm((rows.length - index - 0.5) * rowHeight + 0.85)},
              row.name,
            ),
          ]
        : [],
    );
    if (lines.length === 0) return [];
    return [s('text', {fontSize: textSize, textAnchor: side === 'RS' ? 'start' : 'end'}, lines)];
  });
}

/** The drawing with room for the numbers on both sides, from 0,0 at the upper left square. */
export function chartSvg(
  title: string,
  description: string,
  width: number,
  height: number,
  content: readonly Element[],
): Element {
  const whole = mm(width + 2 * numberWidth);
  const high = mm(height + 1);
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${whole}mm`,
      height: `${high}mm`,
      viewBox: `${-numberWidth} -0.5 ${whole} ${high}`,
      fill: 'currentColor',
    },
    [s('title', title), ...(description === '' ? [] : [s('desc', description)]), ...content],
  );
}
