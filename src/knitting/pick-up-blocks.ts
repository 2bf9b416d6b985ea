import {invariant} from '../support/invariant.ts';
import {sharesOf} from './share-evenly.ts';

/** Pick up `picked` stitches in the next `of` rows, or in the next `of` bound-off stitches. */
export interface PickUpBlock {
  readonly picked: number;
  readonly of: number;
}

/**
 * Picks up `picked` stitches over `of` places in blocks that a knitter can count: with fewer stitches than places, each
 * block leaves one place out (3 of 4); with fewer than half, each block takes one (1 of 3); with more stitches than
 * places, each block makes one more (5 from 4), beyond twice as many, each place several. No two blocks differ by more
 * than one and the sums are exact. 10 over 13 are 3 of 4, 3 of 4, 4 of 5. Both counts are above zero.
 */
export function pickUpBlocks(picked: number, of: number): readonly PickUpBlock[] {
  invariant(picked > 0 && of > 0, 'stitches are picked up over at least one place');
  const difference = Math.abs(of - picked);
  if (difference === 0) return Array.from({length: of}, () => ({picked: 1, of: 1}));
  if (picked < of) {
    return difference <= picked
      ? sharesOf(of, difference).map((size) => ({picked: size - 1, of: size}))
      : sharesOf(of, picked).map((size) => ({picked: 1, of: size}));
  }
  return difference <= of
    ? sharesOf(of, difference).map((size) => ({picked: size + 1, of: size}))
    : sharesOf(picked, of).map((size) => ({picked: size, of: 1}));
}
