import {countFindings, describeCounts} from '../diagnostics/count-findings.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import type {PageCounts, Printable} from '../layout/printable.ts';
import {renderBinder} from '../layout/render-binder.ts';
import {renderCheckReport} from '../layout/render-check-report.ts';
import {renderLetter} from '../layout/render-letter.ts';
import {renderPackingList} from '../layout/render-packing-list.ts';
import {renderTags} from '../layout/render-tags.ts';
import type {Binder} from '../model/binder.ts';
import {type PrintBrowser, withBrowser} from '../print/browser.ts';
import {requireBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {plural} from '../support/plural.ts';
import type {Outcome, Surroundings} from './command.ts';
import {type OpenedBinder, openBinder} from './open-binder.ts';
import {draftOf, prepareLayout} from './prepare-layout.ts';
import {type FinishedDocument, printDocument} from './print-documents.ts';

export interface PrintWishes {
  /** Path of the browser, from the command line; null where none was named. */
  readonly browser: string | null;
}

/**
 * Checks and prints everything into `build`. A file there is replaced only by a whole new one, and only after all of
 * them were printed; while an error stands, every leaf is marked as a draft.
 */
export async function runBuild(folder: string, around: Surroundings, wishes: PrintWishes): Promise<Outcome> {
  const opened = await openBinder(folder, around);
  const {binder, textOf} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  const input = await prepareLayout(opened, binder);
  const {files, findings} = await withBrowser(findBrowserFor(opened, binder, wishes), (browser) =>
    printAll(browser, input, around),
  );
  for (const [path, content] of files) await opened.workspace.write(path, content);
  return {findings, textOf, written: [...files.keys()], isBroken: false};
}

export function findBrowserFor({folder}: OpenedBinder, {settings}: Binder, {browser}: PrintWishes) {
  return requireBrowser(
    {flag: browser, setting: settings.browser ?? null, binderFolder: folder},
    thisMachine(),
  );
}

async function printAll(browser: PrintBrowser, input: LayoutInput, {progress}: Surroundings) {
  const print = async (title: string, render: (counts: PageCounts) => Printable) => {
    const document = await printDocument(browser, input.binder, title, render);
    progress(`${title}: ${plural(document.pageCount, 'page')}`);
    return document;
  };
  let binder = await print('Binder', (counts) => renderBinder(input, counts));
  let complete: LayoutInput = {...input, findings: sortFindings([...input.findings, ...binder.findings])};
  if (input.draft === null && draftOf(complete.findings) !== null) {
    // What only printing can show is an error too: the leaves must say so.
    complete = {...complete, draft: draftOf(complete.findings)};
    binder = await print('Binder', (counts) => renderBinder(complete, counts));
  }
  const files = new Map<string, string | Uint8Array>([
    ['build/binder.pdf', binder.pdf],
    ['build/binder.html', binder.html],
  ]);
  const documents: FinishedDocument[] = [binder];
  const add = async (path: string, title: string, render: (counts: PageCounts) => Printable | null) => {
    if (render(null) === null) return;
    const document = await print(title, render as (counts: PageCounts) => Printable);
    files.set(`build/${path}.pdf`, document.pdf);
    documents.push(document);
  };
  await add('tags', 'Tags', () => renderTags(complete));
  await add('letter', 'Letter', (counts) => renderLetter(complete, counts));
  await add('packing-list', 'Packing list', () => renderPackingList(complete, binder.counts));
  const findings = sortFindings([
    ...complete.findings,
    ...documents.flatMap((document) => document.findings),
  ]);
  const report = await print('Check report', () => renderCheckReport({...complete, findings}));
  files.set('build/check-report.pdf', report.pdf);
  files.set('build/check-report.html', report.html);
  progress(`Check: ${describeCounts(countFindings(findings))}`);
  return {files, findings};
}
