import type {Problem} from '../../support/result.ts';
import {findDoubts} from './find-doubts.ts';
import {plainLaw} from './law.ts';
import {constant} from './linear-form.ts';
import {startOf} from './prove-rows.ts';
import {sizeCountOf} from './read-rows.ts';
import {readingsToTry} from './readings.ts';
import {orderRows} from './row-order.ts';
import type {WrittenPattern} from './row-syntax.ts';
import {settlePassages} from './settle-passages.ts';
import {workPattern} from './work-pattern.ts';

export interface FirstTrouble {
  /** The first row problem of each size that does not come out, read in the way that leaves the fewest. */
  readonly problems: readonly Problem[];
  readonly visited: number;
}

/** Works the rows in every size only as far as they come out: much less work than a proof. */
export function firstTrouble(pattern: WrittenPattern): FirstTrouble {
  const start = startOf(pattern);
  if (start === null) return {problems: [], visited: 0};
  let best: readonly Problem[] | null = null;
  let visited = 0;
  for (const readings of readingsToTry(pattern.header.readings, findDoubts(pattern))) {
    const {rows} = orderRows(settlePassages(pattern, readings));
    const problems: Problem[] = [];
    for (let size = 0; size < sizeCountOf(pattern.header); size++) {
      const stitches = constant(start[Math.min(size, start.length - 1)] ?? 0);
      const setting = {law: plainLaw, size, readings, isPlanned: false, stopsEarly: true};
      const worked = workPattern(rows, stitches, setting);
      visited += worked.visited;
      problems.push(...worked.problems.slice(0, 1));
    }
    if (best === null || problems.length < best.length) best = problems;
    if (problems.length === 0) break;
  }
  return {problems: best ?? [], visited};
}
