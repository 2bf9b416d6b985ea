/** What can be sent in. The order is that of the documentation; a syllabus decides the order in the binder. */
export const kinds = ['swatch', 'pattern', 'project', 'question', 'report', 'review', 'letter'] as const;
export type Kind = (typeof kinds)[number];

export function isKind(word: unknown): word is Kind {
  return kinds.some((kind) => kind === word);
}

/** The usual content folder of each kind; any folder is read. */
export const folderOfKind: Readonly<Record<Kind, string>> = {
  swatch: 'swatches',
  pattern: 'patterns',
  project: 'projects',
  question: 'questions',
  report: 'reports',
  review: 'reviews',
  letter: 'letters',
};

/** Kinds of which a knitted piece travels in the box, each with a tag. */
export const kindsWithKnitting: readonly Kind[] = ['swatch', 'project'];
