import {castOn, type Fabric, work, workRows} from './draw-fabric.ts';
import {drawFabric, type Picture, pictureOfSwatch} from './draw-picture.ts';
import {drawGround} from './draw-piece.ts';
import {relax} from './draw-relax.ts';
import {canvas, sceneToSvg} from './draw-scene.ts';
import {drawStitch} from './draw-wale.ts';
import {dyes, round, shade} from './draw-yarn.ts';

/** The hat from the side and from above, and the mitts. */
export const garments: readonly Picture[] = [
  pictureOfSwatch('hat.jpg', knitHat, {boundOff: false, upright: 0.35}),
  {file: 'hat-crown.jpg', svg: drawCrown},
  {file: 't02-mitts.jpg', svg: drawMitts},
];

/** Half of its 96 stitches, which is what is seen of it. */
function knitHat(): Fabric {
  const fabric = castOn({castOn: 48, colour: dyes.oatmeal, gauge: [18, 25], purlWidth: 0.62});
  workRows(fabric, 9, '12(k2 p2)', '12(k2 p2)');
  workRows(fabric, 12, 'k*', 'p*');
  for (let plain = 10; plain >= 0; plain--) {
    const first = Math.floor(plain / 2);
    work(fabric, 'RS', `k${first} k2tog 3(k${plain} k2tog) k${plain - first}`);
    work(fabric, 'WS', 'p*');
  }
  return fabric;
}

function drawCrown(): string {
  const [x, y, ring] = [canvas.width / 2, canvas.height / 2, 21];
  const stitches: string[] = [];
  for (let round = 0; round < 23; round++) {
    const count = Math.max(8, 96 - 8 * Math.max(0, Math.ceil((round - 1) / 2)));
    const outer = 515 - round * ring;
    for (let index = 0; index < count; index++) {
      const angle = (2 * Math.PI * (index + 0.5)) / count;
      const joins = round % 2 === 1 && (index + 1) % (count / 8) === 0;
      const turn = joins ? 0.5 / count : 0;
      const at = (radius: number, by: number) => ({
        x: x + radius * Math.cos(angle + by),
        y: y + radius * Math.sin(angle + by),
      });
      const width = (2 * Math.PI * (outer - ring / 2)) / count;
      const stitch = drawStitch(
        at(outer, -turn * 4),
        at(outer - ring, turn * 6),
        Math.min(width, 46),
        joins ? shade(dyes.oatmeal, 0.2) : dyes.oatmeal,
      );
      stitches.push(stitch);
    }
  }
  const disc = `<circle cx="${x}" cy="${y}" r="522" fill="${shade(dyes.oatmeal, -0.55)}"/>`;
  const knot = `<circle cx="${x}" cy="${y}" r="15" fill="${shade(dyes.oatmeal, -0.15)}"/>`;
  return sceneToSvg({ground: disc, knitting: stitches.join('') + knot, scale: null});
}

function drawMitts(): string {
  const scale = 4.6;
  const mitt = knitMitt();
  const thumb = knitThumb();
  const level = {scale, x: 0, y: 0};
  const both = (draw: (fabric: Fabric) => string) =>
    [-1, 1]
      .map((side) => {
        const at = `translate(${round(canvas.width / 2 + side * 352)} 985) scale(${side} 1)`;
        return `<g transform="${at}"><g transform="translate(-215 -590) rotate(-20)">${draw(thumb)}</g>${draw(mitt)}</g>`;
      })
      .join('');
  return sceneToSvg({
    ground: both((fabric) => drawGround(fabric, level)),
    knitting: both((fabric) => drawGround(fabric, level) + drawFabric(fabric, level)),
    scale: null,
  });
}

/** The back of the hand: half of the round, with half of the thumb's gusset at its inner edge. */
function knitMitt(): Fabric {
  const mitt = castOn({castOn: 20, colour: dyes['slate blue'], gauge: [23, 32], purlWidth: 0.8});
  workRows(mitt, 9, '5(k2 p2)', '5(k2 p2)');
  work(mitt, 'RS', 'k5 m1 k10 m1 k5');
  const crossing = 'k5 p2 2/2rc 2/2lc p2 k*';
  const plain = ['k5 p2 k8 p2 k*', 'p* k2 p8 k2 p5'] as const;
  work(mitt, 'WS', plain[1]);
  workRows(mitt, 1, crossing, plain[1], ...plain, ...plain);
  for (let time = 0; time < 3; time++) {
    workRows(mitt, 1, `${crossing} m1 k2`, plain[1], plain[0], plain[1], `${plain[0]} m1 k2`, plain[1]);
  }
  work(mitt, 'RS', 'k5 p2 2/2rc 2/2lc p2 k5 bo6');
  work(mitt, 'WS', plain[1]);
  workRows(mitt, 2, ...plain);
  workRows(mitt, 1, crossing, plain[1], ...plain, ...plain);
  workRows(mitt, 3, '5(k2 p2) k2', 'p2 5(k2 p2)');
  relax(mitt, {upright: 1, level: 0.6});
  return mitt;
}

function knitThumb(): Fabric {
  const thumb = castOn({castOn: 8, colour: dyes['slate blue'], gauge: [23, 32], purlWidth: 0.8});
  workRows(thumb, 4, 'k*', 'p*');
  workRows(thumb, 2, '2(k2 p2)', '2(k2 p2)');
  relax(thumb, {upright: 1, level: 0.6});
  return thumb;
}
