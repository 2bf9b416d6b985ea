import type {Size} from './paper.ts';
import type {Sheet} from './printable.ts';
import type {TabNumber} from './tab-place.ts';

/** A sheet before it is rendered: what is on it, and what its leaves carry in their margins. */
export interface PlannedSheet extends Sheet {
  /** Name of its template in `sheets/`, and its CSS class. */
  readonly layout: string;
  readonly view: object;
  /** A bound leaf has margins for rings and text; a cutting sheet is one drawing as large as the paper. */
  readonly page: BoundPage | 'cutting sheet';
  /** What a cutting sheet is printed on, in millimetres; the binder's paper when left out. */
  readonly paper?: Size;
  /** The errors that its leaves are marked with; those of the whole binder when left out. */
  readonly errors?: number;
}

export interface BoundPage {
  /** Whether the head carries title and label. */
  readonly hasHead: boolean;
  /** Whether the foot carries the leaf number. */
  readonly isNumbered: boolean;
  readonly edge: EdgeMark | null;
}

/** A page with head and foot and nothing at its edge. */
export const plainPage: BoundPage = {hasHead: true, isNumbered: true, edge: null};

/** A divider's tab with its text, or the slim mark that a section's other leaves carry at the same place. */
export type EdgeMark =
  | {readonly drawn: 'tab'; readonly place: TabNumber; readonly text: string}
  | {readonly drawn: 'thumb'; readonly place: TabNumber};

/** The id of an item's sheet. */
export function sheetAnchor(id: string): string {
  return `sheet-${id}`;
}

/**
 * Printed on both sides, every sheet begins on a right-hand page: a sheet that ends on one is given a blank back.
 * Nothing is known of the backs before the first printing, and nothing is inserted then.
 */
export function withBlankBacks(
  sheets: readonly PlannedSheet[],
  counts: ReadonlyMap<string, number> | null,
): readonly PlannedSheet[] {
  if (counts === null) return sheets;
  return sheets.flatMap((sheet, index) => {
    const endsOnRecto = (counts.get(sheet.anchor) ?? 0) % 2 === 1;
    return endsOnRecto && index < sheets.length - 1 ? [sheet, blankBack(sheet)] : [sheet];
  });
}

function blankBack(sheet: PlannedSheet): PlannedSheet {
  return {
    ...sheet,
    anchor: `back-of-${sheet.anchor}`,
    blank: true,
    layout: 'blank-back',
    view: {label: sheet.label},
    page: {hasHead: false, isNumbered: true, edge: thumbOf(sheet)},
  };
}

function thumbOf({page}: PlannedSheet): EdgeMark | null {
  return page === 'cutting sheet' || page.edge === null ? null : {drawn: 'thumb', place: page.edge.place};
}
