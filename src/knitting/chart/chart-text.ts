/** The signs of a `chart` block that have a fixed meaning. */
export const marks = {
  /** No stitch is here. */
  noStitch: '_',
  /** A stitch waits on the needle. */
  unworked: '~',
  /** The stitch to the left takes this square too. */
  goesOn: '>',
  /** Edge of the repeat. */
  bar: '|',
} as const;
