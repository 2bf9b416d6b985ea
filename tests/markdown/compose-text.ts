import {composeBody} from '../../src/markdown/compose-body.ts';
import type {BodyLookups} from '../../src/markdown/compose-context.ts';
import {parseItem} from '../../src/markdown/parse-item.ts';

/** Lookups that know nothing: no table, no citation, no target, no picture. */
export const emptyLookups: BodyLookups = {
  block: () => null,
  table: () => null,
  citations: [],
  crossReference: () => null,
  photo: () => null,
};

/** Markdown below a front matter of three lines, composed as the item `S-07`. */
export function composeText(markdown: string, lookups: Partial<BodyLookups> = {}) {
  const parsed = parseItem('content/swatches/a.md', `---\nrequirement: S-07\n---\n${markdown}`);
  const {html, findings} = composeBody({id: 'S-07', ...parsed}, {...emptyLookups, ...lookups});
  return {html: String(html), findings, parsed};
}
