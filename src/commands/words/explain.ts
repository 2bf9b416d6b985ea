import {type CommandWords, saying} from '../command.ts';

export const explain: CommandWords = {
  name: 'explain',
  summary: 'print the law behind a rule and what to do; without an id, list all rules',
  arguments: [{spelling: '[rule]', says: 'a rule id as printed by `check`'}],
  options: [],
  examples: ['swatchleaf explain too-many-words', 'swatchleaf explain'],
  async run(typed) {
    const {explainRule} = await import('../explain.ts');
    return saying(explainRule(typed.words[0] ?? null));
  },
};
