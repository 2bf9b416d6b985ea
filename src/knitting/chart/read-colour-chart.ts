import type {Problem} from '../../support/result.ts';
import type {ChartFrame} from './chart-frame.ts';
import type {KeyLine} from './chart-lines.ts';
import {marks} from './chart-text.ts';
import type {ChartColour, ColourGrid, ColourRow} from './colour-grid.ts';
import {reportUnknownSign} from './unknown-sign.ts';

const colourMeaning = /^colou?r\s+(\S.*?)\s*(#(?:[\da-f]{3}|[\da-f]{6}))?$/i;

export function isColourKey({meaning}: KeyLine): boolean {
  return /^colou?r(?:\s|$)/i.test(meaning);
}

export function readColourChart(
  key: readonly KeyLine[],
  {header, method, rowsPerLine, lines}: ChartFrame,
  problems: Problem[],
): ColourGrid {
  const colours = key.flatMap((line) => readColour(line, problems));
  const indexes = new Map(colours.map(({symbol}, index) => [symbol, index]));
  const rows: ColourRow[] = [];
  for (const {row, side, squares, repeat} of lines) {
    const cells = squares.map(({symbol, span}) => {
      if (symbol === marks.noStitch) return null;
      const index = indexes.get(symbol);
      if (index === undefined) reportUnknownSign(symbol, [...indexes.keys()], span, problems);
      return index ?? null;
    });
    for (let copy = 0; copy < rowsPerLine; copy++) {
      const isOther = copy % 2 === 1 && !header.isRound;
      const worked = isOther ? (side === 'RS' ? 'WS' : 'RS') : side;
      rows.push({number: (row - 1) * rowsPerLine + copy + 1, side: worked, cells, repeat});
    }
  }
  const width = lines[0]?.squares.length ?? 0;
  return {width, isRound: header.isRound, method: method ?? 'stranded', colours, rows};
}

function readColour({symbol, meaning, span}: KeyLine, problems: Problem[]): ChartColour[] {
  const [, name, hex] = colourMeaning.exec(meaning) ?? [];
  if (name === undefined) {
    problems.push({
      message: `the key of \`${symbol}\` names no colour`,
      hint: `Write the colour's name and how it looks, such as \`${symbol} = colour deep water #27414d\`.`,
      span,
    });
    return [];
  }
  return [{symbol, name, hex: hex === undefined ? null : longHex(hex.toLowerCase())}];
}

function longHex(hex: string): string {
  return hex.length === 7 ? hex : `#${[...hex.slice(1)].map((digit) => digit + digit).join('')}`;
}
