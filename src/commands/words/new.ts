import type {CommandWords} from '../command.ts';
import {splitIds} from './split-ids.ts';

export const newItems: CommandWords = {
  name: 'new',
  summary: 'make a file for each requirement that has none, with its limits and fields to fill in',
  arguments: [
    {spelling: '[ids...]', says: 'ids such as S-07, and the binder folder when it is not this one'},
  ],
  options: [],
  examples: ['swatchleaf new', 'swatchleaf new S-07 Q-05', 'swatchleaf new S-07 my-binder'],
  writesInto: ({words}) => splitIds(words).folder,
  async run(typed, around) {
    const {runNew} = await import('../new.ts');
    const {ids, folder} = splitIds(typed.words);
    return runNew(folder, ids, around);
  },
};
