import {type CommandWords, findingsFormats, textOption} from '../command.ts';
import {folderArgument} from './folder-argument.ts';

export const check: CommandWords = {
  name: 'check',
  summary: 'check every item against the syllabus and print what was found',
  arguments: [folderArgument],
  options: [
    {
      spelling: '--format <format>',
      says: 'how findings are printed',
      choices: findingsFormats,
      default: 'text',
    },
  ],
  examples: ['swatchleaf check', 'swatchleaf check my-binder --format json'],
  async run(typed, around) {
    const {runCheck} = await import('../check.ts');
    const wanted = textOption(typed, 'format');
    const format = findingsFormats.find((each) => each === wanted) ?? 'text';
    return runCheck(typed.words[0] ?? '.', around, format);
  },
};
