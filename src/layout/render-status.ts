import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {statusView} from './view-models/status.ts';
import {visibleView, withVisibleNames} from './visible-view.ts';

/** How far everything is, on paper or opened from disk. */
export function renderStatus(given: LayoutInput): Printable {
  const input = withVisibleNames(given);
  const sheet = {
    anchor: 'sheet-status',
    label: 'Status',
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: 'status',
    view: visibleView(statusView(input)),
    page: plainPage,
  };
  return renderSheets(input, `Status: ${input.binder.settings.candidate.name}`, [sheet], null);
}
