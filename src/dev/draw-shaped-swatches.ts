import {castOn, type Fabric, work, workRows} from './draw-fabric.ts';
import {type Picture, pictureOfSwatch} from './draw-picture.ts';
import {dyes, shade} from './draw-yarn.ts';

/** Decreases, yarn overs, leaf lace, cables, twists and short rows. */
export const shapedSwatches: readonly Picture[] = [
  pictureOfSwatch('s06-paired-decreases.jpg', () => {
    const fabric = castOn({castOn: 37, colour: dyes['moss green'], gauge: [19.5, 27]});
    workRows(fabric, 4, 'k*', 'p*', 'k2 ssk k* k2tog k2', 'p*');
    workRows(fabric, 4, 'k*', 'p*', 'k2 k2tog k* ssk k2', 'p*');
    workRows(fabric, 2, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch('s06-left-lean.jpg', () => {
    const fabric = castOn({castOn: 17, colour: dyes['moss green'], gauge: [19.5, 27]});
    workRows(fabric, 4, 'k*', 'p*', 'k2 ssk k*', 'p*');
    workRows(fabric, 1, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch('s07-double-decreases.jpg', () => {
    const fabric = castOn({castOn: 59, colour: dyes.chalk, gauge: [28.5, 40]});
    workRows(fabric, 2, 'k*', 'p*');
    for (const side of [9, 8, 7, 6]) {
      const between = 2 * side - 2;
      workRows(fabric, 1, `k${side} k3tog k${between} s2kp k${between} sk2p k${side}`, 'p*', 'k*', 'p*');
    }
    workRows(fabric, 11, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch('s08-yarn-overs.jpg', () => {
    const fabric = castOn({castOn: 41, colour: dyes['rose hip'], gauge: [28.4, 40]});
    workRows(fabric, 4, 'k*', 'p*');
    work(fabric, 'RS', 'k3 9(yo k2tog k2) k2');
    plainRows(fabric, 'WS', 8);
    work(fabric, 'WS', 'p3 9(yo p2tog p2) p2');
    plainRows(fabric, 'RS', 8);
    work(fabric, 'RS', 'k2 9(k yo p2tog k) k3');
    plainRows(fabric, 'WS', 9);
    work(fabric, 'RS', 'k2 9(p yo k2tog k) k3');
    plainRows(fabric, 'WS', 9);
    return fabric;
  }),
  pictureOfSwatch('s09-before-blocking.jpg', () => leafLace([31, 38.2]), {
    upright: 1.2,
    gape: 0.3,
    curl: 9,
  }),
  pictureOfSwatch('s09-leaf-lace.jpg', () => leafLace([27.8, 35.7]), {upright: 1.2, gape: 0.7}),
  pictureOfSwatch('s10-cables.jpg', () => {
    const fabric = castOn({castOn: 24, colour: dyes.oatmeal, gauge: [19.5, 27], purlWidth: 0.85});
    workRows(fabric, 7, 'k*', 'p*');
    workRows(fabric, 1, 'k*', 'p4 m1p p7 m1p p2 m1p p7 m1p p4');
    workRows(fabric, 2, ...diamond);
    workRows(fabric, 1, 'k4 k2tog k6 k2tog k2tog k6 k2tog k4', 'p*');
    workRows(fabric, 6, 'k*', 'p*');
    return fabric;
  }),
  pictureOfSwatch('s11-honeycomb.jpg', () => {
    const fabric = castOn({castOn: 34, colour: dyes.chalk, gauge: [23.4, 29]});
    workRows(fabric, 9, 'k 8(rt lt) k', 'p*', 'k 8(lt rt) k', 'p*');
    return fabric;
  }),
  pictureOfSwatch(
    's17-short-rows.jpg',
    () => {
      const fabric = castOn({castOn: 32, colour: wedges, gauge: [13.5, 18.5]});
      workRows(fabric, 3, 'k*', 'p*');
      workRows(fabric, 1, 'k*', 'p*', 'k24', 'p24', 'k16', 'p16', 'k8', 'p8');
      workRows(fabric, 1, 'k*', 'p24', 'k24', 'p16', 'k16', 'p8', 'k8', 'p*');
      workRows(fabric, 4, 'k*', 'p*');
      return fabric;
    },
    {level: 0.05},
  ),
];

/** The rows of the two wedges are drawn a little darker. */
function wedges(_: number, row: number): string {
  const short = (row > 8 && row < 15) || (row > 15 && row < 22);
  return short ? shade(dyes['fleece grey'], -0.16) : dyes['fleece grey'];
}

const diamond = [
  'k p2 2/2lc p5 2/2lc p5 2/2rc p2 k',
  'p k2 p4 k5 p4 k5 p4 k2 p',
  'k p2 k4 p4 2/1rpc 2/1lpc p4 k4 p2 k',
  'p k2 p4 k4 p2 k2 p2 k4 p4 k2 p',
  'k p2 2/2lc p3 2/1rpc p2 2/1lpc p3 2/2rc p2 k',
  'p k2 p4 k3 p2 k4 p2 k3 p4 k2 p',
  'k p2 k4 p3 k2 p4 k2 p3 k4 p2 k',
  'p k2 p4 k3 p2 k4 p2 k3 p4 k2 p',
  'k p2 2/2lc p3 2/1lpc p2 2/1rpc p3 2/2rc p2 k',
  'p k2 p4 k4 p2 k2 p2 k4 p4 k2 p',
  'k p2 k4 p4 2/1lpc 2/1rpc p4 k4 p2 k',
  'p k2 p4 k5 p4 k5 p4 k2 p',
];

/** Stockinette in which the first row may be either side. */
function plainRows(fabric: Fabric, first: 'RS' | 'WS', count: number): void {
  for (let row = 0; row < count; row++) {
    const right = (row % 2 === 0) === (first === 'RS');
    work(fabric, right ? 'RS' : 'WS', right ? 'k*' : 'p*');
  }
}

/** Leaf lace at a gauge of its own: unblocked it is tighter. */
function leafLace(gauge: readonly [number, number]): Fabric {
  const fabric = castOn({castOn: 41, colour: dyes['sea glass'], gauge});
  workRows(
    fabric,
    3,
    'p5 6(yo k yo p5)',
    'k5 6(p3 k5)',
    'p5 6(k yo k yo k p5)',
    'k5 6(p5 k5)',
    'p5 6(ssk k k2tog p5)',
    'k5 6(p3 k5)',
    'p5 6(s2kp p5)',
    'k5 6(p k5)',
    'p2 yo k yo 6(p5 yo k yo) p2',
    'k2 p3 6(k5 p3) k2',
    'p2 k yo k yo k 6(p5 k yo k yo k) p2',
    'k2 p5 6(k5 p5) k2',
    'p2 ssk k k2tog 6(p5 ssk k k2tog) p2',
    'k2 p3 6(k5 p3) k2',
    'p2 s2kp 6(p5 s2kp) p2',
    'k2 p 6(k5 p) k2',
  );
  return fabric;
}
