import type {PageDocument, PageElement, PageStyle} from './page-types.ts';

declare const document: PageDocument;
declare function getComputedStyle(element: PageElement): PageStyle;

/**
 * Runs in the page, with print styles on. A sheet of the class `sheet` whose style names a `--tightest` should end on
 * one leaf. Where it is a little too long for that, the air in it is taken out by `--air`, a twentieth at a time, down
 * to `--tightest`; a sheet that is too long even then keeps all its air. `--text-width` and `--text-height` tell what
 * the margins of a leaf leave.
 */
export function tightenToFit(): void {
  const page = document.documentElement;
  const pixels = (name: string): number =>
    Number.parseFloat(getComputedStyle(page).getPropertyValue(name)) || 0;
  const [width, height] = [pixels('--text-width'), pixels('--text-height')];
  if (width === 0 || height === 0) return;

  const slack = 2; // Chromium rounds boxes and page margins to whole pixels.
  const fits = (sheet: PageElement): boolean => {
    const {top, bottom} = sheet.getBoundingClientRect();
    return bottom - top <= height - slack;
  };
  const before = page.getAttribute('style');
  page.style.width = `${width}px`;
  for (const sheet of document.querySelectorAll('.sheet')) {
    const tightest = Number(getComputedStyle(sheet).getPropertyValue('--tightest')) || 1;
    const style = sheet.getAttribute('style');
    for (let percent = 95; percent >= Math.round(tightest * 100) && !fits(sheet); percent -= 5) {
      sheet.setAttribute('style', `${style ?? ''};--air:${percent / 100}`);
    }
    if (fits(sheet)) continue;
    if (style === null) sheet.removeAttribute('style');
    else sheet.setAttribute('style', style);
  }
  if (before === null) page.removeAttribute('style');
  else page.setAttribute('style', before);
}
