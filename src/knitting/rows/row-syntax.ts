import type {Span} from '../../support/result.ts';
import type {Side} from './face.ts';
import type {Stitch} from './stitch.ts';

/** All spans are offsets in the text of the block. */
export interface Placed {
  readonly span: Span;
}

/** A number for each size, `84 (92, 100)`; a single value counts for every size. */
export interface Sized extends Placed {
  readonly values: readonly number[];
}

/** A place on the needle that a row can work towards. */
export type Landmark = 'marker' | 'gap' | 'turn' | 'double stitch' | 'round start';

/** How far, or how often, something is worked. */
export type Extent =
  /** `k5`, `[…] 3 times`: so often in all. */
  | {readonly kind: 'times'; readonly count: Sized}
  /** `rep from * 3 more times`. `isPlain` when `more` was not written: authors differ whether the first is counted. */
  | {readonly kind: 'more'; readonly count: Sized; readonly isPlain: boolean}
  | {readonly kind: 'to end'}
  | {readonly kind: 'to last'; readonly count: Sized}
  /** `k to 2 sts before marker` has `before` 2; `k to 1 st past marker` has `past` 1. */
  | {
      readonly kind: 'to landmark';
      readonly landmark: Landmark;
      /** Of a marker with a name, `marker A`; null goes to the nearest. */
      readonly name: string | null;
      readonly before: Sized | null;
      readonly past: Sized | null;
    }
  /** `rep from *` with nothing said: as often as it goes, leaving the stitches that the rest of the row uses. */
  | {readonly kind: 'as fits'};

/** Ways of reading on which authors differ; see `readings.ts`. */
export type Doubt = 'yarn forward' | 'bind-off loop' | 'repeat times' | 'passage times' | 'last repeat';

/** A doubt that is about which passage is meant, so that each way of reading it is a passage of its own. */
export type PassageDoubt = Extract<Doubt, 'passage times' | 'last repeat'>;

/** One stitch, worked once or in a run. */
export interface WorkStep extends Placed {
  readonly kind: 'work';
  readonly stitch: Stitch;
  readonly extent: Extent;
  /** Where the yarn is held while slipping. */
  readonly yarn: 'front' | 'back' | null;
  /** The yarn comes forward before a purl or a slip: by the reading it makes a stitch or none. */
  readonly isDoubtful: boolean;
  /** What the text calls the yarn, `MC`, `A`, `white`; absent where it names none. */
  readonly colour?: string;
}

/** `[…] 3 times`, `*…; rep from * to last 3 sts`. */
export interface RepeatStep extends Placed {
  readonly kind: 'repeat';
  readonly style: 'star' | 'bracket';
  readonly steps: readonly Step[];
  readonly extent: Extent;
}

/** `rep from * to **`: a passage of the row, already worked once, is worked again here. */
export interface AgainStep extends Placed {
  readonly kind: 'again';
  readonly steps: readonly Step[];
  readonly extent: Extent;
}

/** `(k1, yo, k1) in next st`: all of it goes into the same `uses` stitches. */
export interface IntoStep extends Placed {
  readonly kind: 'into';
  readonly steps: readonly Step[];
  readonly uses: number;
}

/** `sl1, k2, psso`: the first `over` stitches of the passage are passed over the rest. */
export interface PassOverStep extends Placed {
  readonly kind: 'pass over';
  readonly steps: readonly Step[];
  readonly over: number;
}

export interface BindOffStep extends Placed {
  readonly kind: 'bind off';
  readonly extent: Extent;
}

/** `cast on 3`, `pick up and knit 12 sts`: stitches come onto the needle. */
export interface CastOnStep extends Placed {
  readonly kind: 'cast on';
  readonly how: 'cast on' | 'pick up';
  readonly count: Sized;
}

export interface MarkerStep extends Placed {
  readonly kind: 'marker';
  readonly action: 'place' | 'slip' | 'remove';
  /** `pm A`. */
  readonly name: string | null;
}

export interface TurnStep extends Placed {
  readonly kind: 'turn';
  readonly how: 'plain' | 'wrapped';
}

/** The yarn is moved without making a stitch. */
export interface YarnStep extends Placed {
  readonly kind: 'yarn';
  readonly to: 'front' | 'back';
}

/** `inc 6 sts evenly across`: all stitches are worked, so many more or fewer come out. */
export interface EvenlyStep extends Placed {
  readonly kind: 'evenly';
  readonly change: 'increase' | 'decrease';
  readonly count: Sized;
}

/** A passage that authors mean in one of two ways, the customary one first. */
export interface EitherStep extends Placed {
  readonly kind: 'either';
  readonly doubt: PassageDoubt;
  readonly ways: readonly [readonly Step[], readonly Step[]];
}

export type Step =
  | WorkStep
  | RepeatStep
  | AgainStep
  | IntoStep
  | PassOverStep
  | BindOffStep
  | CastOnStep
  | MarkerStep
  | TurnStep
  | YarnStep
  | EvenlyStep
  | EitherStep;

/** What the text says of the count: `(29 sts)`, or `2 sts increased`. */
export interface StatedCount extends Placed {
  readonly kind: 'total' | 'increase' | 'decrease';
  readonly count: Sized;
}

export interface NumberRange {
  readonly first: number;
  readonly last: number;
}

/** `Row 2 and all WS rows`: the numbers named, and which others follow them. */
export interface RowLabel extends Placed {
  /** As written, without the colon. */
  readonly text: string;
  readonly isRound: boolean;
  readonly ranges: readonly NumberRange[];
  readonly every: 'row' | 'RS' | 'WS' | 'odd' | 'even' | 'alternate' | null;
  readonly side: Side | null;
  readonly sideSpan: Span | null;
  /** `Inc row`, `Dec rnd`: what the label says the row does. */
  readonly says: 'increase' | 'decrease' | null;
  /** `(paired increases)`: every increase or decrease that leans has one that leans the other way. */
  readonly isPaired: boolean;
  /** `Row 1 (MC)`: the yarn of the row; null where the label names none. */
  readonly colour: string | null;
}

export interface WrittenRow extends Placed {
  readonly kind: 'row';
  readonly label: RowLabel;
  readonly steps: readonly Step[];
  readonly stated: readonly StatedCount[];
  /** False when something in it could not be read; its count is then not judged. */
  readonly isWholeRead: boolean;
}

/** `Rep rows 1–8 for pattern`, `Rows 3–14: rep rows 1 and 2`, `Row 5: as row 1`, `rep rows 1–4 three more times`. */
export interface RowRepeat extends Placed {
  readonly kind: 'repeat rows';
  /** The label it stands under, such as `Rows 3–14`; null in a sentence of its own. */
  readonly label: RowLabel | null;
  readonly what:
    | {readonly kind: 'rows'; readonly ranges: readonly NumberRange[]}
    /** `rep the last 2 rows`. */
    | {readonly kind: 'last'; readonly count: number}
    /** `Repeat from the second row`: that one and all that follow it. */
    | {readonly kind: 'from'; readonly first: number}
    | {readonly kind: 'all'};
  readonly often:
    | {readonly kind: 'to fill the label'}
    | {readonly kind: 'more'; readonly count: Sized}
    | {readonly kind: 'until stitches'; readonly count: Sized}
    /** Until a length, or as long as the knitter likes; `for pattern` when it says so. */
    | {readonly kind: 'open'; readonly isForPattern: boolean};
  /** The count that it states for the end of all the repeats. */
  readonly stated: StatedCount | null;
}

/** Ways of reading that the block settles; null is `as it comes out`. See `readings.ts`. */
export interface Readings {
  readonly bindOffLoop: 'separate' | 'counted' | null;
  readonly yarnForward: 'no stitch' | 'yarn over' | null;
  readonly repeatTimes: 'more' | 'in all' | null;
  readonly passageTimes: 'passage' | 'last stitch' | null;
  readonly lastRepeat: 'replaced' | 'cut short' | null;
  /** `make 1` in the old books is a yarn over, today a lifted strand; the count is the same. */
  readonly makeOne: 'lifted strand' | 'yarn over';
}

export interface Multiple extends Placed {
  readonly of: number;
  readonly plus: number;
}

export interface RowsHeader {
  readonly multiple: Multiple | null;
  /** Stitches on the needle before the first row, per size. */
  readonly start: (Sized & {readonly isCastOn: boolean}) | null;
  readonly sizes: readonly string[];
  /** Names of yarns that are not customary ones, as the block lists them. */
  readonly colours: readonly string[];
  readonly isRound: boolean;
  readonly readings: Readings;
  readonly ownAbbreviations: readonly Stitch[];
}

/** A block of written rows as the knitter wrote it. */
export interface WrittenPattern {
  readonly header: RowsHeader;
  readonly entries: readonly (WrittenRow | RowRepeat)[];
}
