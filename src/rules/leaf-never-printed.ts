import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * A leaf that was taken out of the paper binder had been put in.
 *
 * Why: `build --changed` says what to take out from what the ledger holds. A line about a leaf that was never printed is a
 * slip in its number, or its counterpart was lost when two copies were merged: then an old leaf stays in the binder, and
 * nothing says so.
 *
 * Example: `{leaf: S-07 · 4 of 3, done: taken out, on: 2026-03-02}`, where `S-07 · 3 of 3` was printed.
 */
export const leafNeverPrinted: Rule = {
  id: 'leaf-never-printed',
  summary: 'a leaf that was taken out had been printed',
  severity: 'warning',
  check({ledger}, report) {
    const inBinder = new Set<string>();
    for (const [index, {leaf, done, on}] of ledger.entries.entries()) {
      if (done === 'printed') inBinder.add(leaf);
      else if (!inBinder.delete(leaf)) {
        report({
          file: ledger.file,
          ...scalarAt(ledger.places, ['leaves', index, 'leaf'], leaf),
          message: `\`${leaf}\` was taken out on \`${on}\`, but no line above says that it was in the binder`,
          hint: 'Correct the leaf number, or write the line that is missing above.',
        });
      }
    }
  },
};
