import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {spareItems} from './parts/spare-items.ts';

/**
 * Every requirement is answered by one item only.
 *
 * Why: the binder prints one item for each requirement, so the second file would be left out without a trace.
 *
 * Example: a file was copied to begin the next swatch, and both still say `requirement: S-07`.
 */
export const duplicateItem: Rule = {
  id: 'duplicate-item',
  summary: 'every requirement is answered by one item only',
  severity: 'error',
  check(binder, report) {
    for (const {item, first, meant} of spareItems(binder)) {
      if (!first) continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` is answered by another file already`,
        hint: meant
          ? `\`${meant.id}\`, ${meant.title}, has no item yet: write its id if this is the answer to it.`
          : 'Keep one of the two files, or write the id of the requirement that this one answers.',
        related: [
          {
            file: first.file,
            place: first.places.value(['requirement']),
            message: `\`${item.id}\` is answered here first`,
          },
        ],
      });
    }
  },
};
