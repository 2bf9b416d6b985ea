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
import {binderPdf, lastBuilt, type optionalDocuments} from './last-built.ts';
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

/**
 * Prints everything there is. What needs nothing of the binder's pages is printed beside them, one document after the
 * other: a page of the browser is a process of its own. `progress` is told of each document.
 */
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
  ): Promise<PlacedDocument> => {
    const last = before ?? (await lastBuilt(workspace, path));
    const document = await printDocument(browser, input.binder, title, render, last);
    progress(`${title}: ${plural(document.pageCount, 'page')}`);
    return {path, ...document};
  };
  const printLeaves = (from: LayoutInput, before?: Uint8Array) =>
    print(binderPdf, 'Binder', (counts) => renderBinder(from, counts), before);
  const printBeside = async (from: LayoutInput) => {
    const documents: PlacedDocument[] = [];
    for (const {name, title, render} of besideLeaves) {
      const make = (counts: PageCounts) => render(from, counts);
      if (isPrintable(make)) documents.push(await print(`build/${name}.pdf`, title, make));
    }
    return documents;
  };
  let [binder, beside] = await Promise.all([printLeaves(input), printBeside(input)]);
  let complete = input;
  if (binder.findings.length > 0) {
    complete = {...input, findings: sortFindings([...input.findings, ...binder.findings])};
    // What only printing can show is an error too: the leaves must say so.
    if (input.draft === null) complete = {...complete, draft: draftOf(complete.findings)};
    if (complete.draft !== input.draft) binder = await printLeaves(complete, binder.pdf);
    beside = await printBeside(complete);
  }
  const packingList = await print('build/packing-list.pdf', 'Packing list', () =>
    renderPackingList(complete, binder.settled.counts),
  );
  const documents = [binder, ...beside, packingList];
  const findings = sortFindings([...complete.findings, ...documents.flatMap((each) => each.findings)]);
  const report = await print('build/check-report.pdf', 'Check report', () =>
    renderCheckReport({...complete, findings}),
  );
  const printed = [...documents, report];
  progress(`Check: ${describeCounts(countFindings(findings))}`);
  const files = new Map<string, string | Uint8Array>(printed.map(({path, pdf}) => [path, pdf]));
  files.set('build/binder.html', binder.html).set('build/check-report.html', report.html);
  return {files, findings, binder, input: complete};
}

interface PlacedDocument extends FinishedDocument {
  readonly path: string;
}

interface BesideLeaves {
  readonly name: (typeof optionalDocuments)[number];
  readonly title: string;
  /** Null where this binder has nothing for it. */
  render(input: LayoutInput, counts: PageCounts): Printable | null;
}

const besideLeaves: readonly BesideLeaves[] = [
  {name: 'tags', title: 'Tags', render: renderTags},
  {name: 'inserts', title: 'Inserts', render: renderInserts},
  {name: 'letter', title: 'Letter', render: renderLetter},
  {name: 'self-check', title: 'Self-check', render: renderSelfCheck},
];

function isPrintable(
  make: (counts: PageCounts) => Printable | null,
): make is (counts: PageCounts) => Printable {
  return make(null) !== null;
}
