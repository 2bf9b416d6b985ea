import type {Span} from '../../support/result.ts';
import type {GaugeCount, Length} from '../quantity.ts';

/** Which edges a step shapes. `neck` is the edge that faces the divide, `side` the one that goes on from below it. */
export type Where = 'each edge' | 'neck' | 'side' | 'left' | 'right' | 'evenly';

export type Ending = 'bound off' | 'held' | 'drawn up' | 'grafted';

/** A step along an edge: what may also be worked on the other edge at the same time. */
export type EdgeStep =
  /** `measuring` is the length of these rows where they have a gauge of their own, such as a rib. */
  | {readonly kind: 'work'; readonly rows: number; readonly measuring: Length | null}
  | {readonly kind: 'work length'; readonly length: Length; readonly isTotal: boolean}
  | {
      readonly kind: 'shape';
      readonly change: 'increase' | 'decrease';
      readonly count: number;
      readonly where: Where;
      readonly every: number;
      readonly times: number;
      /** The first one on the very next row, so that nothing is worked even behind the last. */
      readonly isOnNext: boolean;
    }
  | {readonly kind: 'bind off at beginnings'; readonly count: number; readonly rows: number}
  /** Over two rows, for each edge begins only one of them. */
  | {
      readonly kind: 'bind off at edge';
      readonly count: number;
      readonly where: Where;
    }
  | {
      readonly kind: 'steps';
      readonly how: 'bind off' | 'short rows';
      readonly steps: readonly number[];
      readonly where: Where;
    };

/** One part of a divided row, in the order in which the right-side row comes to them. Without a name it is not worked on. */
export interface DividedPart {
  readonly name: string | null;
  readonly count: number;
}

export type PieceStep =
  | EdgeStep
  /** Lines for different edges that follow one another are worked at the same time. */
  | {readonly kind: 'along'; readonly where: Where; readonly steps: readonly EdgeStep[]}
  | {readonly kind: 'cast on'; readonly count: number}
  | {readonly kind: 'add'; readonly how: 'cast on' | 'take up' | 'pick up'; readonly count: number}
  | {readonly kind: 'end'; readonly how: Ending; readonly count: number | null}
  | {readonly kind: 'divide'; readonly parts: readonly DividedPart[]}
  | {readonly kind: 'on part'; readonly name: string | null}
  | {readonly kind: 'mark'; readonly name: string}
  | {readonly kind: 'way'; readonly isRound: boolean};

export interface PlacedStep {
  readonly step: PieceStep;
  /** As written. */
  readonly text: string;
  readonly span: Span;
}

export type PieceGauge =
  | {
      readonly kind: 'written';
      readonly stitches: readonly GaugeCount[];
      readonly rows: readonly GaugeCount[];
    }
  | {readonly kind: 'of item'; readonly id: string};

/** A `piece` block as the knitter wrote it. */
export interface WrittenPiece {
  readonly name: string | null;
  readonly gauge: PieceGauge | null;
  readonly steps: readonly PlacedStep[];
}
