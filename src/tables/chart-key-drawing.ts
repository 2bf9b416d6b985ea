import type {Element} from 'hast';
import {h, s} from 'hastscript';
import type {ChartGrid, ChartTurn} from '../knitting/chart/chart-grid.ts';
import {chartKey, type KeyEntry} from '../knitting/chart/chart-key.ts';
import {drawMarks, markedCell} from './chart-drawing.ts';
import {closed, mm} from './chart-path.ts';
import {turnMark, turnPath} from './chart-turns.ts';

/** The key of a chart as a table: each symbol, and what is worked for it on right-side and wrong-side rows. */
export function drawChartKey(grid: ChartGrid, ratio: number): Element {
  const {entries} = chartKey(grid);
  const hasWrongSide = grid.rows.some(({side}) => side === 'WS');
  const kinds = new Set(grid.rows.flatMap(({cells}) => cells.map(({kind}) => kind)));
  const columns = ['Symbol', ...(hasWrongSide ? ['on RS rows', 'on WS rows'] : ['worked'])];
  const line = (symbol: Element, cells: readonly string[]) =>
    h('tr', [h('th', {scope: 'row'}, [symbol]), ...cells.map((cell) => h('td', cell))]);
  const blank = (words: string, opacity: number) =>
    line(swatch(ratio, 1, words, {opacity}), hasWrongSide ? [words, words] : [words]);
  return h('table', {className: ['key']}, [
    h('thead', [
      h(
        'tr',
        columns.map((column) => h('th', {scope: 'col'}, column)),
      ),
    ]),
    h('tbody', [
      ...entries.map((entry) => {
        const {RS, WS} = entry.worked;
        const cells = hasWrongSide ? [RS ?? '–', WS ?? '–'] : [RS ?? '–'];
        return line(swatch(ratio, entry.cell.squares, RS ?? WS ?? '', {entry}), cells);
      }),
      ...(kinds.has('no stitch') ? [blank('no stitch', 0.28)] : []),
      ...(kinds.has('unworked') ? [blank('left unworked', 0.1)] : []),
      ...(['plain', 'wrapped'] as const)
        .filter((turn) => grid.rows.some((row) => row.turn === turn))
        .map((turn) => {
          const words = turn === 'plain' ? 'turn' : 'w&t: wrap this stitch and turn';
          return line(turnSwatch(ratio, turn, words), hasWrongSide ? [words, words] : [words]);
        }),
    ]),
  ]);
}

function turnSwatch(ratio: number, turn: ChartTurn, words: string): Element {
  return swatch(ratio, 1, words, {opacity: 0.1, turn});
}

function swatch(
  ratio: number,
  squares: number,
  name: string,
  {
    entry,
    opacity = 0,
    turn,
  }: {readonly entry?: KeyEntry; readonly opacity?: number; readonly turn?: ChartTurn},
): Element {
  const height = 3.6;
  const [square, most] = [height * Math.min(ratio, 1.6), 24];
  const width = mm(Math.min(square * squares, most));
  const box = {x: 0, y: 0, width, height};
  const frame = {
    d: closed([0, 0], [width, 0], [width, height], [0, height]),
    strokeWidth: 0.2,
    stroke: 'currentColor',
  };
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${mm(width + 0.6)}mm`,
      height: `${height + 0.6}mm`,
      viewBox: `-0.3 -0.3 ${mm(width + 0.6)} ${height + 0.6}`,
      fill: 'currentColor',
    },
    [
      s('title', `symbol for ${name}`),
      s('path', {...frame, fillOpacity: opacity}),
      ...(turn ? [turnPath(turnMark(turn, box, 'right'))] : []),
      ...(entry ? drawMarks([markedCell(entry.face, entry.variant, box)]) : []),
    ],
  );
}
