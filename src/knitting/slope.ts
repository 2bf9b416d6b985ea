import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted, mostPlaces} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {type Rows, rows, type Stitches} from './units.ts';

export interface SlopeRequest {
  readonly from: Stitches;
  readonly to: Stitches;
  readonly rows: Rows;
  readonly edges: 1 | 2;
  /** Shaping only on right-side rows, so every interval is even. */
  readonly onlyRight: boolean;
}

/** So many times, each so many rows after the one before. */
export interface Interval {
  readonly every: Rows;
  readonly times: number;
}

export interface Slope {
  readonly change: 'increase' | 'decrease';
  /** Rows on which each of the edges is shaped by one stitch. */
  readonly times: number;
  /** One interval, or two that differ by one row (by two on right-side rows only); the shorter first. */
  readonly intervals: readonly Interval[];
  /**
   * The same intervals mixed, so that the edge follows a straight line: the rows to shape on, the first row being 1 and
   * a right-side row. On right-side rows only, each interval ends with the wrong-side row behind its shaping row.
   */
  readonly shapingRows: readonly Rows[];
  /** Left to work even at the end: one when the rows are odd and only right-side rows are shaped. */
  readonly evenRows: Rows;
  /** How many rows a shaping row lies before the exact straight line, at most, when the intervals are mixed. */
  readonly mostOff: Fraction;
  /** The same when the shorter intervals are worked first, then the longer. */
  readonly mostOffInGroups: Fraction;
}

/**
 * One stitch at each edge every k-th and every (k + 1)-th row: with t shaping rows in r rows, r = k × t + rest, so the
 * rest is worked at k + 1 and the others at k. 38 to 60 stitches at both edges in 108 rows are 11 shaping rows: every
 * 9th row 2 times and every 10th row 9 times. Plain division, common practice.
 */
export function slope(request: SlopeRequest): Result<Slope> {
  const problem = whyNot(request);
  if (problem) return problem;
  const {from, to, edges, onlyRight} = request;
  const times = Math.abs(to - from) / edges;
  const step = onlyRight ? 2 : 1;
  const units = Math.floor(request.rows / step);
  const [short, rest] = [Math.floor(units / times), units % times];
  const intervals = [
    {every: rows(short * step), times: times - rest},
    {every: rows((short + 1) * step), times: rest},
  ].filter((interval) => interval.times > 0);
  const shapingRows = Array.from({length: times}, (_, index) =>
    rows(Math.floor(((index + 1) * units) / times) * step - (step - 1)),
  );
  const exactRow = (index: number) => Fraction.ofRatio((index + 1) * units * step, times);
  return success({
    change: to < from ? 'decrease' : 'increase',
    times,
    intervals,
    shapingRows,
    evenRows: rows(request.rows - units * step),
    mostOff: shapingRows
      .map((row, index) => exactRow(index).minus(Fraction.ofInteger(row)))
      .reduce((most, off) => (off.compare(most) > 0 ? off : most), Fraction.zero),
    mostOffInGroups: exactRow(times - rest - 1)
      .minus(Fraction.ofInteger((times - rest) * short * step))
      .plus(Fraction.ofInteger(step - 1)),
  });
}

function whyNot({from, to, rows: height, edges, onlyRight}: SlopeRequest): Result<never> | null {
  const change = Math.abs(to - from);
  if (Math.max(from, to, height) > mostCounted) {
    return cannotWork(
      `\`${Math.max(from, to, height)}\` is more than a piece of knitting has`,
      `Write stitches and rows up to ${mostCounted}.`,
    );
  }
  if (change === 0) {
    return cannotWork(
      `\`${from}\` stitches are to become \`${to}\``,
      'Work even: there is nothing to shape.',
    );
  }
  if (change % edges !== 0) {
    const nearer = to < from ? [to + 1, to - 1] : [to - 1, to + 1];
    return cannotWork(
      `\`${from}\` to \`${to}\` is an odd difference of \`${change}\`, which pairs of shaping cannot make`,
      `Work to ${nearer.filter((count) => count >= 0).join(' or ')} stitches, or work one single ${to < from ? 'decrease' : 'increase'} apart from the pairs.`,
    );
  }
  const times = change / edges;
  const room = onlyRight ? Math.floor(height / 2) : height;
  const rowWords = onlyRight ? 'right-side rows' : 'rows';
  if (times > Math.min(room, mostPlaces)) {
    const needed = onlyRight ? times * 2 : times;
    return cannotWork(
      `\`${plural(times, 'shaping row')}\` do not fit in \`${room}\` ${rowWords}`,
      times > mostPlaces
        ? `Shape on at most ${mostPlaces} rows.`
        : `Work at least ${needed} rows, or bind off some of the stitches in steps first.`,
    );
  }
  return null;
}
