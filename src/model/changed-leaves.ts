/** A leaf as it would be printed now. */
export interface LeafNow {
  readonly leaf: string;
  readonly fingerprint: string;
}

/** What makes the paper binder what would be printed now: leaf numbers. */
export interface ChangedLeaves {
  /** Leaves that lie in the paper binder and do not belong there any more, or not as they are. */
  readonly takeOut: readonly string[];
  readonly putIn: readonly string[];
  /** Those of `takeOut` in whose place no other leaf comes. */
  readonly gone: readonly string[];
}

/**
 * Compares the leaves that would be printed now, in their order, with those that lie in the paper binder, by leaf number
 * with the fingerprint they were printed with. A leaf of which none was recorded may be any: it is put in anew.
 */
export function changedLeaves(
  now: readonly LeafNow[],
  inBinder: ReadonlyMap<string, string | null>,
): ChangedLeaves {
  const numbers = new Set(now.map(({leaf}) => leaf));
  const putIn = now.filter(({leaf, fingerprint}) => inBinder.get(leaf) !== fingerprint).map(({leaf}) => leaf);
  const gone = [...inBinder.keys()].filter((leaf) => !numbers.has(leaf));
  return {takeOut: [...putIn.filter((leaf) => inBinder.has(leaf)), ...gone], putIn, gone};
}
