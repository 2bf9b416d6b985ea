import type {Rule} from './define-rule.ts';

/**
 * Headings go down one level at a time.
 *
 * Why: the bookmarks and the numbering follow the levels; a skipped level leaves a gap in both, and a reader who
 * listens to the PDF loses the thread. The item's title is the first level, so its text begins with `##`.
 *
 * Example: `####` directly below `##`.
 */
export const headingJump: Rule = {
  id: 'heading-jump',
  summary: 'headings go down one level at a time',
  severity: 'warning',
  check(binder, report) {
    for (const item of binder.items) {
      let above = 1;
      for (const {depth, text, place} of item.body.headings) {
        if (depth > above + 1) {
          report({
            file: item.file,
            place,
            message: `\`${text}\` is a heading of level \`${depth}\` below one of level \`${above}\``,
            hint: `Begin the line with \`${'#'.repeat(above + 1)}\`.`,
          });
        }
        above = depth;
      }
    }
  },
};
