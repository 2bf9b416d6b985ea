import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * Where the syllabus requires a pattern, the item holds written rows.
 *
 * Why: the assessors follow the rows with needles in hand; only a `rows` block has its stitches counted and is printed
 * as instructions.
 *
 * Example: `pattern: required` in the syllabus, and an item that describes the stitch in prose, or whose `rows` block is
 * still empty.
 */
export const patternWithoutRows: Rule = {
  id: 'pattern-without-rows',
  summary: 'where the syllabus requires a pattern, the item holds written rows',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      if (item.requirement?.limits.pattern !== 'required') continue;
      if (item.body.blocks.some(({language, text}) => language === 'rows' && text.trim() !== '')) continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['requirement'], item.id),
        message: `\`${item.id}\` has no written rows; the syllabus requires a pattern`,
        hint: 'Write the rows between a line `~~~rows` and a line `~~~`.',
        lacks: {count: 1, inShort: 'written rows'},
        atMost,
      });
    }
  },
};
