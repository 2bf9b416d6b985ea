import type {Item} from '../model/binder.ts';
import type {ComposedItem} from '../model/composed.ts';
import {setTypography} from '../support/typography.ts';
import type {LayoutInput} from './layout-input.ts';
import {type EdgeMark, type PlannedSheet, plainPage, sheetAnchor} from './planned-sheet.ts';
import {essayView} from './view-models/essay.ts';
import {letterView} from './view-models/letter.ts';
import {patternView} from './view-models/pattern.ts';
import {workedView} from './view-models/worked.ts';

/** The sheet of one item: the same leaves in the binder and in a reprint. */
export function itemSheet(input: LayoutInput, composed: ComposedItem, edge: EdgeMark | null): PlannedSheet {
  const {item} = composed;
  return {
    anchor: sheetAnchor(item.id),
    label: item.id,
    title: setTypography(item.title),
    blank: false,
    layout: item.kind,
    view: viewOf(input, item, composed),
    page: {...plainPage, edge},
  };
}

function viewOf(input: LayoutInput, item: Item, composed: ComposedItem): object {
  switch (item.kind) {
    case 'swatch':
    case 'project':
      return workedView(item, composed, input.binder.settings.language);
    case 'pattern':
      return patternView(item, composed);
    case 'question':
    case 'report':
    case 'review':
      return essayView(input, item, composed);
    case 'letter':
      return letterView(input, item, composed);
  }
}
