import {expandRow, type StitchOperation} from './expand-row.ts';
import type {Face} from './face.ts';
import {type ProvedRow, proveRows} from './prove-rows.ts';
import type {WrittenPattern, WrittenRow} from './row-syntax.ts';
import {faceFromRight} from './stitch.ts';

/** More stitches than any row of hand knitting has; a slip of the pen may cast on a thousand million. */
const mostCompared = 5_000;

type Surface = 'knit' | 'purl' | null;

/** One worked row from the right side, left to right: what is worked into each stitch below, and what stands there now. */
interface Course {
  readonly into: readonly Surface[];
  readonly made: readonly Surface[];
}

/**
 * Whether the plain stitches of a row stand over, and under, their own kind in the rows next to it wherever both are
 * known, or nowhere, as in seed stitch: in the first size, and not where a row turns before its end. Common practice, no
 * source: a row whose counts are right mostly keeps to one or the other.
 */
export function suitsNeighbours(pattern: WrittenPattern, row: WrittenRow): boolean {
  const rows = proveRows(pattern, {isPlanned: true}).sizes[0]?.rows ?? [];
  let [alike, compared] = [0, 0];
  let below: {readonly proved: ProvedRow; readonly course: Course | null} | null = null;
  for (const proved of rows) {
    const isOfRow = isAt(proved, row);
    const isNext: boolean = below !== null && isAt(below.proved, row) !== isOfRow;
    const course: Course | null = isOfRow || isNext || below === null ? courseOf(proved) : null;
    const under: Course | null = below && (isNext ? (below.course ?? courseOf(below.proved)) : null);
    if (course && under && course.into.length === under.made.length) {
      for (const [index, surface] of course.into.entries()) {
        const other = under.made[index];
        if (!surface || !other) continue;
        compared += 1;
        if (surface === other) alike += 1;
      }
    }
    below = {proved, course};
  }
  return compared > 0 && (alike === compared || alike === 0);
}

/** Rows are the same when they begin at the same place of the text. */
function isAt(proved: ProvedRow, {span}: WrittenRow): boolean {
  return proved.row.span.start === span.start;
}

function courseOf(row: ProvedRow): Course | null {
  if (!row.isSound || row.unworked > 0 || Math.max(row.in, row.out) > mostCompared) return null;
  const into: Surface[] = [];
  const made: Surface[] = [];
  for (const operation of expandRow(row)) {
    if (operation.step.kind === 'turn') return null;
    const surfaces = surfacesOf(operation);
    const isPlain = operation.uses === 1 && operation.makes === 1;
    for (let use = 0; use < operation.uses; use++) into.push(isPlain ? (surfaces[0] ?? null) : null);
    made.push(...surfaces);
  }
  return row.side === 'RS' ? {into: into.reverse(), made: made.reverse()} : {into, made};
}

/** Of the stitches that the operation leaves, in the order of working. */
function surfacesOf({stitch, side, makes}: StitchOperation): readonly Surface[] {
  const face = stitch && faceFromRight(stitch, side);
  if (face?.shape === 'crossing') {
    const strands = face.strands.flatMap(({stitches, surface}) =>
      Array.from({length: stitches}, () => surface),
    );
    return side === 'RS' ? strands.reverse() : strands;
  }
  return Array.from({length: makes}, () => (face ? surfaceOf(face) : null));
}

function surfaceOf(face: Face): Surface {
  return face.shape === 'loop' || face.shape === 'decrease' ? face.surface : null;
}
