import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComputedTable, TableLookup} from '../model/computed-table.ts';
import {nearestName} from '../support/nearest-name.ts';
import {notComputed, type Table} from './define-table.ts';
import {gaugeTable} from './gauge-table.ts';
import {sizeTable} from './size-table.ts';
import {yarnWeightTable} from './yarn-weight-table.ts';

/** Every computed table, in the order of the documentation. */
export const tables: readonly Table[] = [
  gaugeTable, // Counting is what every swatch begins with.
  sizeTable, // The edges of the same swatch.
  yarnWeightTable, // Compares the gauge with the yarn's label, so it stands behind the gauge.
];

/**
 * The computed tables as `item` may ask for them: `::gauge` shows the item's own, `::gauge{of=S-07}` those of another
 * item, for a question or report about a swatch. Null for a name that is no table.
 */
export function lookUpTable(binder: Binder, item: Item): TableLookup {
  return (name, attributes) => {
    const table = tables.find(({id}) => id === name);
    if (!table) return null;
    const unknown = Object.keys(attributes).find((attribute) => attribute !== 'of');
    if (unknown !== undefined) return unknownAttribute(name, unknown);
    const {of} = attributes;
    const shown = of === undefined ? item : itemsById(binder).get(of);
    return shown ? table.compute(binder, shown) : unknownItem(binder, of ?? '');
  };
}

function unknownAttribute(table: string, attribute: string): ComputedTable {
  return notComputed(
    `\`::${table}\` knows no \`${attribute}\``,
    `Write \`::${table}\`, or \`::${table}{of=S-07}\` to show the values of another item.`,
  );
}

function unknownItem(binder: Binder, id: string): ComputedTable {
  const near = nearestName(id, itemsById(binder).keys());
  return notComputed(
    `no item answers the requirement \`${id}\``,
    near ? `Write \`of=${near}\` if that is what was meant.` : 'Write the id of an item, such as `of=S-07`.',
  );
}
