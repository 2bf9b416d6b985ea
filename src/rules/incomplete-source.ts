import type {Source, SourceType} from '../references/source.ts';
import {englishList} from '../support/english-list.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

type Field = keyof Source;

const creators: readonly Field[] = ['author', 'editor', 'director', 'translator'];

/**
 * Who, when, what and where: the four elements of a reference (APA Publication Manual, 7th ed., 9.4; from memory). One
 * field of each group is enough.
 */
const common: readonly (readonly Field[])[] = [['title'], ['issued']];
const elements: Readonly<Record<SourceType, readonly (readonly Field[])[]>> = {
  book: [creators, ...common, ['publisher', 'URL', 'DOI']],
  chapter: [creators, ...common, ['container-title'], ['page']],
  'article-journal': [creators, ...common, ['container-title']],
  'article-magazine': [...common, ['container-title']],
  'article-newspaper': [...common, ['container-title']],
  pamphlet: [...common],
  webpage: [['title'], ['URL']],
  'post-weblog': [creators, ...common, ['URL']],
  motion_picture: [['author', 'director'], ...common],
  broadcast: [...common],
  interview: [['author', 'interviewer'], ['issued']],
  manuscript: [['title'], ['archive', 'publisher', 'publisher-place', 'URL']],
  thesis: [['author'], ...common, ['publisher']],
  report: [creators, ...common],
  'entry-encyclopedia': [...common, ['container-title']],
  speech: [['author'], ['issued']],
  personal_communication: [['author'], ['issued']],
  graphic: [['title']],
};

/**
 * A source that is cited has what its reference is made of: who, when, what, and where it is found.
 *
 * Why: the reference would print with a gap, and nobody could order the book. What a type needs stands in the table of
 * this rule; a source that names no author or date on purpose says so in `note`, and is passed over.
 *
 * Example: a `book` without `publisher`; a `chapter` without `container-title` and `page`.
 */
export const incompleteSource: Rule = {
  id: 'incomplete-source',
  summary: 'a source that is cited has what its reference is made of',
  severity: 'warning',
  check(binder, report) {
    const cited = new Set(binder.items.flatMap(({citations}) => citations.map(({citation}) => citation.key)));
    for (const {source, file, places, path} of binder.library) {
      if (!cited.has(source.id) || source.note !== undefined) continue;
      const missing = elements[source.type].filter(
        (fields) => !fields.some((field) => source[field] !== undefined || places.has([...path, field])),
      );
      if (missing.length === 0) continue;
      const names = missing.map((fields) =>
        englishList(
          fields.map((field) => `\`${field}\``),
          'or',
        ),
      );
      report({
        file,
        ...scalarAt(places, [...path, 'id'], source.id),
        message: `\`${source.id}\` has no ${englishList(names)}, which a reference of the type \`${source.type}\` is made of`,
        hint: 'Add it from the title page; if the source really has none, say so in `note:`.',
      });
    }
  },
};
