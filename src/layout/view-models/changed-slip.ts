import {requirementsOf} from '../../model/binder.ts';
import type {ChangedLeaves} from '../../model/changed-leaves.ts';
import {leavesInShort} from '../../model/leaf-number.ts';
import {sheetOfLeaf} from '../../model/leaves-in-binder.ts';
import {plural} from '../../support/plural.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import type {Sheet} from '../printable.ts';

/** One sheet of which leaves change hands; null where none does. */
export interface SlipRow {
  readonly label: string;
  readonly title: string;
  /** Leaf numbers in short, such as `1–3 of 3`. */
  readonly takeOut: string | null;
  readonly putIn: string | null;
}

export interface ChangedSlipView {
  readonly candidate: string;
  readonly certificate: string;
  /** `Take out 3 leaves, put in 4`. */
  readonly summary: string;
  /** Whether a leaf is two sides, named by its front. */
  readonly isDuplex: boolean;
  readonly rows: readonly SlipRow[];
}

/** `sheets` are those of the binder as it would be printed now, in its order; sheets that are gone come last. */
export function changedSlipView(
  {binder}: Pick<LayoutInput, 'binder'>,
  sheets: readonly Sheet[],
  {takeOut, putIn}: ChangedLeaves,
): ChangedSlipView {
  const {candidate, certificate, sides} = binder.settings;
  const requirements = requirementsOf(binder);
  const titles = new Map([
    ...requirements.map(({id, title}) => [id, setTypography(title)] as const),
    ...sheets.map(({label, title}) => [label, title] as const),
  ]);
  const leavesOf = (leaves: readonly string[], label: string) => {
    const own = leaves.filter((leaf) => sheetOfLeaf(leaf) === label);
    return own.length === 0 ? null : leavesInShort(own);
  };
  const labels = new Set([...sheets.map(({label}) => label), ...takeOut.map(sheetOfLeaf)]);
  return {
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    summary: changesInWords(takeOut.length, putIn.length),
    isDuplex: sides === 'duplex',
    rows: [...labels]
      .map((label) => ({
        label,
        title: titles.get(label) ?? '',
        takeOut: leavesOf(takeOut, label),
        putIn: leavesOf(putIn, label),
      }))
      .filter((row) => row.takeOut !== null || row.putIn !== null),
  };
}

/** `Take out 3 leaves, put in 4`; what there is none of is not said. */
export function changesInWords(takeOut: number, putIn: number): string {
  if (putIn === 0) return `Take out ${plural(takeOut, 'leaf', 'leaves')}`;
  if (takeOut === 0) return `Put in ${plural(putIn, 'leaf', 'leaves')}`;
  return `Take out ${plural(takeOut, 'leaf', 'leaves')}, put in ${putIn}`;
}
