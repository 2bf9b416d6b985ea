import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * A leaf in the paper binder is recorded with its fingerprint.
 *
 * Why: the fingerprint tells whether the leaf has changed since. Without one it is printed anew by `build --changed`,
 * even if it is the same; `printed` then writes it down.
 *
 * Example: a line that was typed by hand, `{leaf: S-07 · 2 of 3, done: printed, on: 2026-03-02}`.
 */
export const leafWithoutFingerprint: Rule = {
  id: 'leaf-without-fingerprint',
  summary: 'a leaf in the binder is recorded with its fingerprint',
  severity: 'info',
  check({ledger}, report) {
    const last = new Map(ledger.entries.map((entry, index) => [entry.leaf, {...entry, index}]));
    for (const {leaf, done, fingerprint, index} of last.values()) {
      if (done !== 'printed' || fingerprint !== undefined) continue;
      report({
        file: ledger.file,
        ...scalarAt(ledger.places, ['leaves', index, 'leaf'], leaf),
        message: `\`${leaf}\` was recorded as printed without a fingerprint, so that no change can be seen`,
        hint: 'Nothing need be done: the next `build --changed` prints it anew, and `printed` records it.',
      });
    }
  },
};
