/** The formula of changes on blocking, as printed below tables. */
export const changeFormula =
  'Change, from the first column before blocking to the last after it: 100 × (after − before) ÷ before; above zero what stands in the line has grown, below zero it has shrunk.';

/** Where that formula is published. */
export const changeSource = 'the formula of change is that of ISO 3759 / ISO 5077';

/** How lengths are rounded; see `formatLength`. */
export const lengthRounding = 'centimetres to 1\u00a0mm, inches to the nearest ⅛';

/** The one rounding of a table, said in the same words everywhere. */
export function roundingWords(...roundings: readonly string[]): string {
  return `Rounded once, where shown, halves away from zero: ${roundings.join('; ')}.`;
}
