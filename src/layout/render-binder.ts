import {binderSheets} from './binder-sheets.ts';
import type {LayoutInput} from './layout-input.ts';
import type {PageCounts, Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';

/**
 * The whole binder as one document. `counts` are the page counts of the last printing, from which the contents and
 * the leaf totals are filled; null prints placeholders of the same width.
 */
export function renderBinder(input: LayoutInput, counts: PageCounts): Printable {
  const {candidate, certificate} = input.binder.settings;
  return renderSheets(input, `${certificate.name}: ${candidate.name}`, binderSheets(input, counts), counts);
}
