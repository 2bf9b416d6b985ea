import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted, mostPlaces} from './cannot-work.ts';
import {sharesOf, sharesWithHalfEnds} from './share-evenly.ts';
import {type Stitches, stitches} from './units.ts';

/** What is worked at each place: the stitches it takes from the left needle and those it leaves on the right one. */
export interface PlaceWork {
  readonly uses: number;
  readonly makes: number;
}

/** `half` a space at each end, a `whole` one, or so many stitches. */
export type Ends = 'half' | 'whole' | number;

export interface SpreadRequest {
  readonly stitches: Stitches;
  /** How often it is worked. */
  readonly places: number;
  readonly work: PlaceWork;
  /** Null in the round, where every place has a space before it and the round has no ends. */
  readonly ends: Ends | null;
  /** A raised increase is lifted from between two stitches, so no space may be empty. */
  readonly needsNeighbours: boolean;
}

/** The stitches worked plain, space by space in the order of the row; sums are exact. */
export interface EvenSpread {
  /** Flat: one more than there are places, the ends first and last. In the round: one before each place. */
  readonly spaces: readonly number[];
  /** Between the places, without the ends of a row. */
  readonly between: {readonly shortest: number; readonly longest: number} | null;
  readonly result: Stitches;
}

/**
 * Spreads places over a row so that no two spaces between them differ by more than one stitch. 100 stitches, 16
 * decreases of two stitches and whole ends leave 68 plain stitches in 17 spaces of 4.
 */
export function spreadEvenly(request: SpreadRequest): Result<EvenSpread> {
  const {places, work, ends} = request;
  const problem = whyNot(request);
  if (problem) return problem;
  const plain = request.stitches - places * work.uses;
  const spaces = spacesOf(plain, places, ends);
  if (request.needsNeighbours && spaces.some((space) => space === 0)) {
    const most = mostRaised(request.stitches, ends);
    return cannotWork(
      `\`${places}\` raised increases do not all have a stitch on both sides among \`${request.stitches}\` stitches`,
      most > 0
        ? `Work at most ${most} of them, or bar increases instead.`
        : 'Work bar increases, which use a stitch, instead.',
    );
  }
  const inner = ends === null ? spaces : spaces.slice(1, -1);
  return success({
    spaces,
    between: inner.length > 0 ? {shortest: Math.min(...inner), longest: Math.max(...inner)} : null,
    result: stitches(plain + places * work.makes),
  });
}

function spacesOf(plain: number, places: number, ends: Ends | null): readonly number[] {
  if (ends === null) return sharesOf(plain, places);
  if (ends === 'half') return sharesWithHalfEnds(plain, places);
  if (ends === 'whole') return sharesOf(plain, places + 1);
  return [ends, ...(places > 1 ? sharesOf(plain - 2 * ends, places - 1) : []), ends];
}

function whyNot({stitches: count, places, work, ends}: SpreadRequest): Result<never> | null {
  if (count === 0 || count > mostCounted) {
    return cannotWork(`a row of \`${count}\` stitches cannot be worked`, 'Write the stitches on the needle.');
  }
  if (places === 0 || places > mostPlaces) {
    return cannotWork(
      `\`${places}\` places cannot be spread`,
      `Write how often it is worked, 1 to ${mostPlaces} times.`,
    );
  }
  const fixed = typeof ends === 'number' ? 2 * ends : 0;
  const used = places * work.uses + fixed;
  if (used > count) {
    const most = Math.max(0, Math.floor((count - fixed) / Math.max(1, work.uses)));
    const endWords = fixed > 0 ? ` with ${ends} at each end` : '';
    return cannotWork(
      `\`${plural(places, 'place')}\` of \`${plural(work.uses, 'stitch', 'stitches')}\`${endWords} use \`${used}\` stitches, and the row has \`${count}\``,
      most > 0
        ? `Work it at most ${plural(most, 'time')}, or begin with at least ${used} stitches.`
        : `Begin with at least ${used} stitches.`,
    );
  }
  if (typeof ends === 'number' && places === 1 && used !== count) {
    return cannotWork(
      'one place has no space between, so both ends cannot be fixed',
      `Leave the ends out to set it in the middle, or write two ends that use up all ${count} stitches.`,
    );
  }
  return null;
}

/** The most raised increases that all stand between two stitches; none when an end is fixed at nothing. */
function mostRaised(count: number, ends: Ends | null): number {
  if (ends === null) return count;
  if (ends === 'half') return Math.floor(count / 2);
  if (ends === 'whole') return count - 1;
  return ends === 0 ? 0 : Math.max(0, count - 2 * ends + 1);
}
