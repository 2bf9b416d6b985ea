import type {PageDocument, PageElement, PageStyle} from './page-types.ts';

declare const document: PageDocument;
declare function getComputedStyle(element: PageElement): PageStyle;

/**
 * Runs in the page, with print styles on. A table keeps its words and figures whole; one that becomes wider than its
 * column by that may break them anywhere, as all other text may. `--text-width` tells what the margins of a leaf leave.
 */
export function breakWideTables(): void {
  const page = document.documentElement;
  const width = Number.parseFloat(getComputedStyle(page).getPropertyValue('--text-width')) || 0;
  if (width === 0) return;

  const slack = 1; // Chromium rounds boxes to whole pixels.
  const before = page.getAttribute('style');
  page.style.width = `${width}px`;
  for (const table of document.querySelectorAll('table')) {
    const {paddingLeft, paddingRight} = getComputedStyle(table.parentElement ?? page);
    const inner =
      (table.parentElement ?? page).clientWidth -
      Number.parseFloat(paddingLeft) -
      Number.parseFloat(paddingRight);
    const most = Number.parseFloat(getComputedStyle(table).maxWidth) || inner;
    if (table.offsetWidth > Math.min(inner, most) + slack)
      table.style.setProperty('overflow-wrap', 'anywhere');
  }
  if (before === null) page.removeAttribute('style');
  else page.setAttribute('style', before);
}
