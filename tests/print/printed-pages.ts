import type {PageCounts, Printable} from '../../src/layout/printable.ts';
import type {PrintBrowser} from '../../src/print/browser.ts';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import type {PrintTrouble} from '../../src/print/print-job.ts';
import {type DrawnPage, drawnOnPages} from './drawn-on-page.ts';

/** A document as it was printed: what pdf.js finds drawn on its pages, and what the program itself has to say of it. */
export interface PrintedPages {
  readonly pages: readonly DrawnPage[];
  readonly troubles: readonly PrintTrouble[];
  readonly pdf: Uint8Array;
  /** The page, counted from 0, on which each sheet begins. */
  readonly starts: ReadonlyMap<string, number>;
}

export async function printedPages(
  browser: PrintBrowser,
  {html, sheets}: Printable,
  {tagged}: {readonly tagged: boolean},
): Promise<PrintedPages> {
  const anchors = sheets.map(({anchor}) => anchor);
  const {pdf, troubles, starts} = await printPdf(browser, {html, anchors}, {tagged});
  return {pages: await drawnOnPages(pdf), troubles, pdf, starts};
}

/** Page counts with which every sheet takes one page: blank backs then come without printing twice. */
export function onePageEach(render: (counts: PageCounts) => Printable): PageCounts {
  return new Map(render(null).sheets.map(({anchor}) => [anchor, 1]));
}
