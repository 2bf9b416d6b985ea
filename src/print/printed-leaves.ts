import {createHash} from 'node:crypto';
import {drawingDigester} from './drawing-digest.ts';
import {readLeafNotes} from './leaf-notes.ts';
import {readLabels} from './pdf-facts.ts';
import {openPdf, type PdfFile, pageObjects} from './pdf-file.ts';
import {PdfSyntaxError} from './pdf-syntax.ts';

/** One piece of paper of a finished PDF: a page, or with two sides a front and its back. */
export interface PrintedLeaf {
  /** Its leaf number, such as `S-07 · 2 of 3`; with two sides, that of its front. */
  readonly leaf: string;
  /** Stands for everything that is drawn on it: the same for the same drawing, whatever else the file holds. */
  readonly fingerprint: string;
  /** Its pages, counted from 0. */
  readonly pages: readonly number[];
  /** Whether it is marked as a draft. */
  readonly isDraft: boolean;
}

export interface PrintedLeaves {
  readonly leaves: readonly PrintedLeaf[];
  /** Leaf numbers that are no longer in the binder once these leaves are. */
  readonly gone: readonly string[];
}

/**
 * 64 bits. A fingerprint is compared with one other, that of the same leaf as printed before: the chance that two drawings
 * share it is 2^-64, and below one in 10^11 that any two among ten thousand leaves do (n²/2 pairs).
 */
const fingerprintDigits = 16;

/** The leaves of a PDF that this program finished, in its order. Throws `PdfSyntaxError` when it is another. */
export function readPrintedLeaves(bytes: Uint8Array): PrintedLeaves {
  const pdf = openPdf(bytes);
  const labels = readLabels(pdf);
  const {drafts, gone} = readLeafNotes(pdf);
  const digestOf = drawingDigester(pdf);
  const digests = pageObjects(pdf).map(digestOf);
  const sides = isDuplex(pdf) ? 2 : 1;
  const leaves: PrintedLeaf[] = [];
  for (let page = 0; page < digests.length; page += sides) {
    const pages = Array.from({length: Math.min(sides, digests.length - page)}, (_, side) => page + side);
    const leaf = labels.get(page);
    if (leaf === undefined) throw new PdfSyntaxError(`page ${page + 1} has no leaf number`);
    const drawn = createHash('sha256').update(pages.map((each) => digests[each]).join(' '));
    leaves.push({
      leaf,
      fingerprint: drawn.digest('hex').slice(0, fingerprintDigits),
      pages,
      isDraft: pages.some((each) => drafts.includes(each)),
    });
  }
  return {leaves, gone};
}

function isDuplex(pdf: PdfFile): boolean {
  const preferences = pdf.dictionary(pdf.dictionary(pdf.trailer.get('/Root')).get('/ViewerPreferences'));
  return preferences.get('/Duplex') === '/DuplexFlipLongEdge';
}
