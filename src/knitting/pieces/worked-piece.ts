import type {Problem} from '../../support/result.ts';
import type {Millimetres} from '../units.ts';
import type {Edge, EdgeWork} from './edge-plan.ts';
import type {Ending, PlacedStep} from './piece-syntax.ts';

/** A point of an outline: half stitches from the middle of the panel, to the right when above zero, and rows from its foot. */
export interface Point {
  readonly x: number;
  readonly row: number;
}

/** One row as it is worked. The edges are those seen from the right side. */
export interface WorkedPieceRow {
  /** Counts from 1 at the foot of the panel. */
  readonly number: number;
  readonly left: EdgeWork;
  readonly right: EdgeWork;
  readonly before: number;
  /** On the needle after the row, with those that short rows left waiting. */
  readonly after: number;
  /** Half stitches from the middle after the row. */
  readonly leftX: number;
  readonly rightX: number;
}

/** Stitches worked together from where they begin to where they end: a whole panel, or one part above a divide. */
export interface Run {
  readonly name: string | null;
  readonly startRow: number;
  readonly startStitches: number;
  /** Which edge faces the divide. */
  readonly inner: Edge | null;
  readonly rows: readonly WorkedPieceRow[];
  readonly left: readonly Point[];
  readonly right: readonly Point[];
  readonly ending: Ending | null;
  readonly endStitches: number;
}

/** The rows above `from` up to `to` measure `length`, whatever the gauge of the piece says. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly length: Millimetres;
}

/** What is drawn as one outline: it begins anew where work is picked up, or turns from round to flat. */
export interface Panel {
  readonly isRound: boolean;
  /** Rows whose length is stated, in order. */
  readonly stretches: readonly Stretch[];
  readonly base: Run;
  /** Parts above a divide, in the order in which the right-side row comes to them. */
  readonly parts: readonly Run[];
}

export interface PieceMark {
  readonly name: string;
  readonly panel: number;
  /** Index in the panel's parts; null for its base. */
  readonly part: number | null;
  readonly row: number;
  readonly leftX: number;
  readonly rightX: number;
}

/** One line of the block, or several worked at the same time, and how the piece stands after it. */
export interface WorkedStep {
  readonly lines: readonly PlacedStep[];
  readonly part: string | null;
  readonly stitches: number;
  /** Rows worked since the cast-on, those of the parts not added up. */
  readonly rowsSoFar: number;
  /** Of those rows, the ones whose length is stated, panel by panel. */
  readonly stretches: readonly Stretch[];
  readonly isRound: boolean;
}

export interface WorkedPiece {
  readonly panels: readonly Panel[];
  readonly marks: readonly PieceMark[];
  readonly steps: readonly WorkedStep[];
  /** Spans are those of the lines. */
  readonly problems: readonly Problem[];
}
