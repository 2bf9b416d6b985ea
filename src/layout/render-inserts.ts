import type {BinderSettings} from '../model/schema/binder-settings.ts';
import type {LayoutInput} from './layout-input.ts';
import type {Size} from './paper.ts';
import type {PlannedSheet} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {coverView, spineView, tabStripsView} from './view-models/inserts.ts';

type WrittenSize = NonNullable<NonNullable<BinderSettings['inserts']>['spine']>;

/** What goes into the pockets and tabs of the binder: spine, cover and tab strips. Null when none is wished for. */
export function renderInserts(input: LayoutInput): Printable | null {
  const {inserts, candidate} = input.binder.settings;
  if (inserts === undefined) return null;
  const {spine, cover, tabs, candidate: namedAs} = inserts;
  const hasTabs = tabs !== undefined && input.binder.syllabus.sections.length > 0;
  const sheets = [
    ...(spine ? [insert('Spine', 'spine', spineView(input, sizeOf(spine), namedAs))] : []),
    ...(cover ? [insert('Cover', 'cover', coverView(input, namedAs))] : []),
    ...(hasTabs ? [insert('Tab strips', 'tab-strips', tabStripsView(input, sizeOf(tabs)))] : []),
  ];
  if (sheets.length === 0) return null;
  return renderSheets(input, `Inserts: ${candidate.name}`, sheets, null, {sides: 'single'});
}

function insert(label: string, layout: string, view: object): PlannedSheet {
  return {
    anchor: `sheet-${layout}`,
    label,
    title: `${label} of the binder`,
    blank: false,
    layout,
    view,
    page: 'cutting sheet',
  };
}

function sizeOf({width, height}: WrittenSize): Size {
  return {width: width.millimetres.toNumber(), height: height.millimetres.toNumber()};
}
