import type {CommandWords} from '../command.ts';
import {folderArgument} from './folder-argument.ts';

export const schema: CommandWords = {
  name: 'schema',
  summary: 'write schemas into `build/schemas`, by which an editor completes and checks what is typed',
  arguments: [folderArgument],
  options: [],
  examples: ['swatchleaf schema', 'swatchleaf schema my-binder'],
  async run(typed, around) {
    const {runSchema} = await import('../schema.ts');
    return runSchema(typed.words[0] ?? '.', around);
  },
};
