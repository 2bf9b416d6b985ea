import type {ComposedItem} from '../model/composed.ts';
import {kindsWithKnitting} from '../model/kinds.ts';
import {itemSheet} from './item-sheet.ts';
import type {LayoutInput} from './layout-input.ts';
import {type PlannedSheet, plainPage, withBlankBacks} from './planned-sheet.ts';
import type {PageCounts, Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {plainGrid} from './tag-grid.ts';
import {unlinkAbsent} from './unlink-absent.ts';
import {resubmissionView} from './view-models/resubmission.ts';
import {tagsView} from './view-models/tags.ts';

/**
 * Items to be sent again: for each a cover page with the assessors' remark and the answer, the item's own leaves,
 * numbered as in the binder, and its tag. Ids that were not composed are left out.
 */
export function renderReprint(input: LayoutInput, ids: readonly string[], counts: PageCounts): Printable {
  const {settings} = input.binder;
  const items = ids.flatMap((id) => input.composed.get(id) ?? []);
  const sheets = items.flatMap((composed) => resubmissionSheets(input, composed));
  return renderSheets(
    input,
    `Resubmission: ${settings.candidate.name}, ${items.map(({item}) => item.id).join(', ')}`,
    settings.sides === 'duplex' ? withBlankBacks(sheets, counts) : sheets,
    counts,
    {finish: unlinkAbsent},
  );
}

function resubmissionSheets(input: LayoutInput, composed: ComposedItem): readonly PlannedSheet[] {
  const {item} = composed;
  const itself = itemSheet(input, composed, null);
  const cover: PlannedSheet = {
    ...itself,
    anchor: `cover-${item.id}`,
    label: `${item.id} cover`,
    layout: 'resubmission',
    view: resubmissionView(input, item),
    page: plainPage,
  };
  if (!kindsWithKnitting.includes(item.kind)) return [cover, itself];
  const tag: PlannedSheet = {
    ...itself,
    anchor: `tag-${item.id}`,
    label: `${item.id} tag`,
    layout: 'tags',
    view: tagsView(input, plainGrid(input.binder.settings), [item], {hasBlankBacks: false}),
    page: 'cutting sheet',
  };
  return [cover, itself, tag];
}
