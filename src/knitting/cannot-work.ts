import {failure, type Result} from '../support/result.ts';

/** Above this no count is a piece of hand knitting; it keeps arithmetic on a slip of the pen small. */
export const mostCounted = 99_999;

/** Above this no edge of a piece is sewn or picked up by hand. */
export const mostAlongEdge = 5000;

/** Above this nobody spreads increases, buttonholes or beads by hand over one row. */
export const mostPlaces = 1000;

/**
 * An input that no knitting can follow: the fact, and what would work. The fault lies in the numbers together, so the
 * span is empty.
 */
export function cannotWork(message: string, hint: string): Result<never> {
  return failure({message, hint, span: {start: 0, end: 0}});
}
