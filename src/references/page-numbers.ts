/** Pages from one number to another; both the same for a single page. */
export interface PageRange {
  readonly from: number;
  readonly to: number;
}

/**
 * The pages in a locator or in a source's `page`: `57`, `112–114`, `57, 60–62`, and `112–14` for 112 to 114. What is
 * no Arabic number, such as `xii` or `A3`, is passed over.
 */
export function pageRanges(text: string): readonly PageRange[] {
  return text.split(/\s*[,;&]\s*/).flatMap((part) => {
    const [, first, last] = /^(\d{1,6})(?:\s*[-–—]+\s*(\d{1,6}))?(?:\s?ff?\.?)?$/.exec(part.trim()) ?? [];
    if (first === undefined) return [];
    return [{from: Number(first), to: last === undefined ? Number(first) : fullNumber(first, last)}];
  });
}

/** A shortened end takes the digits it lacks from the beginning. */
function fullNumber(first: string, last: string): number {
  return Number(last.length < first.length ? first.slice(0, first.length - last.length) + last : last);
}
