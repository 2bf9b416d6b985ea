/** What can be chosen about the printed binder, the usual choice first. */
export const papers = ['A4', 'Letter'] as const;
export const ringCounts = [2, 3, 4] as const;
export const unitSystems = ['metric', 'inch'] as const;
export const citationStyles = ['author-date', 'note', 'numeric'] as const;
