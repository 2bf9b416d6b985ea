import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {checkReportView} from './view-models/check-report.ts';
import {visibleView, withVisibleNames} from './visible-view.ts';

/** What the checker found, section by section, for a person to work through: on paper or opened from disk. */
export function renderCheckReport(given: LayoutInput): Printable {
  const input = withVisibleNames(given);
  const sheet = {
    anchor: 'sheet-check-report',
    label: 'Check report',
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: 'check-report',
    view: visibleView(checkReportView(input)),
    page: plainPage,
  };
  return renderSheets(input, `Check report: ${input.binder.settings.candidate.name}`, [sheet], null);
}
