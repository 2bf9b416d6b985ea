import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * An answer is to something that was sent, and came after it.
 *
 * Why: a slip in the round or the id would let an item pass that the assessors never saw. Silent in a binder that never
 * recorded a posting with `send`, and about rounds before the first that was recorded.
 *
 * Example: `round: 2` in an answer, where rounds 0 and 1 were sent; or a result for `S-07`, which was not in round 1; or
 * `received:` a day before the round was sent.
 */
export const answerWithoutPosting: Rule = {
  id: 'answer-without-posting',
  summary: 'an answer is to something that was sent, and came after it',
  severity: 'error',
  check(binder, report) {
    const [first] = binder.sentRounds;
    if (!first) return;
    for (const {round, received, results, file, places} of binder.assessments) {
      if (round < first.round) continue;
      const posting = binder.sentRounds.find((sent) => sent.round === round);
      if (!posting) {
        report({
          file,
          ...scalarAt(places, ['round'], String(round)),
          message: `round \`${round}\` was not sent`,
          hint: `Write the round that the letter answers; the last that was sent is ${binder.sentRounds.at(-1)?.round ?? 0}.`,
        });
        continue;
      }
      const related = [
        {file: posting.file, place: posting.places.value(['sent']), message: `sent on \`${posting.sent}\``},
      ];
      if (received < posting.sent) {
        report({
          file,
          ...scalarAt(places, ['received'], received),
          message: `the answer was received on \`${received}\`, before round \`${round}\` was sent`,
          hint: 'Check the two dates, and the clock of the computer.',
          related,
        });
      }
      for (const id of Object.keys(results)) {
        if (posting.items[id] !== undefined) continue;
        report({
          file,
          place: places.key(['results', id]),
          actual: id,
          message: `\`${id}\` was not among the items of round \`${round}\``,
          hint: 'Check the id against the letter.',
          related,
        });
      }
    }
  },
};
