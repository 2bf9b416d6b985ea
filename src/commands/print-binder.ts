import {countFindings, describeCounts} from '../diagnostics/count-findings.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import type {PageCounts, Printable} from '../layout/printable.ts';
import {renderBinder} from '../layout/render-binder.ts';
import {renderCheckReport} from '../layout/render-check-report.ts';
import {renderInserts} from '../layout/render-inserts.ts';
import {renderLetter} from '../layout/render-letter.ts';
import {renderPackingList} from '../layout/render-packing-list.ts';
import {renderSelfCheck} from '../layout/render-self-check.ts';
import {renderTags} from '../layout/render-tags.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {plural} from '../support/plural.ts';
import {binderPdf, lastBuilt} from './last-built.ts';
import type {OpenedBinder} from './open-binder.ts';
import {draftOf} from './prepare-layout.ts';
import {type FinishedDocument, printDocument} from './print-documents.ts';

/** What a build makes: files by their path in the binder folder, and what was found, printing included. */
export interface Built {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly findings: readonly Finding[];
}

export interface BuiltBinder extends Built {
  readonly binder: FinishedDocument;
  /** What it was printed from, with the errors that only printing showed. */
  readonly input: LayoutInput;
}

/** Prints everything there is. `progress` is told of each document. */
export async function printBinder(
  browser: PrintBrowser,
  {workspace}: OpenedBinder,
  input: LayoutInput,
  progress: (line: string) => void,
): Promise<BuiltBinder> {
  const print = async (
    path: string,
    title: string,
    render: (counts: PageCounts) => Printable,
    before?: Uint8Array,
  ) => {
    const last = before ?? (await lastBuilt(workspace, path));
    const document = await printDocument(browser, input.binder, title, render, last);
    progress(`${title}: ${plural(document.pageCount, 'page')}`);
    return document;
  };
  let binder = await print(binderPdf, 'Binder', (counts) => renderBinder(input, counts));
  let complete: LayoutInput = {...input, findings: sortFindings([...input.findings, ...binder.findings])};
  if (input.draft === null && draftOf(complete.findings) !== null) {
    // What only printing can show is an error too: the leaves must say so.
    complete = {...complete, draft: draftOf(complete.findings)};
    binder = await print(binderPdf, 'Binder', (counts) => renderBinder(complete, counts), binder.pdf);
  }
  const files = new Map<string, string | Uint8Array>([
    [binderPdf, binder.pdf],
    ['build/binder.html', binder.html],
  ]);
  const documents: FinishedDocument[] = [binder];
  const add = async (name: string, title: string, render: (counts: PageCounts) => Printable | null) => {
    if (render(null) === null) return;
    const path = `build/${name}.pdf`;
    const document = await print(path, title, render as (counts: PageCounts) => Printable);
    files.set(path, document.pdf);
    documents.push(document);
  };
  await add('tags', 'Tags', () => renderTags(complete));
  await add('inserts', 'Inserts', () => renderInserts(complete));
  await add('letter', 'Letter', (counts) => renderLetter(complete, counts));
  await add('packing-list', 'Packing list', () => renderPackingList(complete, binder.settled.counts));
  await add('self-check', 'Self-check', () => renderSelfCheck(complete));
  const findings = sortFindings([
    ...complete.findings,
    ...documents.flatMap((document) => document.findings),
  ]);
  const report = await print('build/check-report.pdf', 'Check report', () =>
    renderCheckReport({...complete, findings}),
  );
  files.set('build/check-report.pdf', report.pdf);
  files.set('build/check-report.html', report.html);
  progress(`Check: ${describeCounts(countFindings(findings))}`);
  return {files, findings, binder, input: complete};
}
