import type {Element} from 'hast';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';

/** One computed table or figure: a pure function of the binder and the item whose values it shows. */
export interface Table {
  /** Permanent; the name of the directive that asks for it, such as `gauge` for `::gauge`. */
  readonly id: string;
  /** What it shows, without a full stop. */
  readonly summary: string;
  compute(binder: Binder, item: Item): ComputedTable;
}

export function computed(...content: readonly Element[]): ComputedTable {
  return {content, problems: []};
}

/** Why a table could not be computed: the fact, and what to do. */
export function notComputed(message: string, hint: string): ComputedTable {
  return {content: [], problems: [{message, hint}]};
}
