import type {ChartCell} from '../knitting/chart/chart-grid.ts';
import type {Face} from '../knitting/rows/face.ts';
import {type Box, inBox} from './chart-box.ts';
import {placedStrands} from './chart-crossing-mark.ts';
import {bow, circle, stroke} from './chart-path.ts';

/** The yarn of one stitch as path data: strands that lie under others, strands on top, and holes in the cloth. */
export interface FabricYarn {
  readonly under: string;
  readonly over: string;
  readonly hole: string;
}

const none: FabricYarn = {under: '', over: '', hole: ''};

/** How a stitch looks on the right side, drawn in its box; the feet reach a little into the row below. */
export function yarnOf(cell: ChartCell, box: Box): FabricYarn {
  if (cell.kind === 'unworked') return none;
  const {face} = cell;
  switch (face.shape) {
    case 'loop':
      return loop(box, face.surface, face.twisted);
    case 'loop below':
      return {...loop({...box, height: box.height * 2}, face.surface, false)};
    case 'slip':
      return {...tall(box), ...(face.yarn === 'front' && {over: line(box, [0.05, 0.55], [0.95, 0.55])})};
    case 'hole':
      return hole(box);
    case 'decrease':
      return decrease(face, box);
    case 'increase':
      return increase(face, box);
    case 'crossing':
      return crossing(face, box);
    case 'bobble':
      return {...none, over: circle(inBox(box, 0.5, 0.4), 0.36 * Math.min(box.width, box.height))};
    case 'bound off':
      return {
        ...none,
        over: line(box, [0.05, 0.35], [0.6, 0.55], [0.05, 0.75]) + line(box, [0.6, 0.55], [0.95, 0.55]),
      };
    case 'cast on':
      return {...none, over: bow(inBox(box, 0.1, 0.3), inBox(box, 0.5, 1.3), inBox(box, 0.9, 0.3))};
    case 'dropped':
      return {...none, under: line(box, [0, 0.3], [1, 0.3]) + line(box, [0, 0.8], [1, 0.8])};
    case 'as below':
    case 'texture':
    case 'own':
      return severalLoops(box, cell.squares);
  }
}

function line(box: Box, ...points: readonly (readonly [number, number])[]): string {
  return stroke(...points.map(([across, down]) => inBox(box, across, down)));
}

/** A knit stitch is a V, a purl stitch a bump that lies across. */
function loop(box: Box, surface: 'knit' | 'purl', twisted: boolean): FabricYarn {
  if (surface === 'purl') return {...none, over: bump(box)};
  if (!twisted) return {...none, over: line(box, [0.16, 0.02], [0.5, 1.12], [0.84, 0.02])};
  return {...none, under: line(box, [0.2, 0.02], [0.68, 1.1]), over: line(box, [0.8, 0.02], [0.32, 1.1])};
}

function bump(box: Box): string {
  return bow(inBox(box, 0.04, 0.78), inBox(box, 0.5, 0.08), inBox(box, 0.96, 0.78));
}

/** A stitch drawn up from the row below. */
function tall(box: Box): FabricYarn {
  return {...none, under: line(box, [0.16, 0.02], [0.5, 2.1], [0.84, 0.02])};
}

function hole(box: Box): FabricYarn {
  const radius = 0.42 * Math.min(box.width, box.height * 1.1);
  const middle = inBox(box, 0.5, 0.62);
  return {
    under: '',
    over: bow(inBox(box, 0, 0.55), inBox(box, 0.5, -0.35), inBox(box, 1, 0.55)),
    hole: circle(middle, radius),
  };
}

/** The leg on top leans over those that it takes along. */
function decrease({from, lean, surface}: Extract<Face, {shape: 'decrease'}>, box: Box): FabricYarn {
  const reach = Math.min(0.9, 0.35 + 0.2 * (from - 1));
  const bumped = surface === 'purl' ? bump(box) : '';
  if (lean === 'centre') {
    return {
      ...none,
      under: line(box, [0.3, 0.1], [0.5 - reach, 1.15]) + line(box, [0.7, 0.1], [0.5 + reach, 1.15]) + bumped,
      over: line(box, [0.38, 0.02], [0.5, 1.2], [0.62, 0.02]),
    };
  }
  const flip = (across: number) => (lean === 'left' ? 1 - across : across);
  let under = line(box, [flip(0.2), 0.02], [flip(0.5 + reach), 1.12]);
  if (from > 2) under += line(box, [flip(0.35), 0.02], [flip(0.5), 1.12]);
  return {...none, under: under + bumped, over: line(box, [flip(0.82), 0.02], [flip(0.5 - reach), 1.15])};
}

function increase({into, surface, method}: Extract<Face, {shape: 'increase'}>, box: Box): FabricYarn {
  if (method === 'strand' || method === 'below') {
    const narrow = {...box, x: box.x + box.width * 0.12, width: box.width * 0.76};
    return loop(narrow, surface, method === 'strand');
  }
  const width = box.width / Math.max(1, into);
  let over = '';
  for (let made = 0; made < into; made++) {
    const part = {...box, x: box.x + made * width, width};
    const isBump = (surface === 'purl') !== (method === 'bar' && made > 0);
    over += isBump
      ? bump(part)
      : stroke(inBox(part, 0.16, 0.02), inBox(box, 0.5, 1.1), inBox(part, 0.84, 0.02));
  }
  return {...none, over};
}

/** Each stitch of a strand runs from where it stood to where it goes, the front strand over the others. */
function crossing(face: Extract<Face, {shape: 'crossing'}>, box: Box): FabricYarn {
  const all = face.strands.reduce((sum, {stitches}) => sum + stitches, 0);
  let [under, over] = ['', ''];
  for (const {strand, bottom, top, isFront} of placedStrands(face)) {
    let drawn = '';
    for (let stitch = 0; stitch < strand.stitches; stitch++) {
      drawn += line(box, [(bottom + stitch + 0.5) / all, 1.15], [(top + stitch + 0.5) / all, 0.02]);
    }
    if (isFront) over += drawn;
    else under += drawn;
  }
  return {...none, under, over};
}

function severalLoops(box: Box, count: number): FabricYarn {
  const width = box.width / count;
  let over = '';
  for (let index = 0; index < count; index++)
    over += loop({...box, x: box.x + index * width, width}, 'knit', false).over;
  return {...none, over};
}
