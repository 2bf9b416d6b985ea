import type {CommandWords} from '../command.ts';
import {folderArgument} from './folder-argument.ts';

export const answer: CommandWords = {
  name: 'answer',
  summary: "lay down the file into which the assessors' answer to the last posting is typed",
  arguments: [folderArgument],
  options: [],
  examples: ['swatchleaf answer', 'swatchleaf answer my-binder'],
  writesInto: ({words}) => words[0] ?? '.',
  async run(typed, around) {
    const {runAnswer} = await import('../answer.ts');
    return runAnswer(typed.words[0] ?? '.', around);
  },
};
