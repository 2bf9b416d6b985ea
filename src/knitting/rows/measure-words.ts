import {plainLaw} from './law.ts';
import {constant} from './linear-form.ts';
import {type Measure, Measurer} from './measure.ts';
import {castOn} from './needle.ts';
import {waysToRead} from './readings.ts';
import type {Step} from './row-syntax.ts';
import {RowTrouble} from './row-trouble.ts';
import {RowWorker} from './work-row.ts';

/** More stitches than any one thing uses. */
const plenty = 1_000;

const customary = {
  'bind-off loop': waysToRead['bind-off loop'][0],
  'yarn forward': waysToRead['yarn forward'][0],
  'repeat times': waysToRead['repeat times'][0],
};

/**
 * What steps with turns in them use and make together, as the words of a bobble do: worked on a needle with stitches
 * enough. Null when they do not end in the direction in which they began, or go to the end of the row.
 */
export function measureWords(steps: readonly Step[]): Measure | null {
  const worker = new RowWorker(castOn(constant(plenty)), plainLaw, new Measurer(0, customary));
  try {
    worker.work(steps, null);
  } catch (error) {
    if (!(error instanceof RowTrouble)) throw error;
    return null;
  }
  const {left, right} = worker.needles;
  const isBack = worker.turns % 2 === 0 && left.fixed > 0;
  return isBack ? {uses: plenty - left.fixed, makes: right.fixed} : null;
}
