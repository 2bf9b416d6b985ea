import {castOn, type Fabric, workRows} from './draw-fabric.ts';
import type {View} from './draw-loops.ts';
import {drawFabric, type Picture, pictureOfSwatch, viewOf} from './draw-picture.ts';
import {drawGround} from './draw-piece.ts';
import {relax} from './draw-relax.ts';
import {canvas, holeColour, sceneToSvg} from './draw-scene.ts';
import {drawYarn, dyes, pathThrough, round, shade} from './draw-yarn.ts';

const seamingYarn = '#e8d9a8';

/** Seams, joins of live stitches, buttonholes, and picked-up bands. */
export const joinedSwatches: readonly Picture[] = [
  {file: 's14-mattress-seam.jpg', svg: drawMattressSeam},
  pictureOfSwatch(
    's14-garter-seam.jpg',
    () => {
      const fabric = castOn({castOn: 18, colour: dyes['moss green'], gauge: [19.3, 38]});
      workRows(fabric, 9, 'k*', 'k*');
      return fabric;
    },
    {raisedPurls: true, boundOff: false, above: drawSeamLine},
  ),
  pictureOfSwatch('s15-joins.jpg', () => {
    const grafted = (column: number, row: number) => row === 21 && column > 10 && column < 15;
    const fabric = castOn({
      castOn: 30,
      colour: (column, row) => (grafted(column, row) ? seamingYarn : dyes.bramble),
      gauge: [22, 30],
    });
    workRows(fabric, 10, 'k*', 'p*');
    workRows(fabric, 1, 'p15 k15', 'p*');
    workRows(fabric, 9, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch(
    's16-buttonholes.jpg',
    () => {
      const fabric = castOn({castOn: 29, colour: dyes.peat, gauge: [18.7, 37]});
      workRows(fabric, 15, 'k*', 'k*');
      workRows(fabric, 1, 'k5 yo k2tog k7 yo k2tog k7 yo k2tog k4', 'k*');
      workRows(fabric, 6, 'k*', 'k*');
      return fabric;
    },
    {raisedPurls: true, above: drawSlitsAndButtons},
  ),
  {file: 's18-picked-up-band.jpg', svg: drawPickedUpBand},
];

/** Two pieces that part towards the top, so that the path of the yarn is seen. */
function drawMattressSeam(): string {
  const halves = [-1, 1].map((side) => {
    const fabric = castOn({castOn: 19, colour: dyes['moss green'], gauge: [19.4, 27]});
    workRows(fabric, 14, 'k*', 'p*');
    fabric.row = 100 / 38;
    workRows(fabric, 19, 'k*', 'k*');
    relax(fabric, {upright: 0.7, level: 0.6});
    for (const loop of fabric.rows.flat()) loop.x += side * (9.5 * fabric.stitch + gapAt(loop.y));
    return fabric;
  });
  const view = viewOf(halves.flatMap((half) => half.rows));
  const look = {raisedPurls: true};
  return sceneToSvg({
    ground: halves.map((half) => drawGround(half, view)).join(''),
    knitting: drawLadder(halves, view) + halves.map((half) => drawFabric(half, view, look)).join(''),
    scale: view.scale,
  });
}

/** Half the distance between the pieces, in millimetres, at a height of the seam. */
function gapAt(y: number): number {
  return 9 * Math.max(0, (y - 150) / 55) ** 1.3;
}

function drawLadder(halves: readonly Fabric[], view: View): string {
  const [left, right] = halves;
  if (left === undefined || right === undefined) return '';
  const path: string[] = [];
  for (const [index, row] of left.rows.entries()) {
    const from = row.at(-1);
    const to = right.rows[index]?.[0];
    if (from === undefined || to === undefined || index % 2 === 1 || gapAt(from.y) === 0) continue;
    const y = round(view.y - from.y * view.scale);
    const [start, end] = [view.x + (from.x - 2) * view.scale, view.x + (to.x + 2) * view.scale];
    path.push(`${path.length === 0 ? 'M' : 'L'}${round(start)} ${y}L${round(end)} ${round(y - 6)}`);
  }
  return drawYarn(path.join(''), seamingYarn, 1.3 * view.scale);
}

/** The seaming yarn, seen only at the last ridges, where it is not yet drawn up. */
function drawSeamLine(view: View): string {
  const ridge = (200 / 38) * view.scale;
  const stitch = (100 / 19.3) * view.scale;
  const steps = [5, 6, 7, 8].map((index) => {
    const y = view.y - (index + 1) * ridge;
    return (
      `C${round(view.x - stitch)} ${round(y + ridge * 0.3)} ${round(view.x - stitch)} ${round(y)} ${round(view.x)} ${round(y)}` +
      `C${round(view.x + stitch)} ${round(y)} ${round(view.x + stitch)} ${round(y - ridge * 0.5)} ${round(view.x)} ${round(y - ridge * 0.4)}`
    );
  });
  return drawYarn(
    `M${round(view.x)} ${round(view.y - 5.6 * ridge)}${steps.join('')}`,
    seamingYarn,
    0.16 * stitch,
  );
}

function drawSlitsAndButtons(view: View): string {
  const row = (100 / 37) * view.scale;
  const stitch = (100 / 18.7) * view.scale;
  const slits = [-6, 6].map((column) => drawSlit(view.x + column * stitch, view.y - 15 * row, 1.5 * stitch));
  return (
    slits.join('') +
    drawButton(view.x + 6 * stitch, view.y - 15 * row, 8.5 * view.scale, '#b98a55') +
    drawButton(view.x + 9 * stitch, view.y - 30.8 * row, 5 * view.scale, '#caa26b')
  );
}

function drawSlit(x: number, y: number, half: number): string {
  const lip = (rise: number) =>
    pathThrough(
      {x: x - half, y},
      {x: x - half / 2, y: y + rise},
      {x: x + half / 2, y: y + rise},
      {x: x + half, y},
    );
  return (
    `<path d="${lip(-16)}${lip(16).replace('M', 'L')}" fill="${holeColour}"/>` +
    drawYarn(lip(-22), dyes.peat, 15) +
    drawYarn(lip(20), dyes.peat, 15)
  );
}

function drawButton(x: number, y: number, radius: number, colour: string): string {
  const circle = (dx: number, dy: number, r: number, fill: string, more = '') =>
    `<circle cx="${round(x + dx * radius)}" cy="${round(y + dy * radius)}" r="${round(r * radius)}" fill="${fill}"${more}/>`;
  const eyes = [-0.2, 0.2].flatMap((dx) => [-0.2, 0.2].map((dy) => circle(dx, dy, 0.1, shade(colour, -0.7))));
  return (
    circle(0.06, 0.1, 1.02, '#000000', ' opacity="0.35"') +
    circle(0, 0, 1, colour, ` stroke="${shade(colour, -0.45)}" stroke-width="2"`) +
    circle(0, 0, 0.76, shade(colour, 0.12), ` stroke="${shade(colour, -0.25)}" stroke-width="2"`) +
    eyes.join('')
  );
}

/** A square with a band along its side, and a second one across the top of both. */
function drawPickedUpBand(): string {
  const square = castOn({castOn: 28, colour: dyes.peat, gauge: [19.5, 27]});
  workRows(square, 18, 'k*', 'p*');
  const height = 36 * (100 / 27);
  const side = rib(27, height);
  const width = 28 * (100 / 19.5) + 26;
  const top = rib(33, width);
  for (const fabric of [square, side, top]) relax(fabric, {upright: 0.7, level: 0.6});
  const scale = 5.2;
  const view = {scale, x: canvas.width / 2 - 12 * scale, y: 895};
  const level = {scale, x: 0, y: 0};
  const sideAt = `translate(${round(view.x + 13.9 * (100 / 19.5) * scale)} ${round(view.y - (height / 2 + 2) * scale)}) rotate(90)`;
  const topAt = `translate(${round(view.x + 12 * scale)} ${round(view.y - (height + 2.5) * scale)})`;
  const placed = (draw: (fabric: Fabric) => string) =>
    `<g transform="${sideAt}">${draw(side)}</g><g transform="${topAt}">${draw(top)}</g>`;
  return sceneToSvg({
    ground: drawGround(square, view) + placed((fabric) => drawGround(fabric, level)),
    knitting: drawFabric(square, view, {boundOff: false}) + placed((fabric) => drawFabric(fabric, level)),
    scale,
  });
}

/** Seven rows of single rib, as wide as the edge it belongs to. */
function rib(stitches: number, width: number): Fabric {
  const purlWidth = 0.6;
  const knits = (stitches + 1) / 2;
  const gauge = (100 * (knits + (stitches - knits) * purlWidth)) / width;
  const fabric = castOn({castOn: stitches, colour: dyes.peat, gauge: [gauge, 30], purlWidth});
  for (const loop of fabric.live) loop.width = width / stitches;
  workRows(fabric, 3, `${knits - 1}(k p) k`, `${knits - 1}(p k) p`);
  workRows(fabric, 1, `${knits - 1}(k p) k`);
  return fabric;
}
