const ones = [
  ['one', 'first'],
  ['two', 'second'],
  ['three', 'third'],
  ['four', 'fourth'],
  ['five', 'fifth'],
  ['six', 'sixth'],
  ['seven', 'seventh'],
  ['eight', 'eighth'],
  ['nine', 'ninth'],
  ['ten', 'tenth'],
  ['eleven', 'eleventh'],
  ['twelve', 'twelfth'],
  ['thirteen', 'thirteenth'],
  ['fourteen', 'fourteenth'],
  ['fifteen', 'fifteenth'],
  ['sixteen', 'sixteenth'],
  ['seventeen', 'seventeenth'],
  ['eighteen', 'eighteenth'],
  ['nineteen', 'nineteenth'],
] as const;
const tens = [
  ['twenty', 'twentieth'],
  ['thirty', 'thirtieth'],
  ['forty', 'fortieth'],
  ['fifty', 'fiftieth'],
  ['sixty', 'sixtieth'],
  ['seventy', 'seventieth'],
  ['eighty', 'eightieth'],
  ['ninety', 'ninetieth'],
] as const;

/** `seven` → 7, `twenty` → 20, `hundred` → 100. */
export const cardinals: ReadonlyMap<string, number> = new Map([
  ...ones.map(([word], index): [string, number] => [word, index + 1]),
  ...tens.map(([word], index): [string, number] => [word, (index + 2) * 10]),
  ['hundred', 100],
]);

/** `seventh` → 7, `twentieth` → 20. */
export const ordinals: ReadonlyMap<string, number> = new Map([
  ...ones.map(([, word], index): [string, number] => [word, index + 1]),
  ...tens.map(([, word], index): [string, number] => [word, (index + 2) * 10]),
  ['hundredth', 100],
]);

/** `once`, `twice`, `thrice`. */
export const multiplicatives: ReadonlyMap<string, number> = new Map([
  ['once', 1],
  ['twice', 2],
  ['thrice', 3],
]);
