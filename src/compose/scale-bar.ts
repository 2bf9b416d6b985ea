import type {Fraction} from '../knitting/fraction.ts';
import type {ScaleBar} from '../model/composed.ts';

/** Lengths of bars in millimetres with their words, the shortest first. */
const bars = {
  metric: [
    [5, '5 mm'],
    [10, '1 cm'],
    [20, '2 cm'],
    [50, '5 cm'],
    [100, '10 cm'],
    [200, '20 cm'],
    [500, '50 cm'],
  ],
  inch: [
    [25.4 / 4, '¼ in'],
    [25.4 / 2, '½ in'],
    [25.4, '1 in'],
    [50.8, '2 in'],
    [127, '5 in'],
    [254, '10 in'],
    [508, '20 in'],
  ],
} as const;

/**
 * The bar below a picture that shows `shows` millimetres across and is printed `printed` millimetres wide: the longest
 * that takes no more than a third of its width, else the shortest. Only its printed length is in paper's millimetres.
 */
export function scaleBar(shows: Fraction, printed: number, units: keyof typeof bars): ScaleBar {
  const across = shows.toNumber();
  const [shortest, ...longer] = bars[units];
  const [length, words] = longer.findLast(([each]) => each * 3 <= across) ?? shortest;
  return {millimetres: (length / across) * printed, words};
}
