import type {Rule} from './define-rule.ts';

/**
 * What is quoted is cited.
 *
 * Why: the words of another without their source are taken for the candidate's own, which no examiner forgives. Short
 * words between marks, as for the name of a stitch, are no quotations: `words` says from how many on they are (common
 * practice, no source). A citation in the same paragraph, or for a block quote in the one before it, is enough. In a
 * letter nothing needs to be cited.
 *
 * Example: She writes that “an even edge is made by the hand that does not hurry”, without `[@ashdown2011, p. 57]`.
 */
export const quotationWithoutCitation: Rule<'words'> = {
  id: 'quotation-without-citation',
  summary: 'what is quoted is cited',
  severity: 'warning',
  options: {words: {default: 6, meaning: 'words between quotation marks from which on they are a quotation'}},
  check(binder, report, {words: least}) {
    for (const item of binder.items) {
      if (item.kind === 'letter') continue;
      for (const {words, isCited, place} of item.body.quotations) {
        if (isCited || words < least) continue;
        report({
          file: item.file,
          place,
          message: `\`${words} words\` are quoted without a citation`,
          hint: 'Add the source and page behind the quotation, such as `[@key, p. 57]`; or say it in your own words.',
        });
      }
    }
  },
};
