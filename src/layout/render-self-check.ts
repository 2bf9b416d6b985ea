import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {selfCheckView} from './view-models/self-check.ts';

/** What only eyes can check before posting, to tick off at the table. Null when the binder has no item. */
export function renderSelfCheck(input: LayoutInput): Printable | null {
  const view = selfCheckView(input);
  if (view.parts.length === 0) return null;
  const sheet = {
    anchor: 'sheet-self-check',
    label: 'Self-check',
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: 'self-check',
    view,
    page: plainPage,
  };
  return renderSheets(input, `Self-check: ${input.binder.settings.candidate.name}`, [sheet], null);
}
