import type {CommandWords} from '../command.ts';
import {folderArgument} from './folder-argument.ts';

export const importLibrary: CommandWords = {
  name: 'import',
  summary: 'add the references of another program to the library: BibTeX, BibLaTeX, RIS or CSL-JSON',
  arguments: [
    {spelling: '<file>', says: 'what the other program saved: a .bib, .ris or .json file'},
    folderArgument,
  ],
  options: [{spelling: '--dry-run', says: 'say what would be added, and change nothing'}],
  examples: [
    'swatchleaf import shelf.bib',
    'swatchleaf import shelf.ris my-binder',
    'swatchleaf import shelf.json --dry-run',
  ],
  writesInto: ({words}) => words[1] ?? '.',
  async run(typed, around) {
    const [file = '', folder = '.'] = typed.words;
    const {runImport} = await import('../import.ts');
    return runImport(file, folder, {around, isDryRun: typed.options['dry-run'] === true});
  },
};
