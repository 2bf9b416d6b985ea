import type {Item} from '../../model/binder.ts';
import {kindsWithKnitting} from '../../model/kinds.ts';
import type {LayoutInput} from '../layout-input.ts';
import {emptyDrawing, type TagDrawing, tagDrawing} from '../tag-drawing.ts';
import type {TagGrid} from '../tag-grid.ts';
import {draftOf} from './cutting-page.ts';
import {type TagFace, tagFaces} from './tag-faces.ts';

/** Sheets of tags; all measures in millimetres. */
export interface TagsView {
  readonly width: number;
  readonly height: number;
  readonly draft: string | null;
  readonly pages: readonly TagPage[];
}

export interface TagPage {
  /** The empty back of a sheet of tags. */
  readonly isBlank: boolean;
  readonly faces: readonly TagFace[];
  readonly drawing: TagDrawing;
}

/** The items that are pieces of knitting, in the order of the binder. */
export function piecesOfKnitting(input: LayoutInput): readonly Item[] {
  return [...input.composed.values()]
    .map(({item}) => item)
    .filter(({kind, requirement}) => kindsWithKnitting.includes(kind) && requirement !== null);
}

/** `hasBlankBacks`: whether an empty page stands between two sheets, since paper is printed on both sides. */
export function tagsView(
  input: LayoutInput,
  grid: TagGrid,
  items: readonly Item[],
  {hasBlankBacks}: {readonly hasBlankBacks: boolean},
): TagsView {
  const sheetCount = Math.ceil((grid.used + items.length) / grid.places.length);
  const pages = Array.from({length: sheetCount}, (_, sheet) => {
    const start = sheet * grid.places.length - grid.used;
    const isLast = sheet === sheetCount - 1;
    return sheetPages(input, grid, items, start, hasBlankBacks && !isLast);
  });
  const {width, height} = grid.paper;
  return {
    width,
    height,
    draft: draftOf(input),
    pages: pages.flat(),
  };
}

/** The pages of one sheet: its front, and its back where there is one. `start` is the item on its first place. */
function sheetPages(
  input: LayoutInput,
  grid: TagGrid,
  items: readonly Item[],
  start: number,
  hasBlankBack: boolean,
): readonly TagPage[] {
  const taken = grid.places.flatMap((place, index) => {
    const item = items[start + index];
    return item === undefined ? [] : [{place, ...tagFaces(input, grid, item, place)}];
  });
  const front: TagPage = {
    isBlank: false,
    faces: taken.flatMap((tag) => tag.front),
    drawing: tagDrawing(
      grid,
      taken.map(({place}) => place),
    ),
  };
  const back = {isBlank: false, faces: taken.flatMap((tag) => tag.back), drawing: emptyDrawing};
  if (back.faces.length > 0) return [front, back];
  return hasBlankBack ? [front, {...back, isBlank: true}] : [front];
}
