import {itemsById, requirementsOf} from '../model/binder.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Rule} from './define-rule.ts';
import {narrowed} from './parts/narrowed.ts';

/**
 * A cross-reference names an id that exists.
 *
 * Why: it is printed as number, title and leaf of what it points to; pointing nowhere, it would print as a gap. A
 * requirement without an item is the finding of `requirement-without-item`.
 *
 * Example: `[](#S-70)` in the text, where the syllabus ends at `S-18`.
 */
export const brokenCrossReference: Rule = {
  id: 'broken-cross-reference',
  summary: 'a cross-reference names an id that exists',
  severity: 'error',
  check(binder, report) {
    const ids = new Set([...requirementsOf(binder).map(({id}) => id), ...itemsById(binder).keys()]);
    for (const item of binder.items) {
      for (const {target, place} of item.body.crossReferences) {
        if (ids.has(target)) continue;
        const nearest = nearestName(target, ids);
        report({
          file: item.file,
          ...narrowed(item, place, target),
          message: `nothing has the id \`${target}\``,
          hint: nearest
            ? `Write \`${nearest}\` if that is meant.`
            : 'Write the id of a requirement, such as `S-07`, as it stands in the syllabus.',
          ...(nearest === null ? {} : {expected: [nearest]}),
        });
      }
    }
  },
};
