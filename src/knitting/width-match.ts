import {type Result, success} from '../support/result.ts';
import {cannotWork, mostCounted} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {lengthOf} from './gauge.ts';
import {nearestWholeHalfUp} from './rounding.ts';
import {type Gauge, type Millimetres, millimetres, type Stitches, stitches} from './units.ts';

export interface WidthMatch {
  /** Stitches of plain fabric as wide as the panel, unrounded and to the nearest stitch. */
  readonly exact: Fraction;
  readonly plain: Stitches;
  /** The panel's stitches less the plain ones: added at the foot of the cables and taken at their head when above zero. */
  readonly change: number;
  readonly panelWidth: Millimetres;
  readonly plainWidth: Millimetres;
  /** Panel less plain: what the rounding to whole stitches leaves. */
  readonly off: Millimetres;
}

/**
 * How many plain stitches lie under a panel of cables without flare: panel ÷ panel gauge × plain gauge. 24 stitches at 26
 * over 10 cm are 92.3 mm, as wide as 18.5 stitches at 20, so 19 plain stitches and 5 added at the foot.
 */
export function widthMatch(
  panel: Stitches,
  panelGauge: Gauge<'stitches'>,
  plainGauge: Gauge<'stitches'>,
): Result<WidthMatch> {
  if (panel === 0 || panel > mostCounted) {
    return cannotWork(
      `a panel of \`${panel}\` stitches cannot be matched`,
      'Write the stitches of the panel.',
    );
  }
  const panelWidth = lengthOf(panel, panelGauge);
  const exact = panelWidth.times(plainGauge);
  if (exact.compare(Fraction.ofInteger(mostCounted)) > 0 || nearestWholeHalfUp(exact) === 0) {
    return cannotWork(
      'no number of plain stitches is as wide as the panel',
      'Check the unit of both gauges.',
    );
  }
  const plain = stitches(nearestWholeHalfUp(exact));
  const plainWidth = lengthOf(plain, plainGauge);
  const off = millimetres(panelWidth.minus(plainWidth));
  return success({exact, plain, change: panel - plain, panelWidth, plainWidth, off});
}
