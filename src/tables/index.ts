import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComputedTable, TableLookup} from '../model/computed-table.ts';
import {attemptsTable} from './attempts-table.ts';
import {bodyTable} from './body-table.ts';
import {castOnTable} from './cast-on-table.ts';
import {chartTable} from './chart-table.ts';
import {colourChartTable} from './colour-chart-table.ts';
import {curveTable} from './curve-table.ts';
import {notComputed, type Table} from './define-table.ts';
import {fabricTable} from './fabric-table.ts';
import {finishedSizeTable} from './finished-size-table.ts';
import {gaugeTable} from './gauge-table.ts';
import {heelTable} from './heel-table.ts';
import {joinTable} from './join-table.ts';
import {keyTable} from './key-table.ts';
import {noSuchItem} from './no-such-item.ts';
import {pickUpTable} from './pick-up-table.ts';
import {pieceTable} from './piece-table.ts';
import {sizeTable} from './size-table.ts';
import {sizesTable} from './sizes-table.ts';
import {slopeTable} from './slope-table.ts';
import {spreadTable} from './spread-table.ts';
import {stepsTable} from './steps-table.ts';
import {widthMatchTable} from './width-match-table.ts';
import {yarnCountTable} from './yarn-count-table.ts';
import {yarnTable} from './yarn-table.ts';
import {yarnWeightTable} from './yarn-weight-table.ts';

/** Every computed table, in the order of the documentation. */
export const tables: readonly Table[] = [
  gaugeTable, // Counting is what every swatch begins with.
  sizeTable, // The edges of the same swatch.
  attemptsTable, // The same piece, worked again and again.
  yarnWeightTable, // Compares the gauge with the yarn's label, so it stands behind the gauge.
  bodyTable, // A garment begins with a measure of the body.
  castOnTable, // That measure becomes stitches.
  spreadTable, // Increases, decreases and buttonholes along one row of them.
  slopeTable, // The straight edges of a piece.
  curveTable, // Its curved edges.
  stepsTable, // Its shoulders.
  heelTable, // The same short rows in a sock.
  pickUpTable, // Bands are knitted on when the pieces are done.
  joinTable, // Seams come last.
  pieceTable, // A whole piece, in which all of these meet.
  widthMatchTable, // Cables within a piece, from two gauges.
  sizesTable, // The same piece in several sizes.
  finishedSizeTable, // What each of them measures.
  yarnTable, // How much yarn all of it takes.
  yarnCountTable, // What yarn that is.
  keyTable, // What the rows' abbreviations mean.
  chartTable, // The rows themselves, drawn.
  colourChartTable, // Charts that change colour.
  fabricTable, // What those rows make.
];

/**
 * The computed tables as `item` may ask for them: `::gauge` shows the item's own, `::gauge{of=S-07}` those of another
 * item, for a question or report about a swatch. Null for a name that is no table.
 */
export function lookUpTable(binder: Binder, item: Item): TableLookup {
  return (name, attributes) => {
    const table = tables.find(({id}) => id === name);
    if (!table) return null;
    if (table.attributes) return table.compute(binder, item, attributes);
    const unknown = Object.keys(attributes).find((attribute) => attribute !== 'of');
    if (unknown !== undefined) return unknownAttribute(name, unknown);
    const {of} = attributes;
    const shown = of === undefined ? item : itemsById(binder).get(of);
    return shown ? table.compute(binder, shown, {}) : noSuchItem(binder, 'of', of ?? '');
  };
}

function unknownAttribute(table: string, attribute: string): ComputedTable {
  return notComputed(
    `\`::${table}\` knows no \`${attribute}\``,
    `Write \`::${table}\`, or \`::${table}{of=S-07}\` to show the values of another item.`,
  );
}
