import {Fraction} from './fraction.ts';
import type {CountUnit, Gauge, Millimetres} from './units.ts';

/**
 * Dimensional change of a length in percent: 100 × (after − before) ÷ before, the formula of ISO 3759 and ISO 5077.
 * Growing is above zero, shrinking below: 100 mm that become 97 mm changed by −3 %. `before` is above zero.
 */
export function changeOfLength(before: Millimetres, after: Millimetres): Fraction {
  return percentChange(before, after);
}

/**
 * Change of a gauge in percent, by the same formula. The fabric changes the other way round: fewer stitches over the
 * same length are wider ones. 20 stitches over 10 cm that become 19.2 changed by −4 %, and the fabric grew by 4.17 %.
 */
export function changeOfGauge<U extends CountUnit>(before: Gauge<U>, after: Gauge<NoInfer<U>>): Fraction {
  return percentChange(before, after);
}

function percentChange(before: Fraction, after: Fraction): Fraction {
  return after.minus(before).dividedBy(before).times(Fraction.ofInteger(100));
}
