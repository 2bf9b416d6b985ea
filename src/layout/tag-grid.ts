import type {BinderSettings} from '../model/schema/binder-settings.ts';
import type {Paper} from './paper.ts';
import type {Rectangle} from './tab-place.ts';

/** Room around the tags for cut marks, which must clear the printer's unprintable rim. */
const rim = 10;
const cutMark = {gap: 1, length: 2.5};
/** The hole for the thread: as wide as a punch makes it, its centre this far from the tag's left end. */
const hole = {radius: 3, fromEnd: 7};

/** The drawing of one sheet of tags: holes and cut marks, in millimetres. */
export interface TagDrawing {
  readonly holes: readonly {readonly x: number; readonly y: number; readonly radius: number}[];
  /** SVG path data of all cut marks. */
  readonly cutMarks: string;
}

/** The size of one tag: as set in the binder file, otherwise 90 × 55 mm. */
export function tagSize({tags}: Pick<BinderSettings, 'tags'>): {
  readonly width: number;
  readonly height: number;
} {
  return {
    width: tags.width?.millimetres.toNumber() ?? 90,
    height: tags.height?.millimetres.toNumber() ?? 55,
  };
}

/** As many whole tags as the paper holds, at least one, edge to edge in the middle of the sheet, row by row. */
export function tagPlaces(
  paper: Paper,
  {width, height}: {readonly width: number; readonly height: number},
): readonly Rectangle[] {
  const columns = Math.max(1, Math.floor((paper.width - 2 * rim) / width));
  const rows = Math.max(1, Math.floor((paper.height - 2 * rim) / height));
  const left = (paper.width - columns * width) / 2;
  const top = (paper.height - rows * height) / 2;
  return Array.from({length: rows * columns}, (_, index) => ({
    x: left + (index % columns) * width,
    y: top + Math.floor(index / columns) * height,
    width,
    height,
  }));
}

/** Cut marks stand outside the block of tags, at the ends of every line that is cut. */
export function tagDrawing(places: readonly Rectangle[]): TagDrawing {
  const verticals = distinct(places.flatMap(({x, width}) => [x, x + width]));
  const horizontals = distinct(places.flatMap(({y, height}) => [y, y + height]));
  const [left, right] = [Math.min(...verticals), Math.max(...verticals)];
  const [top, bottom] = [Math.min(...horizontals), Math.max(...horizontals)];
  const {gap, length} = cutMark;
  return {
    holes: places.map(({x, y, height}) => ({x: x + hole.fromEnd, y: y + height / 2, radius: hole.radius})),
    cutMarks: [
      ...verticals.map((x) => `M${x} ${top - gap}v${-length}M${x} ${bottom + gap}v${length}`),
      ...horizontals.map((y) => `M${left - gap} ${y}h${-length}M${right + gap} ${y}h${length}`),
    ].join(''),
  };
}

/** Neighbours share a line; sums of millimetres may differ in their last binary digits. */
function distinct(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers.map((number) => Math.round(number * 1000) / 1000))];
}
