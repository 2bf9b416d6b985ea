import type {Element} from 'hast';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';

/** One computed table or figure: a pure function of the binder and the item whose values it shows. */
export interface Table {
  /** Permanent; the name of the directive that asks for it, such as `gauge` for `::gauge`. */
  readonly id: string;
  /** What it shows, without a full stop. */
  readonly summary: string;
  /** What it reads between the braces; without it only `of`, the item whose values it shows. */
  readonly attributes?: Attributes;
  compute(binder: Binder, item: Item, attributes: Readonly<Record<string, string>>): ComputedTable;
}

export interface Attributes {
  readonly names: readonly string[];
  /** A directive that can be computed, for hints. */
  readonly example: string;
}

/** What is drawn is drawn when it is first asked for: checking asks only whether it can be. */
export function computed(draw: () => Element): ComputedTable {
  let drawn: readonly Element[] | null = null;
  return {
    get content() {
      drawn ??= [draw()];
      return drawn;
    },
    problems: [],
  };
}

/** Why a table could not be computed: the fact, and what to do. */
export function notComputed(message: string, hint: string): ComputedTable {
  return {content: [], problems: [{message, hint}]};
}
