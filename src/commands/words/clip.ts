import {type CommandWords, textOption} from '../command.ts';

const idPattern = /^[A-Za-z]{1,4}-[0-9]{1,3},?$/;

export const clip: CommandWords = {
  name: 'clip',
  summary: 'keep a scrap of reading for items that are still to be written',
  arguments: [
    {spelling: '<words...>', says: 'ids such as S-07 first, then what is to be kept, between quotes'},
  ],
  options: [
    {spelling: '--source <key>', says: 'the key of the source in the library, such as ashdown2011'},
    {spelling: '--page <pages>', says: 'where in the source, such as 57, pp. 57-58, "fig. 3" or "t. 3:20"'},
    {spelling: '--in <folder>', says: 'the binder folder when it is not this one'},
  ],
  examples: [
    'swatchleaf clip S-07 Q-03 --source ashdown2011 --page 57 "why the slip must be knitwise"',
    'swatchleaf clip R-01 "measure again after the second wash"',
  ],
  writesInto: (typed) => textOption(typed, 'in') ?? '.',
  async run(typed, around) {
    const {runClip} = await import('../clip.ts');
    const firstWord = typed.words.findIndex((word) => !idPattern.test(word));
    const end = firstWord === -1 ? typed.words.length : firstWord;
    return runClip(
      textOption(typed, 'in') ?? '.',
      {
        ids: typed.words.slice(0, end).map((id) => id.replace(',', '').toUpperCase()),
        source: textOption(typed, 'source')?.replace(/^@/, '') ?? null,
        page: textOption(typed, 'page'),
        words: typed.words.slice(end).join(' '),
      },
      around,
    );
  },
};
