import {UsageError} from '../../support/usage-error.ts';
import {type CommandWords, textOption} from '../command.ts';
import {folderArgument} from './folder-argument.ts';

export const watch: CommandWords = {
  name: 'watch',
  summary: 'on each save, check the binder and show the edited item in the browser',
  arguments: [folderArgument],
  options: [
    {
      spelling: '--port <number>',
      says: 'where the preview is served on this computer; any free port when left out',
    },
  ],
  examples: ['swatchleaf watch', 'swatchleaf watch my-binder --port 8420'],
  async run(typed, around) {
    const port = Number(textOption(typed, 'port') ?? 0);
    if (!Number.isInteger(port) || port < 0 || port > 65535)
      throw new UsageError('a port is a whole number up to 65535');
    const {runWatch} = await import('../watch.ts');
    return runWatch(typed.words[0] ?? '.', around, port);
  },
};
