import {type CommandWords, textOption} from '../command.ts';
import {browserOption} from './folder-argument.ts';
import {splitIds} from './split-ids.ts';

export const reprint: CommandWords = {
  name: 'reprint',
  summary:
    'print items as a resubmission: cover page, item and tag; without ids, all that wait, with letter, packing list and label',
  arguments: [
    {spelling: '[ids...]', says: 'ids such as S-07, and the binder folder when it is not this one'},
  ],
  options: [browserOption],
  examples: ['swatchleaf reprint S-07', 'swatchleaf reprint', 'swatchleaf reprint S-07 Q-05 my-binder'],
  writesInto: ({words}) => splitIds(words).folder,
  async run(typed, around) {
    const {runReprint} = await import('../reprint.ts');
    const {ids, folder} = splitIds(typed.words);
    return runReprint(folder, ids, around, {browser: textOption(typed, 'browser')});
  },
};
