import type {Rule} from './define-rule.ts';
import {blockFault, rowBlocks} from './parts/row-blocks.ts';

/**
 * The written rows add up: each row uses the stitches that the row before left, repeats come out whole, stated counts
 * are true, and the bind-off finds what there is.
 *
 * Why: a row that does not add up is the most common reason for a pattern to come back, and nobody finds it by reading.
 * Counted in every size; rows with words that could not be read are not judged. Where one count, changed, would make all
 * come out, the finding stands at it and says so.
 *
 * Example: `Row 1 (RS): K2, *k1, yo, ssk; rep from * to last 3 sts, k3.` on 30 stitches, where the repeat leaves one over.
 */
export const rowCount: Rule = {
  id: 'row-count',
  summary: 'the written rows add up, in every size',
  severity: 'error',
  check(binder, report) {
    for (const block of rowBlocks(binder)) {
      for (const problem of block.countProblems()) report(blockFault(block, problem));
    }
  },
};
