import {invariant} from '../support/invariant.ts';
import {OperationalError} from '../support/operational-error.ts';
import type {PrintBrowser, PrintPage} from './browser.ts';
import {findForeignFonts} from './find-foreign-fonts.ts';
import {breakWideTables} from './in-page/break-wide-tables.ts';
import {findMissing} from './in-page/find-missing.ts';
import {findOverflow, type Overflow} from './in-page/find-overflow.ts';
import {fitMarginText} from './in-page/fit-margin-text.ts';
import {linkAnchors} from './in-page/link-anchors.ts';
import {type DeclaredFont, loadFonts} from './in-page/load-fonts.ts';
import {shrinkToFit} from './in-page/shrink-to-fit.ts';
import {tightenToFit} from './in-page/tighten-to-fit.ts';
import {readDestinations} from './pdf-facts.ts';
import {openPdf, type PdfFile, pageObjects} from './pdf-file.ts';
import {PdfSyntaxError} from './pdf-syntax.ts';
import type {PrintedDocument, PrintJob, PrintTrouble} from './print-job.ts';
import {refuseRequests} from './refuse-requests.ts';
import {showDocument} from './show-document.ts';

export interface PrintOptions {
  /**
   * Whether to write bookmarks and the structure tree, and to look for troubles. Without them printing takes about
   * 0.6 of the time and the pages are the same: enough to count them.
   */
  readonly tagged: boolean;
  /** The pages to print, counted from 0 and in order; all of them when left out. They look as they do among the others. */
  readonly pages?: readonly number[];
}

/** Nothing is fetched but what the document carries within itself, and nothing runs. */
const policy =
  "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/**
 * Prints a document. Whatever its HTML holds, the browser reads no file, opens no connection and runs no script.
 * Throws `OperationalError` when the browser fails; what is wrong with the document is in `troubles`.
 */
export async function printPdf(
  browser: PrintBrowser,
  job: PrintJob,
  options: PrintOptions,
): Promise<PrintedDocument> {
  // Generous for a slow computer that is busy: 300 pages with photos take a few seconds on an ordinary one. Chromium takes
  // longer for each page of a long document: 14 seconds for 1,361, five times that for twice as many.
  const deadline = 120_000 + job.html.length / 50;
  return browser.withPage((page) => print(page, job, options), deadline);
}

async function print(page: PrintPage, job: PrintJob, options: PrintOptions): Promise<PrintedDocument> {
  await page.setJavaScriptEnabled(false);
  await page.setOfflineMode(true);
  await page.emulateMediaType('print');
  const {refused, stop} = await refuseRequests(page);
  // A `<meta http-equiv="refresh">` may go to another empty page in spite of every lock, at any moment from here on;
  // then a call fails, or what was printed is not our document.
  let wasLeft = false;
  const noteLeaving = (frame: unknown) => {
    if (frame === page.mainFrame()) wasLeft = true;
  };
  page.on('framenavigated', noteLeaving);
  const outcome = await printHere(page, job, options).catch((error: unknown) => {
    // The end of the page is told before the beginning of the next.
    const pageEnded = error instanceof Error && error.message.includes('Execution context was destroyed');
    if (!wasLeft && !pageEnded) throw error;
  });
  if (outcome === undefined || wasLeft) {
    throw new OperationalError(
      'a layout led the browser away from its page: take `http-equiv="refresh"` out of it',
    );
  }
  page.off('framenavigated', noteLeaving);
  stop();
  return {...outcome, troubles: [...refused(), ...outcome.troubles]};
}

async function printHere(
  page: PrintPage,
  {html, anchors}: PrintJob,
  {tagged, pages}: PrintOptions,
): Promise<PrintedDocument> {
  await showDocument(page, withPolicy(html));
  const fonts = await page.evaluate(loadFonts);
  await page.evaluate(breakWideTables);
  await page.evaluate(shrinkToFit);
  await page.evaluate(tightenToFit);
  const inMargins = await page.evaluate(fitMarginText, anchors);
  await page.evaluate(linkAnchors, anchors);
  const troubles = tagged ? await inspect(page, anchors, fonts, inMargins) : [];
  const bytes = await page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    timeout: 0,
    outline: tagged,
    tagged,
    ...(pages && {pageRanges: pages.map((each) => each + 1).join(',')}),
  });
  const pdf = open(bytes);
  const starts = pages === undefined ? readStarts(pdf, anchors) : new Map<string, number>();
  if (tagged) troubles.push(...(await findForeignFonts(page, pdf, fonts, anchors)));
  return {pdf: bytes, pageCount: pageObjects(pdf).length, starts, troubles};
}

/**
 * Puts our policy before everything else. The parser moves it into the head and merges the attributes of the `<html>`
 * tag that follows, so that nothing in the document can come before it.
 */
function withPolicy(html: string): string {
  const rest = html.replace(/^\uFEFF?\s*<!doctype[^>]*>/i, '');
  return `<!doctype html><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">${rest}`;
}

async function inspect(
  page: PrintPage,
  anchors: readonly string[],
  fonts: readonly DeclaredFont[],
  inMargins: readonly Overflow[],
): Promise<PrintTrouble[]> {
  // Pictures are decoded beside the measuring.
  const [missing, overflow] = await Promise.all([
    page.evaluate(findMissing, anchors),
    page.evaluate(findOverflow, anchors),
  ]);
  return [
    ...fonts
      .filter(({loaded}) => !loaded)
      .map(
        ({description}): PrintTrouble => ({kind: 'missing font', anchor: null, detail: `\`${description}\``}),
      ),
    ...missing.map(({kind, anchor, detail}): PrintTrouble => ({kind, anchor, detail: `\`${detail}\``})),
    ...[...overflow, ...inMargins].map(({anchor, within, text, direction, millimetres}): PrintTrouble => {
      const size = millimetres === 0 ? 'a little' : `${millimetres} mm`;
      return {kind: 'overflow', anchor, within, detail: `\`${text}\` is ${size} too ${direction}`};
    }),
  ];
}

function open(bytes: Uint8Array): PdfFile {
  try {
    return openPdf(bytes);
  } catch (error) {
    if (!(error instanceof PdfSyntaxError)) throw error;
    throw new OperationalError(
      `this browser writes PDFs in a way that is not known here (${error.message}): name another one with \`--browser PATH\``,
      {cause: error},
    );
  }
}

function readStarts(pdf: PdfFile, anchors: readonly string[]): ReadonlyMap<string, number> {
  const destinations = readDestinations(pdf);
  return new Map(
    anchors.map((anchor) => {
      const page = destinations.get(anchor);
      invariant(page !== undefined, `no element with the id ${anchor} was printed`);
      return [anchor, page];
    }),
  );
}
