import {pageSpans} from './page-spans.ts';
import type {PageCounts, Sheet} from './printable.ts';

/** How many pages each sheet took when it was printed; blank backs are not counted. */
export function pageCounts(
  sheets: readonly Sheet[],
  starts: ReadonlyMap<string, number>,
  pageCount: number,
): NonNullable<PageCounts> {
  const spans = pageSpans(sheets, starts, pageCount).filter(({sheet}) => !sheet.blank);
  return new Map(spans.map(({sheet, start, end}) => [sheet.anchor, end - start]));
}
