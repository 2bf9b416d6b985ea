import type {Wording} from '../command.ts';

export const folderArgument: Wording = {
  spelling: '[folder]',
  says: 'the binder folder, with `content` in it; this one when left out',
};

export const browserOption: Wording = {spelling: '--browser <path>', says: 'the browser that prints'};
