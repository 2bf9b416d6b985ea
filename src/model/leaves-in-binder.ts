import type {LedgerEntry} from './schema/print-ledger.ts';

/** The leaves that lie in the paper binder now, by leaf number, with the fingerprint they were printed with; null where none was recorded. */
export function leavesInBinder(entries: readonly LedgerEntry[]): ReadonlyMap<string, string | null> {
  const leaves = new Map<string, string | null>();
  for (const {leaf, done, fingerprint} of entries) {
    if (done === 'printed') leaves.set(leaf, fingerprint ?? null);
    else leaves.delete(leaf);
  }
  return leaves;
}

/** The sheets, by what stands before the `·` of their leaf numbers, of which leaves lie in the paper binder that are no drafts. */
export function sheetsInBinder(entries: readonly LedgerEntry[]): ReadonlySet<string> {
  const drafts = new Map(entries.map(({leaf, draft}) => [leaf, draft === true]));
  const leaves = [...leavesInBinder(entries).keys()].filter((leaf) => drafts.get(leaf) !== true);
  return new Set(leaves.map(sheetOfLeaf));
}

/** What stands before the `·` of a leaf number: an item's id, or a word such as `Contents`. */
export function sheetOfLeaf(leaf: string): string {
  return leaf.split(' · ')[0] ?? leaf;
}
