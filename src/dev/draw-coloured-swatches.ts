import {castOn, type Fabric, type Loop, workRows} from './draw-fabric.ts';
import type {View} from './draw-loops.ts';
import {type Picture, pictureOfSwatch} from './draw-picture.ts';
import {drawYarn, dyes, pathThrough} from './draw-yarn.ts';

/** Stranded colourwork from both sides, and intarsia. */
export const colouredSwatches: readonly Picture[] = [
  pictureOfSwatch('s12-stranded.jpg', () => {
    const fabric = castOn({castOn: 43, colour: stranded, gauge: [29.6, 34]});
    workRows(fabric, 22, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch('s12-floats.jpg', knitFloats, {
    raisedPurls: true,
    boundOff: false,
    above: (view) => drawFloats(knitFloats(), view),
  }),
  pictureOfSwatch('s13-intarsia.jpg', () => {
    const fabric = castOn({castOn: 33, colour: intarsia, gauge: [22, 30]});
    workRows(fabric, 22, 'k*', 'p*');
    return fabric;
  }),
];

/** The repeat of six stitches, the lowest row first. */
const repeat = ['X.....', 'XX...X', '.XX.XX', 'X.XXX.', '.XX.XX', 'XX...X', 'X.....', '...X..'];

function stranded(column: number, row: number): string {
  const line = row - 7;
  const dark = line >= 0 && line < 31 && repeat[line % repeat.length]?.[column % 6] === 'X';
  return dark ? dyes['deep water'] : dyes.chalk;
}

function knitFloats(): Fabric {
  const fabric = castOn({castOn: 19, colour: (column, row) => stranded(column, row + 6), gauge: [29.6, 34]});
  workRows(fabric, 8, 'p*', 'k*');
  return fabric;
}

/** A strand from each stitch to the next of its colour, wherever other stitches lie between. */
function drawFloats(fabric: Fabric, view: View): string {
  const strands: string[] = [];
  for (const row of fabric.rows.slice(1)) {
    for (const colour of new Set(row.map((loop) => loop.colour))) {
      const same = row.filter((loop) => loop.colour === colour);
      for (const [index, loop] of same.entries()) {
        const next = same[index + 1];
        if (next !== undefined && next.x - loop.x > 1.5 * loop.width) strands.push(strand(loop, next, view));
      }
    }
  }
  return strands.join('');
}

function strand(from: Loop, to: Loop, view: View): string {
  const dark = from.colour === dyes['deep water'];
  const y = view.y - (from.y + (dark ? -0.18 : 0.12) * from.height) * view.scale;
  const sag = 0.1 * from.height * view.scale;
  const [left, right] = [
    view.x + (from.x + 0.2 * from.width) * view.scale,
    view.x + (to.x - 0.2 * to.width) * view.scale,
  ];
  const path = pathThrough(
    {x: left, y},
    {x: left + 8, y: y + sag},
    {x: right - 8, y: y + sag},
    {x: right, y},
  );
  return drawYarn(path, from.colour, 0.24 * from.width * view.scale, 0.3);
}

/** A diamond of fifteen steps of two rows, a smaller one within it. */
function intarsia(column: number, row: number): string {
  const line = Math.floor((row - 9) / 2);
  const half = 7 - Math.abs(line - 7);
  const aside = Math.abs(column - 16);
  if (row < 9 || half < 0 || aside > half) return dyes['slate blue'];
  return aside <= half - 5 ? dyes.bramble : dyes.chalk;
}
