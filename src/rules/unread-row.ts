import type {Rule} from './define-rule.ts';
import {blockFault, rowBlocks} from './parts/row-blocks.ts';

/**
 * Every word of the written rows is one that a knitter reads in only one way.
 *
 * Why: what cannot be read cannot be counted, and what we stumble over the assessors' test knitter may too. The rest of
 * the block is read and counted all the same.
 *
 * Example: `Row 1 (RS): K2, k2tgo, yo, k3.`, where `k2tog` was meant.
 */
export const unreadRow: Rule = {
  id: 'unread-row',
  summary: 'every word of the written rows is one that a knitter reads in only one way',
  severity: 'error',
  check(binder, report) {
    for (const block of rowBlocks(binder)) {
      for (const problem of block.read.problems) report(blockFault(block, problem));
    }
  },
};
