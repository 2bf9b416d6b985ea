import {readChart} from '../knitting/chart/read-chart.ts';
import type {Rule} from './define-rule.ts';
import {blockFault} from './parts/row-blocks.ts';

/**
 * Every sign of a chart stands in its key, and its rows are equally wide.
 *
 * Why: a chart is drawn from what is written; a sign without a meaning would be a hole in the drawing.
 *
 * Example: an `O` in the grid of a `chart` block whose key has only `X` and `.`.
 */
export const unreadChart: Rule = {
  id: 'unread-chart',
  summary: 'every sign of a chart stands in its key, and its rows are equally wide',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      for (const block of item.body.blocks.filter(({language}) => language === 'chart')) {
        for (const problem of readChart(block.text).problems) report(blockFault({item, block}, problem));
      }
    }
  },
};
