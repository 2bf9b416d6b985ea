import type {Finding} from '../diagnostics/finding.ts';
import {pageCounts} from '../layout/page-counts.ts';
import {pageLabels} from '../layout/page-labels.ts';
import type {PageCounts, Printable} from '../layout/printable.ts';
import type {Binder} from '../model/binder.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {finishPdf} from '../print/finish-pdf.ts';
import {printPdf} from '../print/html-to-pdf.ts';
import type {PrintedDocument} from '../print/print-job.ts';
import {settle} from '../print/print-settled.ts';
import {troubleFindings} from './trouble-findings.ts';

export interface FinishedDocument {
  readonly html: string;
  readonly pdf: Uint8Array;
  readonly counts: NonNullable<PageCounts>;
  readonly pageCount: number;
  readonly findings: readonly Finding[];
}

/**
 * Prints one document until the leaf numbers on its pages are true, then writes its details into the file. `title`
 * is what a viewer shows; `render` makes the document for given page counts.
 */
export async function printDocument(
  browser: PrintBrowser,
  binder: Binder,
  title: string,
  render: (counts: PageCounts) => Printable,
): Promise<FinishedDocument> {
  const print = ({html, sheets}: Printable, options: {readonly tagged: boolean}) =>
    printPdf(browser, {html, anchors: sheets.map(({anchor}) => anchor)}, options);
  const count = ({sheets}: Printable, {starts, pageCount}: PrintedDocument) =>
    pageCounts(sheets, starts, pageCount);
  const {document, printed, counts} = await settle({render, print, count}, null);
  const {candidate, certificate, language, date} = binder.settings;
  const pdf = finishPdf(printed.pdf, {
    title: `${title}: ${candidate.name}`,
    author: candidate.name,
    subject: [certificate.name, certificate.part].filter((part) => part !== undefined).join(', '),
    language,
    labels: pageLabels(document.sheets, printed.starts, printed.pageCount),
    date,
  });
  return {
    html: document.html,
    pdf,
    counts,
    pageCount: printed.pageCount,
    findings: troubleFindings(binder, document.sheets, printed.troubles),
  };
}
