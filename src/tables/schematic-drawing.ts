import type {Element} from 'hast';
import {s} from 'hastscript';
import {formatLength, type UnitOrder} from '../knitting/format-quantity.ts';
import {type PieceGauges, placeOutline} from '../knitting/pieces/piece-outline.ts';
import type {Panel, PieceMark} from '../knitting/pieces/worked-piece.ts';
import {englishList} from '../support/english-list.ts';
import {type Dimension, dimensionsOf} from './schematic-dimensions.ts';
import {type Sheet, sheetFor} from './schematic-sheet.ts';

/** All measures in millimetres of paper. */
const textSize = 2.5;
const tick = 0.8;
/** A mark is measured where its words fit on its line. */
const roomForMark = 42;
const thin = {stroke: 'currentColor', strokeWidth: 0.18};

/**
 * A panel drawn to scale, as seen from the right side, in the text colour: its outline, and lines with its measures in
 * both units outside it; marks are dotted across it.
 */
export function drawSchematic(
  name: string,
  panel: Panel,
  marks: readonly PieceMark[],
  gauges: PieceGauges,
  order: UnitOrder,
): Element {
  const outline = placeOutline(panel, gauges);
  const dimensions = dimensionsOf(panel, marks, gauges);
  const sheet = sheetFor(outline);
  const points = outline.map(({x, y}) => `${sheet.x(x)},${sheet.y(y)}`).join(' ');
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${sheet.width}mm`,
      height: `${sheet.height}mm`,
      viewBox: `0 0 ${sheet.width} ${sheet.height}`,
      fontSize: textSize,
      fill: 'currentColor',
    },
    [
      s('title', description(name, panel, dimensions, sheet, order)),
      s('polygon', {
        points,
        fill: 'currentColor',
        fillOpacity: 0.07,
        stroke: 'currentColor',
        strokeWidth: 0.5,
        strokeLinejoin: 'round',
      }),
      ...dimensions.map((dimension) => drawDimension(dimension, sheet, order)),
      s(
        'text',
        {x: sheet.width - 1, y: sheet.height - 1, textAnchor: 'end', fontStyle: 'italic'},
        `1 : ${sheet.scale}`,
      ),
    ],
  );
}

function drawDimension(dimension: Dimension, sheet: Sheet, order: UnitOrder): Element {
  const {place, from, to, name} = dimension;
  const [x1, x2, y1, y2] = [sheet.x(from.x), sheet.x(to.x), sheet.y(from.y), sheet.y(to.y)];
  const [first, second] = bothUnits(dimension, order);
  const middle = mm((x1 + x2) / 2);
  switch (place) {
    case 'foot':
    case 'top': {
      const y = place === 'foot' ? sheet.belowFoot : sheet.aboveTop;
      return s('g', [
        ...levelLine(x1, x2, y),
        s('text', {x: middle, y: mm(y - 0.9), textAnchor: 'middle'}, first),
        s('text', {x: middle, y: mm(y + textSize + 0.3), textAnchor: 'middle'}, second),
      ]);
    }
    case 'length':
      return s('g', [
        ...uprightLine(sheet.leftOf, y1, y2),
        s('text', {x: mm(sheet.leftOf - 1.2), y: mm((y1 + y2) / 2 - 0.4), textAnchor: 'end'}, first),
        s('text', {x: mm(sheet.leftOf - 1.2), y: mm((y1 + y2) / 2 + textSize), textAnchor: 'end'}, second),
      ]);
    case 'chain':
      return s('g', [
        ...uprightLine(sheet.rightOf, y1, y2),
        s('text', {x: mm(sheet.rightOf + 1.2), y: mm((y1 + y2) / 2 + textSize / 3)}, `${first} (${second})`),
      ]);
    case 'mark': {
      const isMeasured = name !== null && x2 - x1 >= roomForMark;
      const words = isMeasured ? `${name}: ${first} (${second})` : (name ?? '');
      return s('g', [
        s('line', {x1, x2, y1, y2, ...thin, strokeDasharray: '0.6 0.9'}),
        s('text', {x: middle, y: mm(y1 + textSize + 0.3), textAnchor: 'middle', fontStyle: 'italic'}, words),
      ]);
    }
    case 'neck':
      return s('g', [
        ...uprightLine(x1, y1, y2),
        s('text', {x: mm(x1 + 1), y: mm(y2 + textSize)}, first),
        s('text', {x: mm(x1 + 1), y: mm(y2 + 2 * textSize + 0.3)}, second),
      ]);
  }
}

function levelLine(x1: number, x2: number, y: number): Element[] {
  return [
    s('line', {x1, x2, y1: y, y2: y, ...thin}),
    ...[x1, x2].map((x) => s('line', {x1: x, x2: x, y1: mm(y - tick), y2: mm(y + tick), ...thin})),
  ];
}

function uprightLine(x: number, y1: number, y2: number): Element[] {
  return [
    s('line', {x1: x, x2: x, y1, y2, ...thin}),
    ...[y1, y2].map((y) => s('line', {x1: mm(x - tick), x2: mm(x + tick), y1: y, y2: y, ...thin})),
  ];
}

function bothUnits({length}: Dimension, order: UnitOrder): readonly [string, string] {
  const [first = '', second = ''] = formatLength(length, order).split(' (');
  return [first, second.replace(')', '')];
}

const placeWords: Readonly<Record<Dimension['place'], string>> = {
  foot: 'foot',
  top: 'top, from left to right',
  length: 'length',
  chain: 'upward, part by part',
  mark: 'across at the marks',
  neck: 'depth of the neck',
};

/** What a reader who cannot see the drawing is told. */
function description(
  name: string,
  panel: Panel,
  dimensions: readonly Dimension[],
  {scale}: Sheet,
  order: UnitOrder,
): string {
  const said = Object.entries(placeWords).flatMap(([place, words]) => {
    const here = dimensions.filter((dimension) => dimension.place === place);
    const lengths = here.map((one) =>
      [one.name, formatLength(one.length, order)].filter((word) => word !== null).join(' '),
    );
    return here.length > 0 ? [`${words} ${englishList(lengths)}`] : [];
  });
  const flat = panel.isRound ? ', a tube laid flat' : '';
  return `Schematic of ${name}${flat}, from the right side, drawn 1 : ${scale}: ${said.join('; ')}.`;
}

/** Hundredths of a millimetre are finer than any printer draws. */
function mm(length: number): number {
  return Number(length.toFixed(2));
}
