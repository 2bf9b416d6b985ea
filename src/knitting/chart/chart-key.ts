import type {Face, Side} from '../rows/face.ts';
import type {ChartCell, ChartGrid, ChartRow} from './chart-grid.ts';
import {cellText} from './working-order.ts';

/** One symbol: how it looks from the right side, and what is worked for it on either side. */
export interface KeyEntry {
  readonly face: Face;
  /** A cell that shows it. */
  readonly cell: ChartCell;
  /** Counts from 0 among symbols that look alike but are worked differently. */
  readonly variant: number;
  /** In the words of written rows; null when it is not worked on that side. */
  readonly worked: Readonly<Record<Side, string | null>>;
}

export interface ChartKey {
  /** In the order in which a knitter meets them. */
  readonly entries: readonly KeyEntry[];
  entryOf(cell: ChartCell, row: Pick<ChartRow, 'side'>): KeyEntry | null;
}

interface Draft extends KeyEntry {
  worked: Record<Side, string | null>;
}

/** The symbols of a chart, exactly those that it uses. */
export function chartKey({rows}: ChartGrid): ChartKey {
  const entries: Draft[] = [];
  const byFace = new Map<string, Draft[]>();
  const byText = new Map<string, Draft>();
  for (const {cells, side} of rows) {
    const ordered = side === 'RS' ? cells.toReversed() : cells;
    for (const cell of ordered.filter(({kind}) => kind === 'worked')) {
      const name = nameOf(cell, side);
      if (byText.has(name)) continue;
      const face = faceName(cell);
      const alike = byFace.get(face) ?? [];
      byFace.set(face, alike);
      let entry = alike.find(({worked}) => worked[side] === null);
      if (!entry) {
        entry = {face: cell.face, cell, variant: alike.length, worked: {RS: null, WS: null}};
        alike.push(entry);
        entries.push(entry);
      }
      entry.worked[side] = cellText(cell);
      byText.set(name, entry);
    }
  }
  return {entries, entryOf: (cell, {side}) => byText.get(nameOf(cell, side)) ?? null};
}

function nameOf(cell: ChartCell, side: Side): string {
  return `${side} ${cellText(cell)} ${faceName(cell)}`;
}

function faceName({face, uses, makes}: ChartCell): string {
  return `${JSON.stringify(face)} ${uses} ${makes}`;
}
