import type {Side} from '../rows/face.ts';
import type {SquareRange} from './chart-grid.ts';

export interface ChartColour {
  readonly symbol: string;
  readonly name: string;
  /** `#rrggbb` in lower case; null when the chart does not say. */
  readonly hex: string | null;
}

export interface ColourRow {
  readonly number: number;
  readonly side: Side;
  /** From left to right as seen from the right side: indexes in `colours`, or null where no stitch is. */
  readonly cells: readonly (number | null)[];
  readonly repeat: SquareRange | null;
}

/** A chart of colours, worked in stockinette. */
export interface ColourGrid {
  readonly width: number;
  readonly isRound: boolean;
  readonly method: 'stranded' | 'intarsia';
  readonly colours: readonly ChartColour[];
  /** The first row worked comes first. */
  readonly rows: readonly ColourRow[];
}
