import type {SourceType} from '../references/source.ts';
import type {Rule} from './define-rule.ts';
import {entriesByKey} from './parts/library.ts';

/** Sources that have neither pages nor a running time that others could turn to. */
const typesWithoutLocator: readonly SourceType[] = [
  'webpage',
  'post-weblog',
  'graphic',
  'interview',
  'personal_communication',
  'speech',
];

/**
 * A citation says where in the source, when the syllabus requires a locator.
 *
 * Why: a whole book is no reference for one decrease; the assessor opens it at the page. Exempt are web pages, pictures
 * and conversations, which have no pages, and the source that a review is about.
 *
 * Example: `[@ashdown2011]` where `[@ashdown2011, p. 57]` is meant; for a film `[@orme2013, t. 3:20]`.
 */
export const citationWithoutLocator: Rule = {
  id: 'citation-without-locator',
  summary: 'a citation says where in the source, when the syllabus requires a locator',
  severity: 'error',
  check(binder, report) {
    const entries = entriesByKey(binder);
    for (const item of binder.items) {
      if (item.requirement?.limits.references?.locator !== 'required') continue;
      for (const {citation, from, place} of item.citations) {
        const source = entries.get(citation.key)?.source;
        if (!source || citation.locator !== null || from === 'reviews') continue;
        if (typesWithoutLocator.includes(source.type)) continue;
        report({
          file: item.file,
          place,
          message: `the citation of \`${citation.key}\` does not say where in the source`,
          hint:
            source.type === 'motion_picture' || source.type === 'broadcast'
              ? `Add the time, such as \`@${citation.key}, t. 3:20\`.`
              : `Add the page, such as \`@${citation.key}, p. 57\`.`,
        });
      }
    }
  },
};
