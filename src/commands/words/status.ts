import {UsageError} from '../../support/usage-error.ts';
import {type CommandWords, textOption} from '../command.ts';
import {splitIds} from './split-ids.ts';

export const status: CommandWords = {
  name: 'status',
  summary:
    'say what is done, in work, missing, sent, passed and to rework; with an id, everything about one item',
  arguments: [
    {spelling: '[ids...]', says: 'ids such as S-07, and the binder folder when it is not this one'},
  ],
  options: [
    {spelling: '--for <id>', says: 'the questions that belong to this piece, with their state'},
    {spelling: '--json', says: 'one JSON document for other programs'},
    {spelling: '--page', says: 'write the same as a page to print, `build/status.html`'},
  ],
  examples: ['swatchleaf status', 'swatchleaf status S-07', 'swatchleaf status --for S-07 my-binder'],
  async run(typed, around) {
    const {ids, folder} = splitIds(typed.words);
    const tiedTo = textOption(typed, 'for')?.toUpperCase() ?? null;
    const [isJson, isPage] = [typed.options.json === true, typed.options.page === true];
    if (tiedTo !== null && ids.length > 0)
      throw new UsageError('name either an item or, with `--for`, a piece whose questions are asked for');
    if (isPage && (isJson || tiedTo !== null || ids.length > 0))
      throw new UsageError('`--page` writes the whole binder; leave the ids and other options out');
    if (isPage) {
      const {runStatusPage} = await import('../status-page.ts');
      return runStatusPage(folder, around);
    }
    const {runStatus} = await import('../status.ts');
    return runStatus(folder, around, {ids, tiedTo, isJson});
  },
};
