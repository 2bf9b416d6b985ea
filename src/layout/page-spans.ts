import {invariant} from '../support/invariant.ts';
import type {Sheet} from './printable.ts';

/** The pages of one sheet in a printed document, counted from 0; `end` is exclusive. */
export interface PageSpan<S extends Sheet = Sheet> {
  readonly sheet: S;
  readonly start: number;
  readonly end: number;
}

/**
 * Where each sheet begins and ends: every page from a sheet's start up to the next sheet's belongs to it.
 * `starts` are the pages, counted from 0, on which the anchors were found.
 */
export function pageSpans<S extends Sheet>(
  sheets: readonly S[],
  starts: ReadonlyMap<string, number>,
  pageCount: number,
): readonly PageSpan<S>[] {
  const begins = sheets.map((sheet) => {
    const start = starts.get(sheet.anchor);
    invariant(start !== undefined, `the sheet ${sheet.anchor} was not found among the printed pages`);
    return start;
  });
  return sheets.map((sheet, index) => {
    const start = begins[index] ?? 0;
    const end = begins[index + 1] ?? pageCount;
    invariant(start < end, `the sheet ${sheet.anchor} does not begin on a page of its own`);
    return {sheet, start, end};
  });
}
