/** The side of the knitting that is looked at. */
export type Side = 'RS' | 'WS';

/** Which way the top of a stitch leans, as seen by whoever looks. */
export type Lean = 'left' | 'right' | 'centre';

/** One strand of a crossing: how many stitches, and whether they show their knit or their purl side. */
export interface Strand {
  readonly stitches: number;
  readonly surface: 'knit' | 'purl';
}

/**
 * What a worked stitch looks like from one side of the knitting, in words that a chart or a drawn fabric can turn into
 * marks. `twisted` means the two legs of the loop cross at its foot.
 */
export type Face =
  | {readonly shape: 'loop'; readonly surface: 'knit' | 'purl'; readonly twisted: boolean}
  /** Drawn up from the row below, with that row's own loop gathered behind it. */
  | {readonly shape: 'loop below'; readonly surface: 'knit' | 'purl'}
  /** Unworked: the loop of the row below drawn up, the yarn passing behind it or, as seen, in front of it. */
  | {readonly shape: 'slip'; readonly yarn: 'front' | 'back'}
  | {readonly shape: 'hole'; readonly loops: number}
  | {
      readonly shape: 'decrease';
      readonly from: number;
      readonly into: number;
      readonly lean: Lean;
      readonly surface: 'knit' | 'purl';
      readonly twisted: boolean;
    }
  | {
      readonly shape: 'increase';
      readonly from: number;
      readonly into: number;
      readonly lean: Lean | null;
      readonly surface: 'knit' | 'purl';
      /** `bar`: front and back of one stitch; `strand`: the lifted running strand; `below`: a leg of the row below. */
      readonly method: 'bar' | 'strand' | 'below' | 'many';
    }
  /** `strands` from left to right as they lie *above* the crossing; `front` is the index of the one that is on top. */
  | {readonly shape: 'crossing'; readonly strands: readonly Strand[]; readonly front: number}
  | {readonly shape: 'bobble'}
  | {readonly shape: 'bound off'}
  | {readonly shape: 'cast on'}
  | {readonly shape: 'dropped'}
  /** The same surface as the stitch below it. */
  | {readonly shape: 'as below'}
  /** A fabric by its name, the same from whichever side it is worked; from behind it is not described. */
  | {readonly shape: 'texture'; readonly texture: 'stockinette' | 'reverse stockinette' | 'garter'}
  /** Of the pattern's own making: only its words say how it looks. */
  | {readonly shape: 'own'; readonly from: number; readonly into: number};

/** The same stitch seen from the other side: knit and purl change places and everything that leans is mirrored. */
export function seenFromBehind(face: Face): Face {
  switch (face.shape) {
    case 'loop':
    case 'loop below':
      return {...face, surface: otherSurface(face.surface)};
    case 'slip':
      return {...face, yarn: face.yarn === 'front' ? 'back' : 'front'};
    case 'decrease':
      return {...face, surface: otherSurface(face.surface), lean: mirrored(face.lean)};
    case 'increase':
      return {
        ...face,
        surface: otherSurface(face.surface),
        lean: face.lean === null ? null : mirrored(face.lean),
      };
    case 'crossing':
      return {
        shape: 'crossing',
        strands: face.strands.map((strand) => ({...strand, surface: otherSurface(strand.surface)})).reverse(),
        // Of two outer strands the other one is on top when seen from behind, and mirroring swaps them back.
        front: face.front,
      };
    default:
      return face;
  }
}

export function otherSide(side: Side): Side {
  return side === 'RS' ? 'WS' : 'RS';
}

function otherSurface(surface: 'knit' | 'purl'): 'knit' | 'purl' {
  return surface === 'knit' ? 'purl' : 'knit';
}

function mirrored(lean: Lean): Lean {
  return lean === 'centre' ? 'centre' : lean === 'left' ? 'right' : 'left';
}
