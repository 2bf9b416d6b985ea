import {itemsById} from '../model/binder.ts';
import {lastResults} from '../model/last-results.ts';
import {isStubText} from '../model/stub-text.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {isUnread} from './parts/is-unread.ts';

/**
 * An item to rework answers in writing what the assessors remarked.
 *
 * Why: the resubmission page sets the remark beside what was done about it; without the answer the assessors must find
 * the difference themselves.
 *
 * Example: the answer to round 0 asks for rework of `S-07`, and `S-07` has no entry `rework: [{round: 1, done: …}]`.
 */
export const reworkWithoutAnswer: Rule = {
  id: 'rework-without-answer',
  summary: 'an item to rework answers in writing what the assessors remarked',
  severity: 'error',
  check(binder, report) {
    const items = itemsById(binder);
    for (const [id, {assessment, result}] of lastResults(binder)) {
      const item = items.get(id);
      if (!item || result !== 'rework' || isUnread(binder, item, ['rework'])) continue;
      const round = assessment.round + 1;
      const index = item.fields.rework.findIndex((rework) => rework.round === round);
      if (!isStubText(item.fields.rework[index]?.done ?? '')) continue;
      report({
        file: item.file,
        ...(index < 0
          ? scalarAt(item.places, ['requirement'], id)
          : {place: valueAt(item.places, ['rework', index, 'done'])}),
        message: `\`${id}\` does not say what was done about the assessors' remark for round \`${round}\``,
        hint:
          index < 0
            ? `Add an entry to \`rework\` with \`round: ${round}\` and \`done:\`.`
            : 'Write it after `done:`.',
        related: [
          {
            file: assessment.file,
            place: assessment.places.key(['results', id]),
            message: `the answer to round \`${assessment.round}\` asks for rework`,
          },
        ],
      });
    }
  },
};
