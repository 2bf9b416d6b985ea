import {UsageError} from '../../support/usage-error.ts';
import {type CommandWords, listOption, textOption} from '../command.ts';
import {browserOption, folderArgument} from './folder-argument.ts';
import {splitSheets} from './split-sheets.ts';

export const build: CommandWords = {
  name: 'build',
  summary: 'check, then print binder, tags, letter, packing list and check report into `build`',
  arguments: [folderArgument],
  options: [
    {
      spelling: '--changed',
      says: 'print also, as one file, the leaves that differ from those recorded by `printed`, and a slip that says what to take out and put in',
    },
    {
      spelling: '--draft',
      says: 'print only `build/draft.pdf`, for your own desk: every finding stands beside what caused it; nothing else in `build` changes',
    },
    {
      spelling: '--only <sheets...>',
      says: 'print nothing but these, with their tags: ids such as S-07, or Title, Contents, References; the folder may follow',
    },
    {
      spelling: '--section <name>',
      says: 'print nothing but one section and its divider, with their tags: its title or the text on its tab',
    },
    browserOption,
  ],
  examples: [
    'swatchleaf build',
    'swatchleaf build my-binder',
    'swatchleaf build --only S-07',
    'swatchleaf build --section Swatches my-binder',
    'swatchleaf build --changed',
    'swatchleaf build --draft --only S-07',
  ],
  writesInto: (typed) => typed.words[0] ?? splitSheets(listOption(typed, 'only')).folder ?? '.',
  async run(typed, around) {
    const named = splitSheets(listOption(typed, 'only'));
    const section = textOption(typed, 'section');
    const changed = typed.options.changed === true;
    const draft = typed.options.draft === true;
    if (typed.options.only !== undefined && named.sheets.length === 0)
      throw new UsageError('name what to print after `--only`, such as `--only S-07`');
    if (changed && (named.sheets.length > 0 || section !== null))
      throw new UsageError(
        '`--changed` looks through the whole binder, so it goes with neither `--only` nor `--section`; leave out the one or the other',
      );
    if (changed && draft)
      throw new UsageError(
        '`--draft` is for your own desk and `--changed` for the binder; leave out the one or the other',
      );
    const [folder = named.folder ?? '.'] = typed.words;
    if (named.folder !== null && typed.words.length > 0)
      throw new UsageError(`\`${named.folder}\` and \`${folder}\` cannot both be the binder folder`);
    const {runBuild} = await import('../build.ts');
    const browser = textOption(typed, 'browser');
    return runBuild(folder, around, {browser, changed, draft, only: named.sheets, section});
  },
};
