import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {chartOfBlock} from '../tables/chart-table.ts';

const nothing: ComputedTable = {content: [], problems: []};

/**
 * What stands on the page in the place of a fenced block: a `chart` block is drawn, a `piece` block is shown by its
 * `::piece` and leaves no trace itself; null for blocks that are printed as they are. What cannot be read in a chart is
 * the finding of the rule `unread-chart`.
 */
export function drawnBlock(binder: Binder, item: Item, language: string, text: string): ComputedTable | null {
  if (language === 'piece') return nothing;
  if (language !== 'chart') return null;
  const drawn = chartOfBlock({language, text}, item, binder.settings.units);
  return drawn.ok ? drawn.value : nothing;
}
