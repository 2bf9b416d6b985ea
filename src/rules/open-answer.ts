import type {Rule} from './define-rule.ts';

/**
 * Every result of an answer is written in.
 *
 * Why: a result left open keeps its item waiting, and the next round cannot be sent.
 *
 * Example: `S-07: {result: open}` in `content/assessments/round-0.yaml`, as it was laid down.
 */
export const openAnswer: Rule = {
  id: 'open-answer',
  summary: 'every result of an answer is written in',
  severity: 'warning',
  check(binder, report) {
    for (const {file, results, places} of binder.assessments) {
      for (const [id, {result}] of Object.entries(results)) {
        if (result !== 'open') continue;
        report({
          file,
          place: places.value(['results', id, 'result']),
          message: `the result of \`${id}\` is still open`,
          hint: 'Write `passed` or `rework`, as their letter says.',
        });
      }
    }
  },
};
