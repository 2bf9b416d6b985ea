import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {countOver, lengthOf} from './gauge.ts';
import {wholeNotAbove, wholeNotBelow} from './rounding.ts';
import {multipleWords, type StitchMultiple} from './stitch-multiple.ts';
import {type Gauge, type Millimetres, millimetres, type Stitches, stitches} from './units.ts';

export interface CastOnRequest {
  /** The width the fabric must cover, before ease. */
  readonly width: Millimetres;
  /** Added to the width; below zero for a piece that is to stretch. */
  readonly ease: Millimetres;
  readonly gauge: Gauge<'stitches'>;
  readonly multiple: StitchMultiple;
  /** Stitches for the seams, both edges together: cast on as well, and not part of the width. */
  readonly selvedges: number;
}

/** One number that can be cast on. */
export interface CastOnCandidate {
  readonly castOn: Stitches;
  /** How often the repeat is worked. */
  readonly repeats: number;
  /** Cast on less selvedges. */
  readonly pattern: Stitches;
  /** The width of the pattern stitches. */
  readonly width: Millimetres;
  /** That width less the width asked for with its ease. */
  readonly off: Millimetres;
}

/**
 * `fewer` and `more` are the neighbours of the exact number, the same one when it comes out; `fewer` is null when it
 * would have no repeat left. `chosen` is the one whose width is nearer; at a tie, the wider.
 */
export interface CastOnCount {
  readonly wanted: Millimetres;
  readonly exact: Fraction;
  readonly fewer: CastOnCandidate | null;
  readonly more: CastOnCandidate;
  readonly chosen: CastOnCandidate;
  readonly isTie: boolean;
}

/**
 * Stitches to cast on for a width: gauge × (width + ease), to the nearest number that the multiple allows, plus
 * selvedges. 8 in at 4.5 to the inch are 36, half-way between 31 and 41 of a multiple of 10 + 1. Rounding a half up is
 * common practice, no source.
 */
export function castOnCount(request: CastOnRequest): Result<CastOnCount> {
  const {gauge, multiple, selvedges} = request;
  const wanted = millimetres(request.width.plus(request.ease));
  if (wanted.compare(Fraction.zero) <= 0) {
    return cannotWork(
      'the width with its ease is not above zero',
      'Write a width, and take less from it than it is wide.',
    );
  }
  const exact = countOver(gauge, wanted);
  if (exact.compare(Fraction.ofInteger(mostCounted)) > 0) {
    return cannotWork(
      `the width would take more than \`${mostCounted}\` stitches`,
      'Check the unit of the width and of the gauge.',
    );
  }
  const least = Math.max(1, wholeNotBelow(Fraction.ofRatio(1 - multiple.plus, multiple.of)));
  const repeats = exact.minus(Fraction.ofInteger(multiple.plus)).dividedBy(Fraction.ofInteger(multiple.of));
  const below = wholeNotAbove(repeats);
  const above = Math.max(least, wholeNotBelow(repeats));
  const candidate = (times: number): CastOnCandidate => {
    const pattern = stitches(times * multiple.of + multiple.plus);
    const width = lengthOf(pattern, gauge);
    const castOn = stitches(pattern + selvedges);
    return {castOn, repeats: times, pattern, width, off: millimetres(width.minus(wanted))};
  };
  const fewer = below >= least ? candidate(below) : null;
  const more = candidate(above);
  const nearer = fewer ? more.off.absolute().compare(fewer.off.absolute()) : -1;
  return success({
    wanted,
    exact,
    fewer,
    more,
    chosen: fewer && nearer > 0 ? fewer : more,
    isTie: fewer !== null && nearer === 0 && fewer.castOn !== more.castOn,
  });
}

/** How the number was rounded, in words. */
export function castOnRounding(multiple: StitchMultiple): string {
  const allowed = multiple.of === 1 ? 'whole number' : `number that is ${multipleWords(multiple)}`;
  return `stitches to the nearest ${allowed}, a tie going to the wider piece`;
}
