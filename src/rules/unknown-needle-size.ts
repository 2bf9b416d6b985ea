import {parseNeedleSize} from '../knitting/needle-size.ts';
import {isStubText} from '../model/stub-text.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * A needle size exists and can be understood in one way only.
 *
 * Why: American and old British numbers run in opposite directions, so that `10` is 6 mm in one and 3.25 mm in the
 * other; an assessor who reads the wrong one judges the fabric by the wrong needle.
 *
 * Example: `needles: size 10`, or `needles: 4.6 mm`, which nobody makes. The sizes: eight public conversion tables,
 * compared; millimetres are the only exact column.
 */
export const unknownNeedleSize: Rule = {
  id: 'unknown-needle-size',
  summary: 'a needle size exists and can be understood in one way only',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      const needles = 'needles' in item.fields ? (item.fields.needles ?? []) : [];
      needles.forEach((text, index) => {
        const size = parseNeedleSize(text);
        if (size.ok || isStubText(text)) return;
        for (const {message, hint, span} of size.problems) {
          report({
            file: item.file,
            ...scalarAt(item.places, ['needles', index], text, span),
            message,
            hint,
          });
        }
      });
    }
  },
};
