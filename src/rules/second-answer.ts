import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * A round has one answer.
 *
 * Why: of two answers nobody can tell which holds, and the states of the items follow from it.
 *
 * Example: `round: 0` in both `round-0.yaml` and `round-1.yaml`, where the second was copied from the first.
 */
export const secondAnswer: Rule = {
  id: 'second-answer',
  summary: 'a round has one answer',
  severity: 'error',
  check(binder, report) {
    binder.assessments.forEach(({round, file, places}, index) => {
      const first = binder.assessments.slice(0, index).find((other) => other.round === round);
      if (!first) return;
      report({
        file,
        ...scalarAt(places, ['round'], String(round)),
        message: `round \`${round}\` is answered in two files`,
        hint: 'Write the round that this letter answers, or put both into one file.',
        related: [
          {
            file: first.file,
            place: first.places.value(['round']),
            message: `round \`${round}\` is answered here too`,
          },
        ],
      });
    });
  },
};
