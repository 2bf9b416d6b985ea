import {type Result, success} from '../support/result.ts';
import {cannotWork, mostAlongEdge} from './cannot-work.ts';
import {type CastOnCount, castOnCount} from './cast-on-count.ts';
import {Fraction} from './fraction.ts';
import {type PickUpBlock, pickUpBlocks} from './pick-up-blocks.ts';
import {nearestWholeHalfUp, squareRootToThousandths} from './rounding.ts';
import type {StitchMultiple} from './stitch-multiple.ts';
import {type Gauge, type Millimetres, millimetres} from './units.ts';

/** A stretch of an edge: bound-off stitches, rows, or rows along which the edge slants by so many stitches. */
export interface EdgePart {
  readonly kind: 'bound-off stitches' | 'rows' | 'slanting rows';
  /** What is counted along the edge: bound-off stitches, or rows. */
  readonly places: number;
  /** By how many stitches the edge moves in over the rows; zero unless it slants. */
  readonly slant: number;
}

export interface PickUpPart extends EdgePart {
  readonly length: Millimetres;
  /** Stitches of the band for each place, unrounded. */
  readonly ratio: Fraction;
  readonly exact: Fraction;
  readonly picked: number;
  readonly blocks: readonly PickUpBlock[];
}

export interface PickUp {
  readonly parts: readonly PickUpPart[];
  /** The whole edge as a width that the band must cover, with both neighbouring counts. */
  readonly total: CastOnCount;
}

/** The gauges of the piece that is picked up from. */
export interface EdgeGauges {
  readonly stitches: Gauge<'stitches'>;
  readonly rows: Gauge<'rows'>;
}

/**
 * Stitches to pick up along an edge: each part's length at the piece's gauge × the band's stitch gauge, added up and
 * rounded once, to the nearest number that the band's multiple allows; the parts share that number as their lengths do.
 * At 20 stitches and 26 rows over the same length every row is worth 10/13 of a stitch. Source: the ratio of the gauges
 * as published in the worked examples of the tests.
 */
export function pickUp(
  edge: readonly EdgePart[],
  piece: EdgeGauges,
  band: Gauge<'stitches'>,
  multiple: StitchMultiple,
): Result<PickUp> {
  if (edge.length === 0 || edge.some(({places}) => places === 0)) {
    return cannotWork(
      'the edge has no rows and no bound-off stitches',
      'Write what lies along the edge, such as `rows=40` or `bound-off=12`.',
    );
  }
  if (edge.some(({places, slant}) => Math.max(places, slant) > mostAlongEdge)) {
    return cannotWork('the edge is longer than a piece of knitting', `Write counts up to ${mostAlongEdge}.`);
  }
  const lengths = edge.map((part) => lengthOfPart(part, piece));
  const width = millimetres(lengths.reduce<Fraction>((sum, length) => sum.plus(length), Fraction.zero));
  const total = castOnCount({width, ease: millimetres(0), gauge: band, multiple, selvedges: 0});
  if (!total.ok) return total;

  const count = Fraction.ofInteger(total.value.chosen.castOn);
  let reached: Fraction = Fraction.zero;
  let picked = 0;
  const parts: PickUpPart[] = [];
  for (const [index, part] of edge.entries()) {
    const length = lengths[index] ?? millimetres(0);
    reached = reached.plus(length);
    const share = nearestWholeHalfUp(reached.times(count).dividedBy(width)) - picked;
    if (share === 0) {
      return cannotWork(
        `not one stitch of the band falls on the \`${part.places}\` ${part.kind}`,
        'Leave that part of the edge out, or check the two gauges.',
      );
    }
    picked += share;
    const exact = length.times(band);
    const ratio = exact.dividedBy(Fraction.ofInteger(part.places));
    parts.push({...part, length, exact, ratio, picked: share, blocks: pickUpBlocks(share, part.places)});
  }
  return success({parts, total: total.value});
}

/** Bound-off stitches ÷ stitch gauge; rows ÷ row gauge; a slant is the long side of the triangle of both (Pythagoras). */
export function lengthOfPart({kind, places, slant}: EdgePart, gauges: EdgeGauges): Millimetres {
  const count = Fraction.ofInteger(places);
  if (kind === 'bound-off stitches') return millimetres(count.dividedBy(gauges.stitches));
  const height = count.dividedBy(gauges.rows);
  if (kind === 'rows') return millimetres(height);
  const width = Fraction.ofInteger(slant).dividedBy(gauges.stitches);
  return millimetres(squareRootToThousandths(width.times(width).plus(height.times(height))));
}
