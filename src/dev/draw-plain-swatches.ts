import {castOn, work, workRows} from './draw-fabric.ts';
import {type Picture, pictureOfSwatch} from './draw-picture.ts';
import {dyes} from './draw-yarn.ts';

/** Garter stitch and stockinette, ribs, seed and moss stitch, bar, lifted and make-one increases. */
export const plainSwatches: readonly Picture[] = [
  pictureOfSwatch(
    's01-garter-stockinette.jpg',
    () => {
      const fabric = castOn({castOn: 28, colour: dyes.oatmeal, gauge: [19.3, 38]});
      workRows(fabric, 1, 'k27 h', 'sl k26 h');
      workRows(fabric, 10, 'sl k26 h', 'sl k26 h');
      workRows(fabric, 1, 'sl k26 h', 'sl k*');
      fabric.row = 100 / 27;
      workRows(fabric, 15, 'k*', 'p*');
      return fabric;
    },
    {raisedPurls: true},
  ),
  pictureOfSwatch('s02-ribs.jpg', () => {
    const fabric = castOn({castOn: 39, colour: dyes.oatmeal, gauge: [22, 29], purlWidth: 0.55});
    workRows(fabric, 10, '19(k p) k', '19(p k) p');
    work(fabric, 'RS', 'k2tog k 9(p2 k2)');
    work(fabric, 'WS', 'p2 9(k2 p2)');
    workRows(fabric, 11, 'k2 9(p2 k2)', 'p2 9(k2 p2)');
    return fabric;
  }),
  pictureOfSwatch(
    's03-seed-moss.jpg',
    () => {
      const fabric = castOn({castOn: 31, colour: dyes['slate blue'], gauge: [21.5, 35]});
      workRows(fabric, 14, '15(k p) k', '15(k p) k');
      workRows(fabric, 7, '15(k p) k', '15(p k) p', '15(p k) p', '15(k p) k');
      return fabric;
    },
    {raisedPurls: true},
  ),
  pictureOfSwatch(
    's04-bar-increase.jpg',
    () => {
      const fabric = castOn({castOn: 25, colour: dyes.chalk, gauge: [22, 30]});
      workRows(fabric, 5, 'k*', 'p*', 'k kfb k* kfb k2', 'p*');
      workRows(fabric, 4, 'k*', 'p*');
      workRows(fabric, 1, 'k*', 'k*', 'k kfb k* kfb k2', 'k*');
      return fabric;
    },
    {raisedPurls: true},
  ),
  pictureOfSwatch('s05-lifted-make-one.jpg', () => {
    const fabric = castOn({castOn: 25, colour: dyes['moss green'], gauge: [19.5, 27]});
    workRows(fabric, 3, 'k*', 'p*', 'k3 rli k* rli k3', 'p*');
    workRows(fabric, 3, 'k*', 'p*', 'k3 m1 k* m1 k3', 'p*');
    workRows(fabric, 3, 'k*', 'p*');
    return fabric;
  }),
];
