import type {Binder, Item} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {type FieldValue, fieldValues} from './parts/field-values.ts';
import {isUnread, readFindingsIn} from './parts/is-unread.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * Every front matter field that the syllabus requires is filled.
 *
 * Why: each stands on the printed sheet or tag, and the assessors look for it there.
 *
 * Example: `fields: [yarn.fibre, blocking]` in the syllabus, and a swatch without `blocking`. A field that still holds
 * what the stub wrote is the finding of `stub-text`.
 */
export const missingField: Rule = {
  id: 'missing-field',
  summary: 'every front matter field that the syllabus requires is filled',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      for (const {path, names} of missingFields(item, binder)) {
        const [top = ''] = path;
        const isTopThere = item.places.has([top]);
        report({
          file: item.file,
          ...(isTopThere
            ? {place: valueAt(item.places, path)}
            : scalarAt(item.places, ['requirement'], item.id)),
          message: `\`${item.id}\` has no ${englishList(names.map((name) => `\`${name}\``))}, which the syllabus requires`,
          hint:
            isTopThere && path.length > 1
              ? `Add \`${path.at(-1)}\` to \`${top}\`.`
              : `${isTopThere ? 'Fill' : 'Add'} \`${top}:\` in the front matter, above the second \`---\`.`,
          lacks: {count: names.length, inShort: names.join(', ')},
          atMost,
        });
      }
    }
  },
};

/** What is missing where: several names that lack the same group, such as `yarn`, are one gap. */
function missingFields(item: Item, binder: Binder) {
  const gaps = new Map<string, {path: FieldValue['path']; names: string[]}>();
  for (const name of requiredFields(item, binder)) {
    for (const {path, value} of fieldValues(item.fields, name)) {
      if (!isEmpty(value) || isUnread(binder, item, path)) continue;
      const gap = gaps.get(path.join('.')) ?? {path, names: []};
      gap.names.push(name);
      gaps.set(path.join('.'), gap);
    }
  }
  return gaps.values();
}

/** A name that no item can have is a finding about the syllabus, not about every item. */
function requiredFields(item: Item, binder: Binder): readonly string[] {
  const unknown = readFindingsIn(binder, binder.syllabus.file).filter(({rule}) => rule === 'unknown-field');
  return (item.requirement?.limits.fields ?? []).filter(
    (name) => !unknown.some(({actual}) => actual === name),
  );
}

/** A group or a list of which nothing is filled is empty too. */
function isEmpty(value: unknown): boolean {
  if (value === undefined || value === null || value === '') return true;
  return typeof value === 'object' && Object.values(value).every(isEmpty);
}
