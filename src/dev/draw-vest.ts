import {type Band, drawBand, drawBandGround} from './draw-band.ts';
import {castOn, type Loop, workRows} from './draw-fabric.ts';
import type {View} from './draw-loops.ts';
import {drawBackNeck, type NeckEdges, pointOf, splitNeck} from './draw-neck.ts';
import {drawFabric, type Picture, viewOf} from './draw-picture.ts';
import {drawGround} from './draw-piece.ts';
import {relax} from './draw-relax.ts';
import {canvas, sceneToSvg} from './draw-scene.ts';
import {drawWale} from './draw-wale.ts';
import {dyes} from './draw-yarn.ts';

const colour = dyes['slate blue'];

/** The vest of the worked example: the whole front, drawn at half its true number of stitches, and the point of its neck. */
export const vestPictures: readonly Picture[] = [
  {file: 'vest-front.jpg', svg: drawVestFront},
  {file: 'vest-detail.jpg', svg: drawNeckPoint},
];

function drawVestFront(): string {
  const fabric = castOn({castOn: 58, colour, gauge: [11, 15], purlWidth: 0.8});
  workRows(fabric, 5, 'k2 14(p2 k2)', 'p2 14(k2 p2)');
  workRows(fabric, 22, 'k*', 'p*');
  const edges = splitNeck(fabric, {
    pairs: 19,
    half: 29,
    centre: 0,
    arm: (pair) => (pair === 0 ? 'bo4' : pair === 1 ? 'bo2' : pair < 6 ? 'dec' : ''),
    narrows: everyOther,
  });
  relax(fabric, {upright: 1, level: 0.6});
  const fitted = viewOf(fabric.rows);
  const view = {scale: fitted.scale * 0.93, x: canvas.width / 2, y: canvas.height - 70};
  const at = (loop: Loop, aside: number) => pointOf(view, loop, aside);
  const bands = bandsOf(edges, view, 25, 4);
  const [left, right] = [edges.leftNeck.at(-1), edges.rightNeck.at(-1)];
  const back =
    left && right
      ? drawBackNeck(at(left, 0.5), at(right, -0.5), 25 * view.scale, colour, bands[0]?.edge.at(-1)?.y ?? 0)
      : '';
  return sceneToSvg({
    ground: back + bands.map(drawBandGround).join('') + drawGround(fabric, view),
    knitting:
      back + bands.map((band) => drawBandGround(band) + drawBand(band)).join('') + drawFabric(fabric, view),
    scale: null,
  });
}

function drawNeckPoint(): string {
  const fabric = castOn({castOn: 36, colour, gauge: [22, 30]});
  workRows(fabric, 6, 'k*', 'p*');
  const edges = splitNeck(fabric, {pairs: 16, half: 18, centre: 0, arm: () => '', narrows: everyOther});
  relax(fabric, {upright: 1, level: 0.6});
  const view = viewOf(fabric.rows);
  const bands = bandsOf(edges, view, 25, 8).slice(0, 2);
  const foot = edges.leftNeck[0];
  if (foot === undefined) return '';
  const point = pointOf(view, foot, 0.5);
  const stitch = 4.6 * view.scale;
  const spine = drawWale(
    {x: view.x, y: point.y + stitch * 0.4},
    {x: view.x, y: point.y - 62 * view.scale},
    17,
    stitch * 1.15,
    colour,
  );
  return sceneToSvg({
    ground: bands.map(drawBandGround).join('') + drawGround(fabric, view),
    knitting:
      drawFabric(fabric, view, {boundOff: false}) +
      bands.map((band) => drawBandGround(band) + drawBand(band)).join('') +
      spine,
    scale: view.scale,
  });
}

const everyOther = (pair: number): boolean => pair % 2 === 1;

function bandsOf(edges: NeckEdges, view: View, depth: number, rounds: number): readonly Band[] {
  const common = {depth: depth * view.scale, rounds, colour, stitch: (depth / rounds) * 1.35 * view.scale};
  const along = (loops: readonly Loop[], aside: number) => loops.map((loop) => pointOf(view, loop, aside));
  return [
    {...common, edge: along(edges.leftNeck, 0.5).reverse(), mitre: view.x},
    {...common, edge: along(edges.rightNeck, -0.5), mitre: view.x},
    {...common, edge: along(edges.leftArm.slice(4), -0.5)},
    {...common, edge: along(edges.rightArm.slice(4), 0.5).reverse()},
  ];
}
