import {binderSheets} from './binder-sheets.ts';
import type {LayoutInput} from './layout-input.ts';
import type {PageCounts, Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';

/**
 * The whole binder as leaves that are put into it one by one over a year. What one item still lacks is no fault of another
 * item's leaf: each is marked as a draft for the errors of its own sheet alone, `errors` by the sheet's label, and there
 * are no sheets for what is still to come. In a binder without errors these are the leaves of `renderBinder`.
 */
export function renderLeaves(
  input: LayoutInput,
  errors: ReadonlyMap<string, number>,
  counts: PageCounts,
): Printable {
  const {candidate, certificate} = input.binder.settings;
  const leaves: LayoutInput = {...input, draft: null};
  const sheets = binderSheets(leaves, counts).map((sheet) => ({
    ...sheet,
    errors: errors.get(sheet.label) ?? 0,
  }));
  return renderSheets(leaves, `${certificate.name}: ${candidate.name}`, sheets, counts);
}
