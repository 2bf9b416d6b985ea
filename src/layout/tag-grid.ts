import {type LabelSheet, labelSheetOf} from '../model/label-sheet.ts';
import {cuttingRim, paperSizes} from '../model/paper-sizes.ts';
import type {BinderSettings} from '../model/schema/binder-settings.ts';
import type {Size} from './paper.ts';
import type {Rectangle} from './tab-place.ts';

/** What tags are printed on: its size, and the places on one sheet in the order in which they are filled. */
export interface TagGrid {
  readonly paper: Size;
  readonly places: readonly Rectangle[];
  /** How many places of the first sheet are used up. */
  readonly used: number;
  /** Labels are cut already. */
  readonly isCut: boolean;
  readonly reverse: BinderSettings['tags']['reverse'];
  readonly hasHoles: boolean;
}

type TagSettings = Pick<BinderSettings, 'tags' | 'paper'>;

export function tagGrid(settings: TagSettings): TagGrid {
  const {tags} = settings;
  if (tags.sheet === undefined) return plainGrid(settings);
  const sheet = labelSheetOf(tags.sheet);
  const places = labelPlaces(sheet);
  return {
    paper: paperSizes[sheet.paper],
    places,
    used: Math.min(tags['first-label'], places.length) - 1,
    isCut: true,
    // There is nothing behind a label to fold.
    reverse: tags.reverse === 'folded' ? 'none' : tags.reverse,
    hasHoles: tags.hole ?? false,
  };
}

/** Tags to be cut out of the binder's paper, whatever sheets of labels are set. A folded one takes twice its height. */
export function plainGrid({tags, paper}: TagSettings): TagGrid {
  const {width, height} = tagSize(tags);
  return {
    paper: paperSizes[paper],
    places: tagPlaces(paperSizes[paper], {width, height: tags.reverse === 'folded' ? 2 * height : height}),
    used: 0,
    isCut: false,
    reverse: tags.reverse,
    hasHoles: tags.hole ?? true,
  };
}

/** The size of one tag: as set in the binder file, otherwise 90 × 55 mm. */
function tagSize({width, height}: BinderSettings['tags']): Size {
  return {width: width?.millimetres.toNumber() ?? 90, height: height?.millimetres.toNumber() ?? 55};
}

/** As many whole tags as the paper holds, at least one, edge to edge in the middle of the sheet, row by row. */
export function tagPlaces(paper: Size, {width, height}: Size): readonly Rectangle[] {
  const columns = Math.max(1, Math.floor((paper.width - 2 * cuttingRim) / width));
  const rows = Math.max(1, Math.floor((paper.height - 2 * cuttingRim) / height));
  const left = (paper.width - columns * width) / 2;
  const top = (paper.height - rows * height) / 2;
  return labelPlaces({columns, rows, width, height, left, top, gapAcross: 0, gapDown: 0});
}

/** Where the labels of a sheet are, row by row. */
export function labelPlaces(sheet: Omit<LabelSheet, 'paper'>): readonly Rectangle[] {
  const {columns, rows, width, height, left, top, gapAcross, gapDown} = sheet;
  return Array.from({length: rows * columns}, (_, index) => ({
    x: left + (index % columns) * (width + gapAcross),
    y: top + Math.floor(index / columns) * (height + gapDown),
    width,
    height,
  }));
}
