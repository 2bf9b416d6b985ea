import {type CommandWords, textOption} from '../command.ts';
import {browserOption, folderArgument} from './folder-argument.ts';

export const send: CommandWords = {
  name: 'send',
  summary: 'print what is posted now and keep exactly that, with checksums, in `content/rounds`',
  arguments: [folderArgument],
  options: [
    browserOption,
    {spelling: '--self-checked', says: 'the pieces were gone through with `build/self-check.pdf`'},
  ],
  examples: ['swatchleaf send', 'swatchleaf send my-binder --self-checked'],
  writesInto: ({words}) => words[0] ?? '.',
  async run(typed, around) {
    const {runSend} = await import('../send.ts');
    return runSend(typed.words[0] ?? '.', around, {
      browser: textOption(typed, 'browser'),
      selfChecked: typed.options['self-checked'] === true,
    });
  },
};
