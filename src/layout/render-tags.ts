import type {LayoutInput} from './layout-input.ts';
import type {PlannedSheet} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {piecesOfKnitting, tagsView} from './view-models/tags.ts';

/** The tags of every piece of knitting, several to a sheet, true to size. Null when the binder has none. */
export function renderTags(input: LayoutInput): Printable | null {
  const pieces = piecesOfKnitting(input);
  if (pieces.length === 0) return null;
  const sheet: PlannedSheet = {
    anchor: 'sheet-tags',
    label: 'Tags',
    title: 'Tags for the knitting',
    blank: false,
    layout: 'tags',
    view: tagsView(input, pieces),
    page: 'cutting sheet',
  };
  return renderSheets(input, `Tags: ${input.binder.settings.candidate.name}`, [sheet], null);
}
