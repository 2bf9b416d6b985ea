import {type Binder, itemsById, requirementsOf} from '../model/binder.ts';
import type {Rule} from './define-rule.ts';
import {spareItems} from './parts/spare-items.ts';

/**
 * Every requirement of the syllabus is answered by an item.
 *
 * Why: what is not in the box cannot be assessed, and the box comes back for it.
 *
 * Example: the syllabus lists `S-07`, and no file below `content/` says `requirement: S-07`. A file with a near
 * miss, such as `requirement: S-70`, is reported there and not here; and as long as there are files that could not be
 * read, as many missing items are taken to be in them.
 */
export const requirementWithoutItem: Rule = {
  id: 'requirement-without-item',
  summary: 'every requirement of the syllabus is answered by an item',
  severity: 'error',
  check(binder, report) {
    const answered = itemsById(binder);
    const meant = new Set(spareItems(binder).map((spare) => spare.meant?.id));
    const missing = requirementsOf(binder).filter(({id}) => !answered.has(id) && !meant.has(id));
    if (missing.length <= unreadFiles(binder).length) return;
    for (const {id, title, kind, place} of missing) {
      report({
        file: binder.syllabus.file,
        place,
        message: `no item answers \`${id}\`, ${title}`,
        hint: `Write the ${kind} in a file of its own with \`requirement: ${id}\` in its front matter.`,
        actual: id,
      });
    }
  },
};

/** Markdown files that are no items because reading them failed. */
function unreadFiles(binder: Binder): readonly string[] {
  const read = new Set(binder.items.map((item) => item.file));
  const reported = new Set(binder.readFindings.map((finding) => finding.file));
  return [...reported].filter((file) => file.endsWith('.md') && !read.has(file));
}
