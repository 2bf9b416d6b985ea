import type {Item} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {type PartPlaces, placesOf} from './parts/pattern-part-places.ts';

/**
 * A written pattern has the parts that the syllabus asks for.
 *
 * Why: whoever tests the pattern has nothing else to go by; a part that is not there is asked for by letter.
 *
 * Example: `parts: [needles, gauge, finishing]` in the syllabus, and a pattern that ends with its last row. A part is
 * met by its field, by a heading of its name or a near one (`Making up`), or by what is computed for it (`::key`).
 */
export const missingPatternPart: Rule = {
  id: 'missing-pattern-part',
  summary: 'a written pattern has the parts that the syllabus asks for',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      for (const part of item.requirement?.limits.parts ?? []) {
        if (hasPart(item, placesOf[part])) continue;
        report({
          file: item.file,
          ...scalarAt(item.places, ['requirement'], item.id),
          message: `\`${item.id}\` has no \`${part}\`; the syllabus asks for it`,
          hint: placesOf[part].hint,
          lacks: {count: 1, inShort: part},
          atMost,
        });
      }
    }
  },
};

function hasPart({body, fields}: Item, {headings, directives, fields: names, blocks}: PartPlaces): boolean {
  return (
    body.headings.some(({text}) => headings.test(text)) ||
    body.directives.some(({name}) => directives.includes(name)) ||
    body.blocks.some(({language}) => blocks.includes(language)) ||
    names.some((name) => isFilled(new Map(Object.entries(fields)).get(name)))
  );
}

function isFilled(value: unknown): boolean {
  return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== null && value !== '';
}
