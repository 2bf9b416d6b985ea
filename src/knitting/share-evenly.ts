import {invariant} from '../support/invariant.ts';

/**
 * Shares `total` over `parts` so that no two shares differ by more than one, the larger ones spread among the smaller:
 * share i is ⌊(i + 1) × total ÷ parts⌋ − ⌊i × total ÷ parts⌋. The sum is exact. Any run of neighbouring shares holds as
 * much as any other of the same length, to one, also across the join when the shares stand in a round. (Digital straight
 * line; the same rhythm as Bresenham's line of 1965.) `sharesOf(10, 4)` is 2, 3, 2, 3.
 */
export function sharesOf(total: number, parts: number): readonly number[] {
  return between(parts + 1, (index) => part(total, index, parts));
}

/**
 * Shares `total` over the spaces before, between and behind `places` places, half a space at each end: place i has
 * ⌊(2i + 1) × total ÷ (2 × places)⌋ before it. The spaces between differ by one at most, each end from half a space by
 * less than one. The first and the last of the `places + 1` shares are the ends.
 */
export function sharesWithHalfEnds(total: number, places: number): readonly number[] {
  const cut = (index: number) => {
    if (index === 0) return 0;
    return index > places ? total : part(total, 2 * index - 1, 2 * places);
  };
  return between(places + 2, cut);
}

function between(cuts: number, cut: (index: number) => number): readonly number[] {
  return Array.from({length: cuts - 1}, (_, index) => cut(index + 1) - cut(index));
}

function part(total: number, times: number, parts: number): number {
  invariant(parts > 0 && Number.isSafeInteger(total * times), 'shares are of a count that can be knitted');
  return Math.floor((total * times) / parts);
}
