import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {PageCounts, Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {packingListView} from './view-models/packing-list.ts';

/** Every sheet and every piece of knitting that goes into the box, to tick off. `binderCounts` are those of the binder. */
export function renderPackingList(input: LayoutInput, binderCounts: PageCounts): Printable {
  const sheet = {
    anchor: 'sheet-packing-list',
    label: 'Packing list',
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: 'packing-list',
    view: packingListView(input, binderCounts),
    page: plainPage,
  };
  return renderSheets(input, `Packing list: ${input.binder.settings.candidate.name}`, [sheet], null);
}
