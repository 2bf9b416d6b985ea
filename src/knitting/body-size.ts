import {type Result, success} from '../support/result.ts';
import {cannotWork} from './cannot-work.ts';
import {Fraction} from './fraction.ts';
import {type CountUnit, type Gauge, type Millimetres, millimetres} from './units.ts';

export interface BodySize {
  /** As worn: body + ease. */
  readonly finished: Millimetres;
  /** As knitted, before blocking changes it. */
  readonly knitted: Millimetres;
}

/**
 * The finished measurement, body + ease, and what to knit to before blocking: finished ÷ growth. A piece that shrinks by
 * 4 % (growth 0.96) is knitted 104.17 cm long to be 100 cm. The change of a length on blocking is that of ISO 3759 / ISO
 * 5077.
 */
export function bodySize(body: Millimetres, ease: Millimetres, growth: Fraction): Result<BodySize> {
  const finished = millimetres(body.plus(ease));
  if (finished.compare(Fraction.zero) <= 0) {
    return cannotWork(
      'the body with its ease is not above zero',
      'Write a measure of the body, and take less from it than it is.',
    );
  }
  if (growth.compare(Fraction.zero) <= 0) {
    return cannotWork(
      'a piece that shrinks by 100 % or more is gone',
      'Write the change on blocking in percent of the length before, such as `-4 %`.',
    );
  }
  return success({finished, knitted: millimetres(finished.dividedBy(growth))});
}

/** What blocking multiplies a length by: the gauge before ÷ the gauge after, for fewer stitches are wider ones. */
export function growthOf<U extends CountUnit>(before: Gauge<U>, after: Gauge<NoInfer<U>>): Fraction {
  return before.dividedBy(after);
}

/** What a change in percent multiplies a length by: −4 % is 0.96. */
export function growthOfPercent(percent: Fraction): Fraction {
  return Fraction.one.plus(percent.dividedBy(Fraction.ofInteger(100)));
}
