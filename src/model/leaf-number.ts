/** A leaf number taken apart: `S-07 · 2 of 3`. */
export interface LeafNumber {
  /** The item's id, or a word such as `Contents`. */
  readonly sheet: string;
  readonly page: number;
  readonly of: number;
}

/** Null for a text that is no leaf number, such as a slip of the pen in the ledger. */
export function readLeafNumber(leaf: string): LeafNumber | null {
  const [, sheet, page, of] = /^(.+) · (\d{1,4}) of (\d{1,4})$/.exec(leaf) ?? [];
  return sheet === undefined ? null : {sheet, page: Number(page), of: Number(of)};
}

/**
 * Leaves of one sheet in short, without its name: `1–3 of 3`, `2, 4 of 5`, `1 of 3, 1–2 of 2`. What is no leaf number
 * stands as it is.
 */
export function leavesInShort(leaves: readonly string[]): string {
  const pages = new Map<number, number[]>();
  const others: string[] = [];
  for (const leaf of leaves) {
    const number = readLeafNumber(leaf);
    if (number === null) others.push(leaf);
    else pages.set(number.of, [...(pages.get(number.of) ?? []), number.page]);
  }
  return [...[...pages].map(([of, list]) => `${runsInShort(list)} of ${of}`), ...others].join(', ');
}

/** `[1, 2, 3, 5]` → `1–3, 5`. */
function runsInShort(pages: readonly number[]): string {
  const runs: {first: number; last: number}[] = [];
  for (const page of [...new Set(pages)].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.last === page - 1) run.last = page;
    else runs.push({first: page, last: page});
  }
  return runs.map(({first, last}) => (first === last ? `${first}` : `${first}–${last}`)).join(', ');
}
