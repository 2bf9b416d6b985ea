import type {ChangedLeaves} from '../model/changed-leaves.ts';
import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {Printable, Sheet} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {changedSlipView} from './view-models/changed-slip.ts';

/** What to take out of the paper binder and what to put in, to tick off. `sheets` are those of the binder in its order. */
export function renderChangedSlip(
  input: LayoutInput,
  sheets: readonly Sheet[],
  changes: ChangedLeaves,
): Printable {
  const slip = {
    anchor: 'sheet-changed-slip',
    label: 'Slip',
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: 'changed-slip',
    view: changedSlipView(input, sheets, changes),
    page: plainPage,
    errors: 0,
  };
  return renderSheets(input, `Leaves to change: ${input.binder.settings.candidate.name}`, [slip], null);
}
