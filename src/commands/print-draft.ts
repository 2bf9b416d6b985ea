import {byWeight, notesOfItem} from '../compose/notes-of-item.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderBinder} from '../layout/render-binder.ts';
import {renderHeadNotes} from '../markdown/render-head-notes.ts';
import {itemsById} from '../model/binder.ts';
import type {SafeHtml} from '../model/composed.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {plural} from '../support/plural.ts';
import {draftPdf} from './last-built.ts';
import {filesOfNamed, filesOfSheets} from './own-errors.ts';
import type {Built} from './print-binder.ts';
import {printDocument, printSheets, settleDocument} from './print-documents.ts';

/**
 * Prints the binder for the candidate's own desk, or the sheets called `names` of it: what is found stands beside what
 * caused it. `input` has the notes in the items' texts already. Of some sheets only what is in their files is told.
 */
export async function printDraft(
  browser: PrintBrowser,
  input: LayoutInput,
  names: ReadonlySet<string> | null,
  progress: (line: string) => void,
): Promise<Built> {
  const first = await print(browser, input, input.findings, names);
  const findings = sortFindings([...input.findings, ...first.findings]);
  // What only printing can show stands on its sheet as well.
  const draft = first.findings.length === 0 ? first : await print(browser, input, findings, names);
  progress(`Draft: ${plural(draft.pageCount, 'page')}`);
  const own = names === null ? null : filesOfNamed(input.binder, names);
  return {
    files: new Map([[draftPdf, draft.pdf]]),
    findings: own === null ? findings : findings.filter(({file}) => own.has(file)),
  };
}

async function print(
  browser: PrintBrowser,
  input: LayoutInput,
  findings: readonly Finding[],
  names: ReadonlySet<string> | null,
) {
  // With `draft` set there is a sheet for each item that is still to come.
  const noted: LayoutInput = {
    ...input,
    draft: input.draft ?? {errors: 0},
    notesAtHead: notesAtHead(input, findings),
  };
  const render = (counts: Parameters<typeof renderBinder>[1]) => renderBinder(noted, counts);
  if (names === null) return printDocument(browser, input.binder, 'Draft', render);
  const settled = await settleDocument(browser, render, null, {tagged: false});
  return printSheets(browser, input.binder, 'Draft', settled, names);
}

/** By the label of the sheet. What is in no sheet's file stands on the title page, so that nothing found is left out. */
function notesAtHead({binder, references}: LayoutInput, findings: readonly Finding[]) {
  const items = itemsById(binder);
  const notes = new Map<string, SafeHtml>();
  const placed = new Set<string>();
  const sheets = [...filesOfSheets(binder)].filter(
    ([label]) => label !== 'Title' && (label !== 'References' || references.length > 0),
  );
  for (const [label, files] of sheets) {
    const item = items.get(label);
    const found = item
      ? notesOfItem(item, findings).atHead
      : byWeight(findings.filter(({file}) => files.includes(file)));
    for (const file of files) placed.add(file);
    if (found.length > 0) notes.set(label, renderHeadNotes(found, files));
  }
  const rest = byWeight(findings.filter(({file}) => !placed.has(file)));
  if (rest.length > 0) notes.set('Title', renderHeadNotes(rest, []));
  return notes;
}
