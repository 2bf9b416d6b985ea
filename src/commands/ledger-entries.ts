import {sheetOfLeaf} from '../model/leaves-in-binder.ts';
import type {LedgerEntry} from '../model/schema/print-ledger.ts';
import type {PrintedLeaves} from '../print/printed-leaves.ts';
import {binderPdf, changedPdf} from './last-built.ts';

/** A PDF that `build` made, with the leaves in it. */
export interface BuiltFile extends PrintedLeaves {
  readonly path: string;
}

export interface RecordWishes {
  /** The sheets that are meant; null for all. */
  readonly sheets: ReadonlySet<string> | null;
  /** Whether leaves that are marked as a draft are recorded as well. */
  readonly drafts: boolean;
  /** Today, year-month-day. */
  readonly on: string;
}

export interface LedgerEntries {
  readonly entries: readonly LedgerEntry[];
  /** Sheets that were passed over, since leaves of them are marked as a draft. */
  readonly drafts: readonly string[];
}

/**
 * What the ledger lacks once `file` was printed: its leaves, unless they lie in the binder as they are, and then the
 * leaves that they leave no place for. `inBinder` is what lies there, by leaf number with its fingerprint.
 */
export function ledgerEntries(
  file: BuiltFile,
  inBinder: ReadonlyMap<string, string | null>,
  {sheets, drafts, on}: RecordWishes,
): LedgerEntries {
  const isMeant = (leaf: string) => sheets === null || sheets.has(sheetOfLeaf(leaf));
  const meant = file.leaves.filter(({leaf}) => isMeant(leaf));
  const passedOver = new Set(
    meant.filter(({isDraft}) => isDraft && !drafts).map(({leaf}) => sheetOfLeaf(leaf)),
  );
  const kept = meant.filter(({leaf}) => !passedOver.has(sheetOfLeaf(leaf)));
  const printed = kept
    .filter(({leaf, fingerprint}) => inBinder.get(leaf) !== fingerprint)
    .map(
      ({leaf, fingerprint, isDraft}): LedgerEntry => ({
        leaf,
        done: 'printed',
        on,
        fingerprint,
        ...(isDraft && {draft: true}),
      }),
    );
  const gone =
    kept.length === 0
      ? []
      : [...inBinder.keys()]
          .filter((leaf) => isMeant(leaf) && !passedOver.has(sheetOfLeaf(leaf)) && hasNoPlace(file, leaf))
          .map((leaf): LedgerEntry => ({leaf, done: 'taken out', on}));
  return {entries: [...printed, ...gone], drafts: [...passedOver]};
}

/** The names of the sheets in a file, each once. */
export function sheetsIn({leaves}: BuiltFile): readonly string[] {
  return [...new Set(leaves.map(({leaf}) => sheetOfLeaf(leaf)))];
}

/** The changed leaves say themselves what goes; a whole sheet leaves no place for others of its own, a whole binder for any other. */
function hasNoPlace(file: BuiltFile, leaf: string): boolean {
  if (file.path === changedPdf) return file.gone.includes(leaf);
  if (file.leaves.some((each) => each.leaf === leaf)) return false;
  return file.path === binderPdf || sheetsIn(file).includes(sheetOfLeaf(leaf));
}
