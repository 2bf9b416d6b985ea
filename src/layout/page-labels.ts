import {pageSpans} from './page-spans.ts';
import type {Sheet} from './printable.ts';

/** The leaf number of every page in order, such as `S-07 · 2 of 3`, and `S-07 · back` for a blank back. */
export function pageLabels(
  sheets: readonly Sheet[],
  starts: ReadonlyMap<string, number>,
  pageCount: number,
): string[] {
  return pageSpans(sheets, starts, pageCount).flatMap(({sheet, start, end}) =>
    Array.from({length: end - start}, (_, index) =>
      sheet.blank ? `${sheet.label} · back` : `${sheet.label} · ${index + 1} of ${end - start}`,
    ),
  );
}
