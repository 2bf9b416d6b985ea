import type {UnitOrder} from '../knitting/format-quantity.ts';
import {summarizeGauge} from '../knitting/gauge.ts';
import type {GaugeCount} from '../knitting/quantity.ts';
import type {CountUnit} from '../knitting/units.ts';
import type {Measurement} from '../model/schema/item-fields.ts';
import {formatOver, gaugeScales} from '../tables/gauge-scale.ts';

/**
 * The mean gauge in words, in both units: `19.7 sts and 27.0 rows over 10 cm (5.00 sts and 6.86 rows over 1 in)`;
 * null where nothing was counted. Rounded once, here, as `gaugeScales` says.
 */
export function gaugeInWords(
  {stitches, rows}: Pick<Measurement, 'stitches' | 'rows'>,
  order: UnitOrder,
): string | null {
  const means = [
    {mean: meanOf<'stitches'>(stitches), short: 'sts'},
    {mean: meanOf<'rows'>(rows), short: 'rows'},
  ];
  const [first, second] = gaugeScales(order).map((scale) => {
    const counts = means.flatMap(({mean, short}) =>
      mean ? [`${formatOver(mean, scale)}\u00a0${short}`] : [],
    );
    return counts.length > 0 ? `${counts.join(' and ')} ${scale.words}` : null;
  });
  return first ? `${first} (${second})` : null;
}

function meanOf<U extends CountUnit>(counts: readonly GaugeCount[]) {
  return counts.length > 0 ? summarizeGauge<U>(counts).mean : null;
}
