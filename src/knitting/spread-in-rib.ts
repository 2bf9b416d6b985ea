import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted, mostPlaces} from './cannot-work.ts';
import {sharesWithHalfEnds} from './share-evenly.ts';
import {type Stitches, stitches} from './units.ts';
import {writeRow} from './write-row.ts';

/** A rib as its right side is worked: so many knit, so many purl, again and again, beginning with `knit`. */
export interface Rib {
  readonly knit: number;
  readonly purl: number;
}

/** Buttonholes that stand centred in purl ribs. */
export interface RibSpread {
  /** Which purl ribs hold them, the first is 1. */
  readonly ribs: readonly number[];
  /** Purl ribs left free before the first, between and behind the last. */
  readonly free: readonly number[];
  /** The right-side row: bound off. */
  readonly boundOff: string;
  /** The row after it: cast on again. */
  readonly castOn: string;
}

/**
 * Sets buttonholes in the purl ribs of a band so that the numbers of free ribs between them differ by one at most, half
 * as many at the ends. A buttonhole can be centred in a rib only when both are odd or both even, and no wider than it.
 */
export function spreadInRib(request: {
  readonly stitches: Stitches;
  readonly rib: Rib;
  readonly buttonholes: number;
  readonly width: number;
}): Result<RibSpread> {
  const {stitches: count, rib, buttonholes, width} = request;
  const {knit, purl} = rib;
  if (knit === 0 || purl === 0 || knit + purl > count || count > mostCounted) {
    return cannotWork(
      `a rib of \`k${knit}, p${purl}\` does not fit on \`${count}\` stitches`,
      'Write a rib of knit and purl stitches, such as `k2, p2`, and a band of at least one repeat.',
    );
  }
  if (width === 0 || width > purl || (purl - width) % 2 !== 0) {
    const sizes = Array.from({length: Math.ceil(purl / 2)}, (_, index) => purl - 2 * index);
    return cannotWork(
      `a buttonhole of \`${plural(width, 'stitch', 'stitches')}\` cannot stand centred in \`${plural(purl, 'purl stitch', 'purl stitches')}\``,
      `Make it ${sizes.toReversed().join(' or ')} ${sizes.length === 1 && purl === 1 ? 'stitch' : 'stitches'} wide.`,
    );
  }
  const purlRibs = Math.floor(count / (knit + purl));
  if (buttonholes === 0 || buttonholes > Math.min(purlRibs, mostPlaces)) {
    return cannotWork(
      `\`${plural(buttonholes, 'buttonhole')}\` cannot be set in \`${plural(purlRibs, 'purl rib')}\``,
      `Work 1 to ${Math.min(purlRibs, mostPlaces)} of them.`,
    );
  }
  const free = sharesWithHalfEnds(purlRibs - buttonholes, buttonholes);
  let reached = 0;
  const ribs = free.slice(0, -1).map((skipped) => {
    reached += skipped + 1;
    return reached;
  });
  return success({ribs, free, ...rows(count, rib, new Set(ribs), width)});
}

/** Both rows, in the rib as it stands: on the wrong side knits are purled and purls are knitted, from the other end. */
function rows(count: Stitches, {knit, purl}: Rib, holed: ReadonlySet<number>, width: number) {
  const side = (purl - width) / 2;
  const right: string[] = [];
  const wrong: string[] = [];
  const add = (hand: 'k' | 'p', length: number) => {
    if (length === 0) return;
    right.push(`${hand}${length}`);
    wrong.push(`${hand === 'k' ? 'p' : 'k'}${length}`);
  };
  for (let start = 0, number = 1; start < count; start += knit + purl, number++) {
    add('k', Math.min(knit, count - start));
    const purls = Math.min(purl, Math.max(0, count - start - knit));
    if (holed.has(number)) {
      add('p', side);
      right.push(`bind off ${width}`);
      wrong.push(`cast on ${width}`);
      add('p', side);
    } else add('p', purls);
  }
  const left = stitches(count - holed.size * width);
  return {
    boundOff: `Row 1 (RS): ${writeRow(right)} (${plural(left, 'st')})`,
    castOn: `Row 2 (WS): ${writeRow(wrong.toReversed())} (${plural(count, 'st')})`,
  };
}
