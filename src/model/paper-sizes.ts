/** Width and height of the papers, in millimetres. A4: ISO 216. Letter: ANSI/ASME Y14.1, 8½ × 11 in. */
export const paperSizes = {
  A4: {width: 210, height: 297},
  Letter: {width: 215.9, height: 279.4},
} as const;

/**
 * Room kept free around what is cut out of plain paper, in millimetres: for cut marks, which must clear the rim that a
 * home printer may not be able to print on (common practice, no source).
 */
export const cuttingRim = 10;
