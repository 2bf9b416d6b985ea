import type {LayoutInput} from '../layout/layout-input.ts';
import {renderChangedSlip} from '../layout/render-changed-slip.ts';
import {renderLeaves} from '../layout/render-leaves.ts';
import {changesInWords} from '../layout/view-models/changed-slip.ts';
import {changedLeaves} from '../model/changed-leaves.ts';
import {leavesInBinder} from '../model/leaves-in-binder.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {readPrintedLeaves} from '../print/printed-leaves.ts';
import {plural} from '../support/plural.ts';
import {changedPdf, changedSlipPdf} from './last-built.ts';
import {ownErrors} from './own-errors.ts';
import type {Built, BuiltBinder} from './print-binder.ts';
import {
  finishWhole,
  printDocument,
  printPages,
  type SettledDocument,
  settleDocument,
} from './print-documents.ts';

/** What has changed since it was printed, and what to say of it. */
export interface BuiltChanges extends Built {
  readonly text: string;
}

const title = 'Changed leaves';

/** Prints the leaves that differ from those in the ledger, and the slip for changing them. */
export async function printChanged(
  browser: PrintBrowser,
  built: BuiltBinder,
  progress: (line: string) => void,
): Promise<BuiltChanges> {
  const {input} = built;
  const {binder} = input;
  // Without errors the binder's own leaves are these.
  const settled =
    input.draft === null ? built.binder.settled : await settleLeaves(browser, input, built.binder.pdf);
  const {leaves} = readPrintedLeaves(finishWhole(binder, title, settled));
  const inBinder = leavesInBinder(binder.ledger.entries);
  const changes = changedLeaves(leaves, inBinder);
  const files = new Map<string, Uint8Array>();
  if (changes.takeOut.length + changes.putIn.length === 0)
    return {files, findings: [], text: 'No leaf differs from those recorded as printed.\n'};

  const wanted = new Set(changes.putIn);
  const putIn = leaves.filter(({leaf}) => wanted.has(leaf));
  const pages = putIn.flatMap((leaf) => leaf.pages);
  const slip = await printDocument(browser, binder, 'Leaves to change', () =>
    renderChangedSlip(input, settled.document.sheets, changes),
  );
  files.set(changedSlipPdf, slip.pdf);
  const findings = [...slip.findings];
  if (pages.length > 0) {
    const changed = await printPages(browser, binder, title, settled, pages, changes.gone);
    files.set(changedPdf, changed.pdf);
    findings.push(...changed.findings);
    progress(`${title}: ${plural(pages.length, 'page')}`);
  }
  const lines = [
    `${changesInWords(changes.takeOut.length, changes.putIn.length)} (of ${plural(leaves.length, 'leaf', 'leaves')} in all).`,
  ];
  const drafts = putIn.filter(({isDraft}) => isDraft).length;
  if (drafts > 0)
    lines.push(
      `${drafts} of them ${drafts === 1 ? 'is' : 'are'} marked as a draft, since errors stand in the files they are made from.`,
    );
  if (inBinder.size > 0 && putIn.length === leaves.length)
    lines.push(
      'Every leaf differs. A new version of the browser may draw them all a little differently: print one and compare. If it looks the same, keep what you have and run `swatchleaf printed`.',
    );
  return {files, findings, text: lines.map((line) => `${line}\n`).join('')};
}

/** The binder's leaves, each marked for the errors of its own sheet alone. `before` is a print of the binder. */
export function settleLeaves(
  browser: PrintBrowser,
  input: LayoutInput,
  before: Uint8Array | null,
): Promise<SettledDocument> {
  const errors = ownErrors(input.binder, input.findings);
  return settleDocument(browser, (counts) => renderLeaves(input, errors, counts), before, {tagged: false});
}
