import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {textStart} from './parts/text-start.ts';

/**
 * A text is at least as long as the syllabus asks.
 *
 * Why: a text below the limit is taken as a question left half unanswered.
 *
 * Words are counted as a word processor counts them in the printed text: runs of characters between white space that
 * hold a letter or a digit. Front matter, citations, written rows, charts, computed tables and descriptions of pictures
 * do not count.
 *
 * Example: `words: {from: 350}` in the syllabus, and a review of 310 words.
 */
export const tooFewWords: Rule = {
  id: 'too-few-words',
  summary: 'a text is at least as long as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      const from = item.requirement?.limits.words?.from ?? 0;
      const {words} = item.body;
      if (words >= from) continue;
      report({
        file: item.file,
        place: textStart(item),
        message: `\`${item.id}\` has \`${plural(words, 'word')}\`; the syllabus asks for at least \`${from}\``,
        hint: `Write at least ${plural(from - words, 'word')} more.`,
        lacks: {count: from - words, inShort: plural(from - words, 'word')},
        atMost,
      });
    }
  },
};
