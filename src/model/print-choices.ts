/** What can be chosen about the printed binder, the usual choice first. */
export const papers = ['A4', 'Letter'] as const;
export const ringCounts = [2, 3, 4] as const;
export const unitSystems = ['metric', 'inch'] as const;
export const citationStyles = ['author-date', 'note', 'numeric'] as const;
/** How the sheets look; each but the first has a style sheet of its name in `layouts/themes`. */
export const themes = ['usual', 'large-print'] as const;
/** Where a tag's gauge and size stand: on the front, behind a fold, or on the back of the paper. */
export const tagReverses = ['none', 'folded', 'printed'] as const;
/** Label sheets by how many labels of which size they have. */
export const labelSheetNames = ['21 of 63.5 x 38.1 mm', '10 of 3.5 x 2 in'] as const;
