import {type Band, drawBand, drawBandGround} from './draw-band.ts';
import {castOn, type Fabric, type Loop, workRows} from './draw-fabric.ts';
import {drawBackNeck, pointOf, splitNeck} from './draw-neck.ts';
import {drawFabric, type Picture} from './draw-picture.ts';
import {drawGround} from './draw-piece.ts';
import {relax} from './draw-relax.ts';
import {canvas, sceneToSvg} from './draw-scene.ts';
import {dyes, round, shade} from './draw-yarn.ts';

const colour = dyes.heather;
const gauge = [9, 12.5] as const;
const view = {scale: 2.05, x: canvas.width / 2, y: 965} as const;

/** The child's jersey of the written pattern, drawn at half its true number of stitches. */
export const jerseyPictures: readonly Picture[] = [{file: 't01-jersey.jpg', svg: drawJersey}];

function drawJersey(): string {
  const body = castOn({castOn: 30, colour, gauge, purlWidth: 0.85});
  workRows(body, 3, 'k2 7(p2 k2)', 'p2 7(k2 p2)');
  workRows(body, 17, 'k*', 'p*');
  const narrows = (pair: number) => pair > 0 && pair < 4;
  const edges = splitNeck(body, {pairs: 7, half: 12, centre: 6, arm: () => '', narrows});
  relax(body, {upright: 1, level: 0.6});
  const bound = body.rows.flat().filter((loop) => loop.row === 40 && Math.abs(loop.x) < 34);
  const band = neckband(edges.leftNeck, bound, edges.rightNeck);
  const [left, right] = [edges.leftNeck.at(-1), edges.rightNeck.at(-1)];
  const back =
    left && right
      ? drawBackNeck(
          pointOf(view, left, 0.5),
          pointOf(view, right, -0.5),
          26 * view.scale,
          colour,
          Math.max(...band.edge.map((point) => point.y)),
        )
      : '';
  const sleeves = drawSleeves(Math.max(...body.rows.flat().map((loop) => loop.y)));
  return sceneToSvg({
    ground: sleeves.ground + back + drawGround(body, view),
    knitting:
      sleeves.knitting +
      back +
      drawGround(body, view) +
      drawFabric(body, view, {boundOff: false}) +
      drawBandGround(band) +
      drawBand(band),
    scale: null,
  });
}

function neckband(leftNeck: readonly Loop[], bound: readonly Loop[], rightNeck: readonly Loop[]): Band {
  const edge = [
    ...leftNeck.map((loop) => pointOf(view, loop, 0.5)).reverse(),
    ...bound.toSorted((a, b) => a.x - b.x).map((loop) => pointOf(view, loop, 0)),
    ...rightNeck.map((loop) => pointOf(view, loop, -0.5)),
  ];
  return {edge, depth: 24 * view.scale, rounds: 4, stitch: 16, colour};
}

/** Both sleeves, folded along their length and set under the sides of the body. */
function drawSleeves(shoulder: number): {readonly ground: string; readonly knitting: string} {
  const sleeve = castOn({castOn: 10, colour: shade(colour, -0.06), gauge, purlWidth: 0.85});
  workRows(sleeve, 3, 'k2 2(p2 k2)', 'p2 2(k2 p2)');
  workRows(sleeve, 4, 'k*', 'p*', 'k m1 k*', 'p*', 'k*', 'p*');
  workRows(sleeve, 1, 'k*', 'p*');
  relax(sleeve, {upright: 1, level: 0.6});
  const level = {scale: view.scale, x: 0, y: 0};
  const long = 255 * view.scale;
  const tilt = 32;
  const [across, down] = [Math.sin((tilt * Math.PI) / 180), Math.cos((tilt * Math.PI) / 180)];
  const both = (draw: (fabric: Fabric) => string) =>
    [-1, 1]
      .map((side) => {
        const x = view.x + side * (126 * view.scale + long * across);
        const y = view.y - (shoulder - 62) * view.scale + long * down;
        return `<g transform="translate(${round(x)} ${round(y)}) rotate(${-side * tilt})">${draw(sleeve)}</g>`;
      })
      .join('');
  return {
    ground: both((fabric) => drawGround(fabric, level)),
    knitting: both((fabric) => drawGround(fabric, level) + drawFabric(fabric, level, {boundOff: false})),
  };
}
