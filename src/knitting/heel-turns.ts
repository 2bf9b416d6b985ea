import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {nearestWholeHalfUp} from './rounding.ts';
import {type Rows, rows, type Stitches, stitches} from './units.ts';

export interface HeelTurns {
  readonly middle: Stitches;
  /** Turned stitches at each side. */
  readonly each: number;
  /** Rows from the first turn until only the middle is worked; one stitch fewer in each. */
  readonly shorter: Rows;
  /** Rows back out again until all stitches are worked. */
  readonly longer: Rows;
  /** Stitches worked in the first short row and in the last. */
  readonly first: Stitches;
  readonly last: Stitches;
}

/**
 * A heel of short rows, one stitch fewer in each row until the middle is left, then one more in each. Row r works
 * heel − r stitches, so that the last works exactly the middle.
 */
export function heelTurns(heel: Stitches, middle: Stitches): Result<HeelTurns> {
  if (heel > mostCounted) {
    return cannotWork(`\`${heel}\` is more stitches than a heel has`, `Write up to ${mostCounted} stitches.`);
  }
  if (middle === 0 || heel - middle < 2) {
    return cannotWork(
      `a heel of \`${heel}\` stitches cannot leave \`${middle}\` in the middle`,
      heel < 3
        ? 'Write a heel of at least 3 stitches.'
        : `Leave 1 to ${heel - 2} stitches in the middle; a third is usual.`,
    );
  }
  if ((heel - middle) % 2 !== 0) {
    const choices = [middle - 1, middle + 1].filter((count) => count > 0 && heel - count >= 2);
    return cannotWork(
      `\`${heel}\` less \`${middle}\` in the middle is odd, so the two sides of the heel would differ`,
      `Leave ${choices.join(' or ')} stitches in the middle.`,
    );
  }
  const turns = heel - middle;
  return success({
    middle,
    each: turns / 2,
    shorter: rows(turns),
    longer: rows(turns),
    first: stitches(heel - 1),
    last: middle,
  });
}

/** A third of the heel, to the nearest number that leaves two equal sides; common practice, no source. */
export function usualMiddle(heel: Stitches): Stitches {
  return stitches(heel - 2 * nearestWholeHalfUp(Fraction.ofRatio(heel, 3)));
}
