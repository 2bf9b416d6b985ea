import type {Finding} from '../diagnostics/finding.ts';
import {visibleView} from '../layout/visible-view.ts';
import {type Binder, type Item, itemsById} from '../model/binder.ts';
import {type ItemState, statesOf} from '../model/item-state.ts';
import type {PreviewFindings} from '../preview/preview-state.ts';

/** Findings as the preview shows them: beside the item `shown`, counted for every other, in words for all other files. */
export function previewFindings(
  binder: Binder | null,
  findings: readonly Finding[],
  shown: string | null,
  counts: string,
): PreviewFindings {
  const items = binder === null ? new Map<string, Item>() : itemsById(binder);
  const files = new Map([...items].map(([id, {file}]) => [file, id]));
  const found = new Map<string, number>();
  for (const {file, severity} of findings) {
    const key = `${severity} ${file}`;
    found.set(key, (found.get(key) ?? 0) + 1);
  }
  const count = (id: string, severity: Finding['severity']) =>
    found.get(`${severity} ${items.get(id)?.file}`) ?? 0;
  const states = binder === null ? new Map<string, ItemState>() : statesOf(binder);
  const sections = binder?.syllabus.sections ?? [];
  return visibleView({
    sections: sections.map(({title, requirements}) => ({
      title,
      items: requirements
        .filter(({id}) => items.has(id))
        .map(({id, title: asked}) => ({
          id,
          title: items.get(id)?.title ?? asked,
          state: states.get(id) ?? 'planned',
          errors: count(id, 'error'),
          warnings: count(id, 'warning'),
        })),
    })),
    shown,
    notes: findings
      .filter(({file}) => shown !== null && files.get(file) === shown)
      .map(({place, severity, rule, message, hint}) => ({line: place.line, severity, rule, message, hint})),
    elsewhere: findings
      .filter(({file, severity}) => !files.has(file) && severity !== 'info')
      .map(({file, place, message}) => `${file}:${place.line}: ${message}`),
    counts,
  });
}
