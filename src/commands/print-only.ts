import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderTags} from '../layout/render-tags.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {plural} from '../support/plural.ts';
import {binderPdf, lastBuilt, onlyPdf, onlyTagsPdf} from './last-built.ts';
import type {OpenedBinder} from './open-binder.ts';
import {filesOfNamed} from './own-errors.ts';
import {draftOf} from './prepare-layout.ts';
import type {Built} from './print-binder.ts';
import {settleLeaves} from './print-changed.ts';
import {printDocument, printSheets} from './print-documents.ts';

/**
 * Prints the sheets called `names`, as they are in the binder, and the tags of those that are about a piece of knitting.
 * Only what stands in their own files makes them drafts; only that is found.
 */
export async function printOnly(
  browser: PrintBrowser,
  opened: OpenedBinder,
  input: LayoutInput,
  names: ReadonlySet<string>,
  progress: (line: string) => void,
): Promise<Built> {
  const own = filesOfNamed(input.binder, names);
  const before = await lastBuilt(opened.workspace, binderPdf);
  let known: LayoutInput = {...input, findings: input.findings.filter(({file}) => own.has(file))};
  let leaves = await printLeaves(browser, known, names, before);
  known = {...known, findings: sortFindings([...known.findings, ...leaves.findings])};
  if (draftOf(leaves.findings) !== null) {
    // What only printing can show is an error too: the leaves must say so.
    leaves = await printLeaves(browser, known, names, before);
  }
  progress(`Leaves: ${plural(leaves.pageCount, 'page')}`);
  const files = new Map([[onlyPdf, leaves.pdf]]);
  const composed = new Map([...input.composed].filter(([id]) => names.has(id)));
  const tags = renderTags({...known, composed, draft: draftOf(known.findings)});
  if (tags === null) return {files, findings: known.findings};
  const document = await printDocument(browser, input.binder, 'Tags', () => tags);
  files.set(onlyTagsPdf, document.pdf);
  progress(`Tags: ${plural(document.pageCount, 'page')}`);
  return {files, findings: sortFindings([...known.findings, ...document.findings])};
}

async function printLeaves(
  browser: PrintBrowser,
  input: LayoutInput,
  names: ReadonlySet<string>,
  before: Uint8Array | null,
) {
  const settled = await settleLeaves(browser, input, before);
  return printSheets(browser, input.binder, 'Leaves', settled, names);
}
