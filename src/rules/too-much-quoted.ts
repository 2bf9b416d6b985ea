import type {Rule} from './define-rule.ts';
import {textStart} from './parts/text-start.ts';

/**
 * No more of a text is quoted than the syllabus allows (`words: {quoted: 20}`, in percent of its words).
 *
 * Why: the candidate's understanding is examined, not the books'. Block quotes count, and words between quotation marks.
 *
 * Example: an answer of 100 words, 30 of them in a block quote, where at most 20 % may be quoted.
 */
export const tooMuchQuoted: Rule = {
  id: 'too-much-quoted',
  summary: 'no more of a text is quoted than the syllabus allows',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      const allowed = item.requirement?.limits.words?.quoted;
      const {quotations, words} = item.body;
      if (allowed === undefined || words === 0) continue;
      const quoted = quotations.reduce((sum, quotation) => sum + quotation.words, 0);
      if (quoted * 100 <= allowed * words) continue;
      report({
        file: item.file,
        place: quotations[0]?.place ?? textStart(item),
        message: `\`${quoted}\` of the \`${words} words\` of \`${item.id}\` are quoted; the syllabus allows \`${allowed} %\``,
        hint: 'Say more of it in your own words, and keep the citations.',
      });
    }
  },
};
