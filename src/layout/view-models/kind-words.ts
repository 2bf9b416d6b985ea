import type {Kind} from '../../model/kinds.ts';

/** What a sheet calls itself. */
export const kindWords: Readonly<Record<Kind, string>> = {
  swatch: 'Swatch',
  pattern: 'Written pattern',
  project: 'Project',
  question: 'Question',
  report: 'Report',
  review: 'Book review',
  letter: 'Letter',
};
