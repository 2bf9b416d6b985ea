import type {Face, Side} from '../rows/face.ts';
import type {Multiple, Step} from '../rows/row-syntax.ts';
import type {Stitch} from '../rows/stitch.ts';

/** One thing worked, or a square that stands for no work. */
export interface ChartCell {
  readonly kind: 'worked' | 'no stitch' | 'unworked';
  /** Worked once; null of squares without work. */
  readonly step: Step | null;
  /** As seen from the right side, whichever side it is worked on. */
  readonly face: Face;
  readonly uses: number;
  readonly makes: number;
  /** At least 1: a stitch bound off or dropped leaves nothing but has its square. */
  readonly squares: number;
}

/** Squares of a row from the left, `to` exclusive. */
export interface SquareRange {
  readonly from: number;
  readonly to: number;
}

/** One row of a chart, seen from the right side. */
export interface ChartRow {
  /** Such as `Row 3`. */
  readonly label: string;
  readonly number: number | null;
  /** The side on which it is worked: RS rows begin at the right, WS rows at the left. */
  readonly side: Side;
  /** So often is it worked in all, in a repeat of rows. */
  readonly times: number;
  /** False when the stitches of the row do not come out. */
  readonly isSound: boolean;
  /** From left to right; their squares fill the width of the grid. */
  readonly cells: readonly ChartCell[];
  /** The squares that are worked again and again. */
  readonly repeat: SquareRange | null;
  /** It is worked in the row before it, behind a turn. */
  readonly goesOn: boolean;
  /** How the work is turned where stitches are left on the needle; null where the row is worked to its end. */
  readonly turn: ChartTurn | null;
}

export type ChartTurn = 'plain' | 'wrapped';

/** A chart of stitches. */
export interface ChartGrid {
  readonly width: number;
  readonly isRound: boolean;
  /** Stitches on the needle before the first row, of those that the chart shows. */
  readonly start: number;
  /** How many times the chart is worked side by side; 1 where it shows all stitches. */
  readonly passes: number;
  readonly multiple: Pick<Multiple, 'of' | 'plus'> | null;
  /** Stitches that the pattern defines itself. */
  readonly ownAbbreviations: readonly Stitch[];
  /** The first row worked, which is the lowest of the drawn chart, comes first. */
  readonly rows: readonly ChartRow[];
}

export const noStitch: ChartCell = {
  kind: 'no stitch',
  step: null,
  face: {shape: 'own', from: 0, into: 0},
  uses: 0,
  makes: 0,
  squares: 1,
};

/** A stitch that waits on the needle in a short row. */
export const unworked: ChartCell = {
  kind: 'unworked',
  step: null,
  face: {shape: 'as below'},
  uses: 1,
  makes: 1,
  squares: 1,
};
