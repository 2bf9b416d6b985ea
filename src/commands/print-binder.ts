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
import {areEqual} from '../print/print-settled.ts';
import {plural} from '../support/plural.ts';
import {binderPdf, lastBuilt, type optionalDocuments} from './last-built.ts';
import type {OpenedBinder} from './open-binder.ts';
import {draftOf} from './prepare-layout.ts';
import {type FinishedDocument, printDocument} from './print-documents.ts';
import {rememberedCounts} from './remembered-counts.ts';

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
 * Prints everything there is. What is not the binder is printed beside it, one document after the other, as it is when the
 * binder's pages are as many as in the last build and bring no finding; what turns out otherwise is printed again.
 * `progress` is told of each document.
 */
export async function printBinder(
  browser: PrintBrowser,
  {workspace}: OpenedBinder,
  input: LayoutInput,
  progress: (line: string) => void,
): Promise<BuiltBinder> {
  const print = async (path: string, title: string, render: Render, before: Uint8Array | null) => {
    const document = await printDocument(browser, input.binder, title, render, before);
    progress(`${title}: ${plural(document.pageCount, 'page')}`);
    return {path, ...document};
  };
  /** By their HTML: what would come out the same is not printed again. */
  const printed = new Map<string, PlacedDocument>();
  const printOnce = async (name: string, title: string, draft: Printable, render: Render) => {
    const path = `build/${name}.pdf`;
    if (draft.usesCounts) return print(path, title, render, await lastBuilt(workspace, path));
    const document = printed.get(draft.html) ?? (await print(path, title, () => draft, null));
    printed.set(draft.html, document);
    return document;
  };
  const printLeaves = (from: LayoutInput, before: Uint8Array | null) =>
    print(binderPdf, 'Binder', (counts) => renderBinder(from, counts), before);
  const printBeside = async (from: LayoutInput, binderCounts: PageCounts) => {
    const documents: PlacedDocument[] = [];
    for (const {name, title, render} of besideLeaves) {
      const make = (counts: PageCounts) => render(from, counts, binderCounts);
      const draft = make(null);
      if (draft !== null)
        documents.push(await printOnce(name, title, draft, (counts) => make(counts) ?? draft));
    }
    const findings = sortFindings([...from.findings, ...documents.flatMap((each) => each.findings)]);
    const report = renderCheckReport({...from, findings});
    return {
      documents,
      findings,
      report: await printOnce('check-report', 'Check report', report, () => report),
    };
  };

  const last = await lastBuilt(workspace, binderPdf);
  const lastCounts = last && rememberedCounts(last, renderBinder(input, null).sheets);
  let [binder, beside] = await Promise.all([printLeaves(input, last), printBeside(input, lastCounts)]);
  let complete = input;
  if (binder.findings.length > 0) {
    complete = {...input, findings: sortFindings([...input.findings, ...binder.findings])};
    // What only printing can show is an error too: the leaves must say so.
    if (input.draft === null) complete = {...complete, draft: draftOf(complete.findings)};
    if (complete.draft !== input.draft) binder = await printLeaves(complete, binder.pdf);
    complete = {...complete, findings: sortFindings([...complete.findings, ...binder.findings])};
  }
  const {counts} = binder.settled;
  if (complete !== input || lastCounts === null || !areEqual(counts, lastCounts))
    beside = await printBeside(complete, counts);
  const {documents, findings, report} = beside;
  progress(`Check: ${describeCounts(countFindings(findings))}`);
  const all = [binder, ...documents, report];
  const files = new Map<string, string | Uint8Array>(all.map(({path, pdf}) => [path, pdf]));
  files.set('build/binder.html', binder.html).set('build/check-report.html', report.html);
  return {files, findings, binder, input: complete};
}

type Render = (counts: PageCounts) => Printable;

interface PlacedDocument extends FinishedDocument {
  readonly path: string;
}

interface BesideLeaves {
  readonly name: (typeof optionalDocuments)[number] | 'packing-list';
  readonly title: string;
  /** Null where this binder has nothing for it. */
  render(input: LayoutInput, counts: PageCounts, binderCounts: PageCounts): Printable | null;
}

const besideLeaves: readonly BesideLeaves[] = [
  {name: 'tags', title: 'Tags', render: renderTags},
  {name: 'inserts', title: 'Inserts', render: renderInserts},
  {name: 'letter', title: 'Letter', render: renderLetter},
  {name: 'self-check', title: 'Self-check', render: renderSelfCheck},
  {
    name: 'packing-list',
    title: 'Packing list',
    render: (input, _, binderCounts) => renderPackingList(input, binderCounts),
  },
];
