import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {measurementsOf} from './parts/measurements.ts';

/**
 * Rework follows an answer that asks for it.
 *
 * Why: the resubmission page prints the remark beside the rework. Without a remark there is nothing to print, and
 * measurements that are older than the answer are those of the piece that was sent before.
 *
 * Example: `rework: [{round: 1, …}]` in an item that passed in round 0; or measured on 2026-06-10, with the
 * measurements as they were sent under `before`, where the answer was received on 2026-09-14.
 */
export const reworkBeforeAnswer: Rule = {
  id: 'rework-before-answer',
  summary: 'rework follows an answer that asks for it',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      item.fields.rework.forEach(({round, before}, index) => {
        const answer = binder.assessments.find(
          ({round: assessed, results}) => assessed === round - 1 && results[item.id]?.result === 'rework',
        );
        if (!answer) {
          report({
            file: item.file,
            ...scalarAt(item.places, ['rework', index, 'round'], String(round)),
            message: `no answer to round \`${round - 1}\` asks for rework of \`${item.id}\``,
            hint: 'Write the round in which the reworked item is posted, one more than that of the answer.',
          });
          return;
        }
        const isLast = item.fields.rework.every((rework) => rework.round <= round);
        measurementsOf(item).forEach(({on}, place) => {
          if (!before || !isLast || on === undefined || on >= answer.received) return;
          report({
            file: item.file,
            ...scalarAt(item.places, ['measured', place, 'on'], on),
            message: `\`${item.id}\` was measured on \`${on}\`, before the answer that asks for its rework was received`,
            hint: 'Measure the reworked piece; what was measured before belongs under `before` of the rework.',
            related: [
              {
                file: answer.file,
                place: valueAt(answer.places, ['received']),
                message: `received on \`${answer.received}\``,
              },
            ],
          });
        });
      });
    }
  },
};
