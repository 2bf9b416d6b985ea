import {requirementsOf} from '../model/binder.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {spareItems} from './parts/spare-items.ts';

/**
 * Every item answers a requirement that stands in the syllabus.
 *
 * Why: the binder prints its items in the order of the syllabus; an item that it does not ask for has no place there,
 * no limits and no tab.
 *
 * Example: `requirement: S-70` where the syllabus ends at `S-18`.
 */
export const itemWithoutRequirement: Rule = {
  id: 'item-without-requirement',
  summary: 'every item answers a requirement of the syllabus',
  severity: 'error',
  check(binder, report) {
    const ids = requirementsOf(binder).map((requirement) => requirement.id);
    for (const {item, first, meant} of spareItems(binder)) {
      if (first) continue;
      const nearest = meant?.id ?? nearestName(item.id, ids);
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `the syllabus has no requirement \`${item.id}\``,
        hint: meant
          ? `\`${meant.id}\`, ${meant.title}, has no item yet: write its id if this is the answer to it.`
          : `Write an id that stands in \`${binder.syllabus.file}\`, or add this one there.`,
        ...(nearest === null ? {} : {expected: [nearest]}),
      });
    }
  },
};
