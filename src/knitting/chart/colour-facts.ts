import type {ColourGrid, ColourRow} from './colour-grid.ts';
import {contrastRatio} from './contrast.ts';

/** Stitches of one colour in the chart as it stands: the repeat counted once. */
export interface ColourShare {
  readonly colour: number;
  readonly stitches: number;
  /** Of all stitches, 0 to 1. */
  readonly share: number;
}

/** A strand that passes behind the stitches of other colours. */
export interface Float {
  readonly row: number;
  readonly colour: number;
  /** The first stitch that it passes, counted from where the row begins; 1 is the first of the row. */
  readonly firstStitch: number;
  readonly stitches: number;
}

/** Two colours that lie side by side or one above the other. */
export interface Neighbours {
  readonly colours: readonly [number, number];
  /** 1 to 21; null when one of them has no stated look. */
  readonly contrast: number | null;
}

export interface BobbinCount {
  readonly row: number;
  /** Lengths of yarn that hang from the row: one for each block of a colour. */
  readonly bobbins: number;
}

export function colourShares({colours, rows}: ColourGrid): ColourShare[] {
  const counts = colours.map(() => 0);
  for (const {cells} of rows) {
    for (const cell of cells) if (cell !== null) counts[cell] = (counts[cell] ?? 0) + 1;
  }
  const all = counts.reduce((sum, count) => sum + count, 0);
  return counts.map((stitches, colour) => ({colour, stitches, share: all === 0 ? 0 : stitches / all}));
}

/** The colours of a row in the order in which they are worked; squares without a stitch are left out. */
export function workedColours({cells, side}: ColourRow): number[] {
  const colours = cells.filter((cell) => cell !== null);
  return side === 'RS' ? colours.reverse() : colours;
}

/**
 * Floats that pass more than `most` stitches, each once: between two stitches of one colour, and with a repeat also
 * from one pass of it to the next. Before the first and behind the last stitch of a colour in a flat row no float counts:
 * there the strand may be carried or cut.
 */
export function longFloats(grid: ColourGrid, most: number): Float[] {
  return grid.rows.flatMap((row) => {
    const {before, pass, after} = passOf(row, grid.isRound);
    const colours = [...before, ...pass, ...pass, ...after];
    const once = before.length + pass.length;
    const floats = new Map<string, Float>();
    const lastSeen = new Map<number, number>();
    colours.forEach((colour, index) => {
      const last = lastSeen.get(colour);
      lastSeen.set(colour, index);
      if (last === undefined || index - last - 1 <= most) return;
      // What begins in the second pass is told where it stands in the chart.
      const first = last + 1 < once ? last + 1 : last + 1 - pass.length;
      const float = {row: row.number, colour, firstStitch: first + 1, stitches: index - last - 1};
      floats.set(`${colour} ${first} ${float.stitches}`, float);
    });
    return [...floats.values()];
  });
}

/** The part of the row that is worked again, in the order of working; nothing when it is worked once. */
function passOf(row: ColourRow, isRound: boolean): Readonly<Record<'before' | 'pass' | 'after', number[]>> {
  const {repeat} = row;
  if (!repeat) {
    const all = workedColours(row);
    return isRound ? {before: [], pass: all, after: []} : {before: all, pass: [], after: []};
  }
  const part = (from: number, to: number) => workedColours({...row, cells: row.cells.slice(from, to)});
  const [left, right] = [part(0, repeat.from), part(repeat.to, row.cells.length)];
  const pass = part(repeat.from, repeat.to);
  return row.side === 'RS' ? {before: right, pass, after: left} : {before: left, pass, after: right};
}

/** Rows with more colours than the two that stranding carries (common practice, no source). */
export function crowdedRows({rows}: ColourGrid): {readonly row: number; readonly colours: number}[] {
  return rows
    .map((row) => ({row: row.number, colours: new Set(workedColours(row)).size}))
    .filter(({colours}) => colours > 2);
}

/** For intarsia, every block of a colour hangs on a length of yarn of its own. */
export function bobbinCounts({rows}: ColourGrid): BobbinCount[] {
  return rows.map((row) => {
    const colours = workedColours(row);
    const bobbins = colours.filter((colour, index) => colour !== colours[index - 1]).length;
    return {row: row.number, bobbins};
  });
}

/** Every pair of colours that touch, the pair hardest to tell apart in greyscale first. */
export function neighbourContrasts({colours, rows}: ColourGrid): Neighbours[] {
  const pairs = new Map<string, readonly [number, number]>();
  const touch = (a: number | null | undefined, b: number | null | undefined) => {
    if (a === undefined || b === undefined || a === null || b === null || a === b) return;
    const pair = [Math.min(a, b), Math.max(a, b)] as const;
    pairs.set(pair.join(' '), pair);
  };
  rows.forEach(({cells}, row) => {
    cells.forEach((cell, column) => {
      touch(cell, cells[column + 1]);
      touch(cell, rows[row + 1]?.cells[column]);
    });
  });
  return [...pairs.values()]
    .map((pair) => {
      const [a, b] = [colours[pair[0]]?.hex, colours[pair[1]]?.hex];
      return {colours: pair, contrast: a && b ? contrastRatio(a, b) : null};
    })
    .sort((a, b) => (a.contrast ?? 0) - (b.contrast ?? 0));
}
