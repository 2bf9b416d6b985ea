import {type Face, type Lean, type Side, seenFromBehind} from './face.ts';

export type StitchKind =
  | 'plain'
  | 'slip'
  | 'increase'
  | 'decrease'
  | 'crossing'
  | 'bobble'
  | 'bind off'
  | 'drop'
  | 'as set'
  | 'own';

/** British and American knitters name a few stitches differently. */
export type Dialect = 'american' | 'british';

/** How one dialect writes a stitch in a row, and the words for the key. */
export interface StitchName {
  readonly abbreviation: string;
  readonly words: string;
}

/** One thing a knitter does to the next stitches: what it takes from the left needle and leaves on the right one. */
export interface Stitch {
  /** The American abbreviation; two stitches with the same id are the same stitch. */
  readonly id: string;
  readonly names: Readonly<Record<Dialect, StitchName>>;
  readonly uses: number;
  readonly makes: number;
  readonly kind: StitchKind;
  /** As seen from the side on which it is worked. */
  readonly lean: Lean | null;
  /** As seen from the side on which it is worked. */
  readonly face: Face;
  /** What the yarn must do before it: decides whether a `yarn forward` before it is an over. */
  readonly hand: 'knit' | 'purl' | 'slip' | 'none';
  /** Every pattern defines it anew (a bobble): an own abbreviation must stand in the block. */
  readonly mustBeDefined: boolean;
}

/** How the stitch looks from the right side when it is worked on `side`. */
export function faceFromRight(stitch: Stitch, side: Side): Face {
  return side === 'RS' ? stitch.face : seenFromBehind(stitch.face);
}

/** How the stitch looks from the wrong side when it is worked on `side`. */
export function faceFromWrong(stitch: Stitch, side: Side): Face {
  return side === 'WS' ? stitch.face : seenFromBehind(stitch.face);
}
