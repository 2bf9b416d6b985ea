import type {ColourGrid} from './colour-grid.ts';

/** Stitches of one colour that hang together over rows: in intarsia, what one length of yarn works. */
export interface ColourArea {
  readonly colour: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly stitches: number;
}

interface Block {
  readonly row: number;
  readonly colour: number;
  readonly from: number;
  /** Exclusive. */
  readonly to: number;
}

/**
 * The areas of a chart, in the order in which their yarns are joined. A block of a colour goes on with the yarn of
 * the block of that colour below it that it overlaps; of two that meet, the one further left is cut and its stitches
 * up to there stay an area of their own.
 */
export function colourAreas(grid: ColourGrid): readonly ColourArea[] {
  const areas: ColourArea[] = [];
  let below: {readonly block: Block; readonly area: number}[] = [];
  for (const blocks of blocksOf(grid)) {
    const taken = new Set<number>();
    const here: typeof below = [];
    // From the right: there a chart is begun.
    for (const block of blocks.toReversed()) {
      const found = below.findLast(({block: other, area}) => !taken.has(area) && overlaps(block, other));
      const area = found?.area ?? areas.length;
      taken.add(area);
      const before = areas[area];
      const stitches = (before?.stitches ?? 0) + block.to - block.from;
      areas[area] = {
        colour: block.colour,
        firstRow: before?.firstRow ?? block.row,
        lastRow: block.row,
        stitches,
      };
      here.unshift({block, area});
    }
    below = here;
  }
  return areas;
}

function overlaps(a: Block, b: Block): boolean {
  return a.colour === b.colour && a.from < b.to && b.from < a.to;
}

function blocksOf({rows}: ColourGrid): Block[][] {
  return rows.map(({cells, number}) => {
    const blocks: Block[] = [];
    cells.forEach((colour, at) => {
      if (colour === null) return;
      const last = blocks.at(-1);
      if (last?.colour === colour && last.to === at) blocks[blocks.length - 1] = {...last, to: at + 1};
      else blocks.push({row: number, colour, from: at, to: at + 1});
    });
    return blocks;
  });
}

/** Times the width of the stitches that a row's yarn is long: common practice, no source. */
export const yarnOverWidth = 3;
/** Millimetres for the two ends of a length of yarn: common practice, no source. */
export const yarnForEnds = 300;
