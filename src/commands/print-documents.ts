import type {Finding} from '../diagnostics/finding.ts';
import {pageCounts} from '../layout/page-counts.ts';
import {pageLabels} from '../layout/page-labels.ts';
import {pageSpans} from '../layout/page-spans.ts';
import type {PageCounts, Printable} from '../layout/printable.ts';
import {unlinkAbsent} from '../layout/unlink-absent.ts';
import type {Binder} from '../model/binder.ts';
import {sheetOfLeaf} from '../model/leaves-in-binder.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {finishPdf} from '../print/finish-pdf.ts';
import {printPdf} from '../print/html-to-pdf.ts';
import {readDestinations} from '../print/pdf-facts.ts';
import {openPdf} from '../print/pdf-file.ts';
import type {PrintedDocument} from '../print/print-job.ts';
import {settle} from '../print/print-settled.ts';
import {rememberedCounts} from './remembered-counts.ts';
import {troubleFindings} from './trouble-findings.ts';

/** A document whose leaf numbers are true. */
export interface SettledDocument {
  readonly document: Printable;
  readonly printed: PrintedDocument;
  readonly counts: NonNullable<PageCounts>;
  /** The leaf number of every page. */
  readonly labels: readonly string[];
}

export interface FinishedDocument {
  readonly html: string;
  readonly pdf: Uint8Array;
  readonly pageCount: number;
  readonly findings: readonly Finding[];
  /** The whole document, of which `pdf` may hold some pages only. */
  readonly settled: SettledDocument;
}

type Render = (counts: PageCounts) => Printable;

/**
 * Prints one document until the leaf numbers on its pages are true, then writes its details into the file. `title`
 * is what a viewer shows; `render` makes the document for given page counts. `before` is the document as it was last
 * printed: its page counts are tried first, which saves a print and changes nothing.
 */
export async function printDocument(
  browser: PrintBrowser,
  binder: Binder,
  title: string,
  render: Render,
  before: Uint8Array | null = null,
): Promise<FinishedDocument> {
  const settled = await settleDocument(browser, render, before, {tagged: true});
  const {document, printed} = settled;
  return {
    html: document.html,
    pdf: finishWhole(binder, title, settled),
    pageCount: printed.pageCount,
    settled,
    findings: troubleFindings(binder, document.sheets, printed.troubles),
  };
}

/** Prints a document until its leaf numbers are true; untagged where only they and the drawing of its pages are wanted. */
export async function settleDocument(
  browser: PrintBrowser,
  render: Render,
  before: Uint8Array | null,
  {tagged}: {readonly tagged: boolean},
): Promise<SettledDocument> {
  const draft = render(null);
  const {document, printed, counts} = await settle(
    {
      render: (given) => (given === null ? draft : render(given)),
      usesCounts: ({usesCounts}) => usesCounts,
      print: ({html, sheets}, options) =>
        printPdf(
          browser,
          {html, anchors: sheets.map(({anchor}) => anchor)},
          {tagged: tagged && options.tagged},
        ),
      count: ({sheets}, {starts, pageCount}) => pageCounts(sheets, starts, pageCount),
    },
    before && draft.usesCounts ? rememberedCounts(before, draft.sheets) : null,
  );
  const labels = pageLabels(document.sheets, printed.starts, printed.pageCount);
  return {document, printed, counts, labels};
}

/**
 * Prints some pages of a settled document, as they are in it. Links to the others lose their target. `gone` are leaf
 * numbers that are no longer in the binder once these leaves are.
 */
export async function printPages(
  browser: PrintBrowser,
  binder: Binder,
  title: string,
  settled: SettledDocument,
  pages: readonly number[],
  gone: readonly string[],
): Promise<FinishedDocument> {
  const {document, printed} = settled;
  const destinations = readDestinations(openPdf(printed.pdf));
  const present = [...destinations].filter(([, page]) => pages.includes(page)).map(([id]) => id);
  const html = unlinkAbsent(document.html, new Set(present));
  const spans = pageSpans(document.sheets, printed.starts, printed.pageCount);
  const shown = new Set(
    spans
      .filter(({start, end}) => pages.some((page) => page >= start && page < end))
      .map(({sheet}) => sheet.anchor),
  );
  const anchors = document.sheets.map(({anchor}) => anchor);
  const {pdf, troubles} = await printPdf(browser, {html, anchors}, {tagged: true, pages});
  const told = [...printed.troubles, ...troubles].filter(({anchor}) => anchor === null || shown.has(anchor));
  return {
    html,
    pdf: finish(binder, title, settled, pages, pdf, gone),
    pageCount: pages.length,
    settled,
    findings: troubleFindings(binder, document.sheets, told),
  };
}

/** The same for the sheets called `names`, whole. */
export function printSheets(
  browser: PrintBrowser,
  binder: Binder,
  title: string,
  settled: SettledDocument,
  names: ReadonlySet<string>,
): Promise<FinishedDocument> {
  const pages = settled.labels.flatMap((label, page) => (names.has(sheetOfLeaf(label)) ? [page] : []));
  return printPages(browser, binder, title, settled, pages, []);
}

/** The settled document as a finished file. */
export function finishWhole(binder: Binder, title: string, settled: SettledDocument): Uint8Array {
  const pages = settled.labels.map((_, page) => page);
  return finish(binder, title, settled, pages, settled.printed.pdf, []);
}

/** `pdf` holds `pages` of the settled document. */
function finish(
  binder: Binder,
  title: string,
  {document, printed, labels}: SettledDocument,
  pages: readonly number[],
  pdf: Uint8Array,
  gone: readonly string[],
): Uint8Array {
  const {candidate, certificate, language, date, sides} = binder.settings;
  const drafts = pageSpans(document.sheets, printed.starts, printed.pageCount).flatMap(
    ({sheet, start, end}) =>
      sheet.isDraft ? Array.from({length: end - start}, (_, index) => start + index) : [],
  );
  return finishPdf(pdf, {
    title: `${title}: ${candidate.name}`,
    author: candidate.name,
    subject: [certificate.name, certificate.part].filter((part) => part !== undefined).join(', '),
    language,
    labels: pages.map((page) => labels[page] ?? ''),
    date,
    sides: document.sides ?? sides,
    notes: {drafts: pages.flatMap((page, index) => (drafts.includes(page) ? [index] : [])), gone},
  });
}
