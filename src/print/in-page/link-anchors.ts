import type {PageDocument} from './page-types.ts';

declare const document: PageDocument;

/**
 * Runs in the page. Gives every anchor a named destination in the PDF, whether or not the text links to it.
 *
 * Chromium writes a destination for each element that any link of the document leads to, and it looks for links in the
 * whole tree, drawn or not. So the links go into the `<head>`: nothing there is drawn, read out or tagged, and the
 * finished file has no trace of them but the destinations.
 */
export function linkAnchors(anchors: readonly string[]): void {
  for (const anchor of anchors) {
    const link = document.createElement('a');
    link.setAttribute('href', `#${encodeURIComponent(anchor)}`);
    document.head.append(link);
  }
}
