import type {Rule} from './define-rule.ts';
import {blockFault, rowBlocks} from './parts/row-blocks.ts';

/**
 * A stated multiple holds for every number of repeats, not only for the number that was cast on.
 *
 * Why: whoever works the stitch pattern at another width relies on it. It is solved for all numbers at once, not tried
 * out on a few; rows that do not add up as written are the findings of `row-count` alone.
 *
 * Example: `multiple: 13 + 2` over a row that needs an odd number of stitches.
 */
export const rowMultiple: Rule = {
  id: 'row-multiple',
  summary: 'a stated multiple holds for every number of repeats',
  severity: 'error',
  check(binder, report) {
    for (const block of rowBlocks(binder)) {
      const problem = block.lawProblem();
      if (problem) report(blockFault(block, problem));
    }
  },
};
