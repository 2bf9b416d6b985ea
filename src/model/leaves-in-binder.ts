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

/** What stands before the `·` of a leaf number: an item's id, or a word such as `Contents`. */
export function sheetOfLeaf(leaf: string): string {
  return leaf.split(' · ')[0] ?? leaf;
}
