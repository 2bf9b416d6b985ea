import type {LayoutInput} from './layout-input.ts';
import {sheetAnchor} from './planned-sheet.ts';

/** The anchor of an item's sheet, or null when the binder has no sheet for that id. */
export function itemAnchor({binder, composed, draft}: LayoutInput, id: string): string | null {
  const isAsked = binder.syllabus.sections.some(({requirements}) =>
    requirements.some((one) => one.id === id),
  );
  return isAsked && (draft !== null || composed.has(id)) ? sheetAnchor(id) : null;
}
