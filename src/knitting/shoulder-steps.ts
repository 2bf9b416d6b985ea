import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted, mostPlaces} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {nearestWholeHalfUp} from './rounding.ts';
import {type Rows, rows, type Stitches, stitches} from './units.ts';

export interface ShoulderSteps {
  /** Stitches of one shoulder, step by step from the armhole edge; larger steps first. */
  readonly steps: readonly Stitches[];
  /** Rows that both shoulders take, bound off at the beginning of every row. */
  readonly rows: Rows;
  /** As short rows: the stitches left unworked at each end, more with each pair of turns. */
  readonly unworked: readonly Stitches[];
}

/**
 * A shoulder in steps that differ by one stitch at most; the larger ones come first, at the armhole (common practice, no
 * source). 30 stitches in 3 steps are 10, 10 and 10: bind off 10 at the beginning of the next 6 rows, or turn with 10,
 * then 20, then 30 left on each side.
 */
export function shoulderSteps(shoulder: Stitches, count: number): Result<ShoulderSteps> {
  if (shoulder > mostCounted || count > mostPlaces) {
    return cannotWork(
      `\`${shoulder}\` stitches in \`${count}\` steps is more than a piece of knitting has`,
      `Write up to ${mostCounted} stitches and ${mostPlaces} steps.`,
    );
  }
  if (count === 0 || count > shoulder) {
    return cannotWork(
      `\`${plural(shoulder, 'stitch', 'stitches')}\` cannot be bound off in \`${plural(count, 'step')}\``,
      shoulder === 0 ? 'Write the stitches of one shoulder.' : `Work 1 to ${shoulder} steps.`,
    );
  }
  const [small, larger] = [Math.floor(shoulder / count), shoulder % count];
  const steps = Array.from({length: count}, (_, index) => stitches(small + (index < larger ? 1 : 0)));
  let gone = 0;
  const unworked = steps.map((step) => {
    gone += step;
    return stitches(gone);
  });
  return success({steps, rows: rows(2 * count), unworked});
}

/** Steps that fill so many rows, two rows to a step, to the nearest whole, half up; at least one. */
export function stepsInRows(height: Fraction): number {
  return Math.max(1, nearestWholeHalfUp(height.dividedBy(Fraction.ofInteger(2))));
}
