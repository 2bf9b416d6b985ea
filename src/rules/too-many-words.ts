import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {textStart} from './parts/text-start.ts';

/**
 * A text is no longer than the syllabus allows.
 *
 * Why: assessors stop at the limit, or send the text back.
 *
 * Words are counted as a word processor counts them in the printed text: runs of characters between white space that
 * hold a letter or a digit. Front matter, citations, written rows, charts, computed tables and descriptions of pictures
 * do not count.
 *
 * Example: `words: {to: 500}` in the syllabus, and a review of 548 words.
 */
export const tooManyWords: Rule = {
  id: 'too-many-words',
  summary: 'a text is no longer than the syllabus allows',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      const to = item.requirement?.limits.words?.to;
      const {words} = item.body;
      if (to === undefined || words <= to) continue;
      report({
        file: item.file,
        place: textStart(item),
        message: `\`${item.id}\` has \`${plural(words, 'word')}\`; the syllabus allows at most \`${to}\``,
        hint: `Take out at least ${plural(words - to, 'word')}.`,
      });
    }
  },
};
