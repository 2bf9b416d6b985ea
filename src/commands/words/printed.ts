import {type CommandWords, textOption} from '../command.ts';
import {splitSheets} from './split-sheets.ts';

export const printed: CommandWords = {
  name: 'printed',
  summary: 'record the leaves built last as printed and in the binder; with names, only theirs',
  arguments: [
    {
      spelling: '[sheets...]',
      says: 'ids such as S-07, or Title, Contents, References, and the binder folder when it is not this one',
    },
  ],
  options: [
    {spelling: '--section <name>', says: 'one section and its divider: its title or the text on its tab'},
    {spelling: '--drafts', says: 'record leaves that are marked as a draft too'},
  ],
  examples: ['swatchleaf printed', 'swatchleaf printed S-07 Contents', 'swatchleaf printed my-binder'],
  writesInto: ({words}) => splitSheets(words).folder ?? '.',
  async run(typed, around) {
    const {sheets, folder} = splitSheets(typed.words);
    const {runPrinted} = await import('../printed.ts');
    return runPrinted(folder ?? '.', around, {
      sheets,
      section: textOption(typed, 'section'),
      drafts: typed.options.drafts === true,
    });
  },
};
