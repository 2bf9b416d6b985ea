import type {LayoutInput} from './layout-input.ts';
import type {PlannedSheet} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {type TagGrid, tagGrid} from './tag-grid.ts';
import {piecesOfKnitting, tagsView} from './view-models/tags.ts';

/** The tags of every piece of knitting, several to a sheet, true to size. Null when the binder has none. */
export function renderTags(input: LayoutInput): Printable | null {
  const pieces = piecesOfKnitting(input);
  if (pieces.length === 0) return null;
  const {settings} = input.binder;
  const grid = tagGrid(settings);
  const sides = sidesOf(grid) ?? settings.sides;
  const sheet: PlannedSheet = {
    anchor: 'sheet-tags',
    label: 'Tags',
    title: 'Tags for the knitting',
    blank: false,
    layout: 'tags',
    view: tagsView(input, grid, pieces, {hasBlankBacks: sides === 'duplex'}),
    page: 'cutting sheet',
    paper: grid.paper,
  };
  return renderSheets(input, `Tags: ${settings.candidate.name}`, [sheet], null, {sides});
}

/** What the tags themselves ask for; labels do not go through the printer twice without need. */
function sidesOf({reverse, isCut}: TagGrid): 'single' | 'duplex' | null {
  if (reverse === 'printed') return 'duplex';
  return isCut ? 'single' : null;
}
