import {type Result, success} from '../support/result.ts';
import {cannotWork, mostAlongEdge} from './cannot-work.ts';
import {sharesOf} from './share-evenly.ts';

/** After `one` units of the first edge and `other` of the second, both edges are pinned together. */
export interface Pin {
  readonly part: 'a quarter' | 'half' | 'three quarters';
  readonly one: number;
  readonly other: number;
}

export interface JoinedEdges {
  /** Which edge has fewer units; the first when they have as many. */
  readonly fewer: 'one' | 'other';
  /** For each unit of the edge with fewer, how many of the longer edge meet it. */
  readonly meets: readonly number[];
  /** The numbers that occur, and how often; they differ by one. */
  readonly kinds: readonly {readonly meets: number; readonly times: number}[];
  readonly pins: readonly Pin[];
}

/**
 * Joins an edge of `one` units (rows or stitches) to one of `other`: each unit of the shorter meets so many of the
 * longer that no two differ by more than one, the sums are exact, and the quarters meet the quarters. 45 stitches meet
 * 60 rows as 1 to 1, 1 to 1, 1 to 2, fifteen times.
 */
export function joinEdges(one: number, other: number): Result<JoinedEdges> {
  if (one === 0 || other === 0) {
    return cannotWork('an edge of `0` cannot be joined', 'Write the rows or stitches of both edges.');
  }
  const [few, many] = [Math.min(one, other), Math.max(one, other)];
  if (many > mostAlongEdge) {
    return cannotWork(
      `\`${one}\` and \`${other}\` are more than the edges of a piece of knitting have`,
      `Write edges up to ${mostAlongEdge}.`,
    );
  }
  const meets = sharesOf(many, few);
  const sizes = [...new Set(meets)];
  return success({
    fewer: one <= other ? 'one' : 'other',
    meets,
    kinds: sizes.map((size) => ({meets: size, times: meets.filter((each) => each === size).length})),
    pins: pinParts.map(([part, quarters]) => {
      const reached = Math.floor((few * quarters) / 4);
      const met = meets.slice(0, reached).reduce((sum, each) => sum + each, 0);
      return one <= other ? {part, one: reached, other: met} : {part, one: met, other: reached};
    }),
  });
}

const pinParts = [
  ['a quarter', 1],
  ['half', 2],
  ['three quarters', 3],
] as const;
