import {type CommandWords, textOption} from '../command.ts';
import {browserOption, folderArgument} from './folder-argument.ts';

export const build: CommandWords = {
  name: 'build',
  summary: 'check, then print binder, tags, letter, packing list and check report into `build`',
  arguments: [folderArgument],
  options: [browserOption],
  examples: ['swatchleaf build', 'swatchleaf build my-binder'],
  async run(typed, around) {
    const {runBuild} = await import('../build.ts');
    return runBuild(typed.words[0] ?? '.', around, {browser: textOption(typed, 'browser')});
  },
};
