import {itemsById, requirementsOf} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';

/**
 * What was sent is still there: its requirement in the syllabus, its item among the files.
 *
 * Why: an item that was renamed after it was posted has lost its answer, and a requirement taken out of the syllabus
 * leaves a piece in the assessors' hands that no list names.
 *
 * Example: `S-07` in `content/rounds/0/sent.yaml`, and no item any more that says `requirement: S-07`.
 */
export const sentItemGone: Rule = {
  id: 'sent-item-gone',
  summary: 'what was sent is still there',
  severity: 'warning',
  check(binder, report) {
    const items = itemsById(binder);
    const asked = new Set(requirementsOf(binder).map(({id}) => id));
    const told = new Set<string>();
    for (const {file, places, items: posted, round} of binder.sentRounds.toReversed()) {
      for (const id of Object.keys(posted)) {
        if (told.has(id) || (items.has(id) && asked.has(id))) continue;
        told.add(id);
        report({
          file,
          place: places.key(['items', id]),
          actual: id,
          message: asked.has(id)
            ? `\`${id}\` was sent in round \`${round}\`, and no item answers it any more`
            : `\`${id}\` was sent in round \`${round}\`, and the syllabus does not name it any more`,
          hint: asked.has(id)
            ? `Write \`requirement: ${id}\` in the item that was sent, or bring its file back; a copy lies in the folder of the round.`
            : 'Put the requirement back into the syllabus until the last answer has come.',
        });
      }
    }
  },
};
