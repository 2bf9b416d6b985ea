import type {Rule} from './define-rule.ts';

/**
 * Items are written in Markdown, without HTML tags.
 *
 * Why: tags are left out of the printed page, so what stands between them would look other than it was meant.
 *
 * Example: `<b>RS</b>` where `**RS**` is meant, or `k2tog<br>` for a new line.
 */
export const rawHtml: Rule = {
  id: 'raw-html',
  summary: 'items are written in Markdown, without HTML tags',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      for (const {text, place} of item.body.rawHtml) {
        const isOneLine = !/[\r\n]/.test(text);
        report({
          file: item.file,
          place,
          message: isOneLine ? `\`${text}\` is HTML and is not printed` : 'a block of HTML is not printed',
          hint: 'Write it in Markdown, or put it between backticks if the tag itself is meant.',
          ...(isOneLine ? {actual: text} : {}),
        });
      }
    }
  },
};
