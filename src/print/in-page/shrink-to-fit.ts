import type {PageDocument, PageElement, PageStyle} from './page-types.ts';

declare const document: PageDocument;
declare function getComputedStyle(element: PageElement): PageStyle;

/**
 * Runs in the page. Boxes of the class `shrinks-to-fit` have one size of their own; where their text does not fit it, it
 * is set smaller by `--type`, a twentieth at a time, down to what the style sheet names as `--smallest`. What is still too
 * large then stays so, to be found by `findOverflow`.
 */
export function shrinkToFit(): void {
  const slack = 1; // Chromium rounds boxes to whole pixels.
  const fits = (box: PageElement): boolean => {
    if (box.scrollHeight > box.clientHeight + slack || box.scrollWidth > box.clientWidth + slack)
      return false;
    // What runs into the padding is not counted there, but is too close to the edge or over it.
    const {paddingRight, paddingBottom} = getComputedStyle(box);
    const right = box.clientWidth - Number.parseFloat(paddingRight) + slack;
    const bottom = box.clientHeight - Number.parseFloat(paddingBottom) + slack;
    return [...box.children].every(
      (child) =>
        getComputedStyle(child).position === 'absolute' ||
        (child.offsetLeft + child.offsetWidth <= right && child.offsetTop + child.offsetHeight <= bottom),
    );
  };
  for (const box of document.querySelectorAll('.shrinks-to-fit')) {
    const smallest = Number(getComputedStyle(box).getPropertyValue('--smallest')) || 1;
    const style = box.getAttribute('style') ?? '';
    for (let percent = 95; percent >= Math.round(smallest * 100) && !fits(box); percent -= 5) {
      box.setAttribute('style', `${style};--type:${percent / 100}`);
    }
  }
}
