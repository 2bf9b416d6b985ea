import {type CommandWords, textOption} from '../command.ts';
import {browserOption} from './folder-argument.ts';

export const doctor: CommandWords = {
  name: 'doctor',
  summary: 'look whether this computer has all that is needed, and say what to do where it has not',
  arguments: [{spelling: '[folder]', says: 'the binder folder; this one when left out; none is needed'}],
  options: [{spelling: '--json', says: 'for other programs: one JSON document'}, browserOption],
  examples: ['swatchleaf doctor', 'swatchleaf doctor my-binder --json'],
  async run(typed, around) {
    const {runDoctor} = await import('../doctor.ts');
    return runDoctor(typed.words[0] ?? null, around, {
      browser: textOption(typed, 'browser'),
      isJson: typed.options.json === true,
    });
  },
};
