import {cutMarks} from './cut-marks.ts';
import type {Rectangle} from './tab-place.ts';
import type {TagGrid} from './tag-grid.ts';

/** The hole for the thread: as wide as a punch makes it, its centre this far from the tag's left end. */
const hole = {radius: 3, fromEnd: 7};

/** What is drawn on one sheet of tags, in millimetres. */
export interface TagDrawing {
  /** What is cut out. */
  readonly outlines: readonly Rectangle[];
  readonly holes: readonly {readonly x: number; readonly y: number; readonly radius: number}[];
  /** SVG path data of all folds and of all cut marks. */
  readonly folds: string;
  readonly cutMarks: string;
}

/** The drawing of the fronts at `places`. A folded tag is punched through both halves. */
export function tagDrawing(grid: TagGrid, places: readonly Rectangle[]): TagDrawing {
  const isFolded = grid.reverse === 'folded';
  const halves = isFolded ? places.flatMap((place) => [upperHalf(place), lowerHalf(place)]) : places;
  return {
    outlines: grid.isCut ? [] : places,
    holes: grid.hasHoles
      ? halves.map(({x, y, height}) => ({x: x + hole.fromEnd, y: y + height / 2, radius: hole.radius}))
      : [],
    folds: isFolded ? places.map(({x, y, width, height}) => `M${x} ${y + height / 2}h${width}`).join('') : '',
    cutMarks: grid.isCut ? '' : cutMarks(grid.paper, places),
  };
}

/** Nothing is drawn on the back: it is cut and punched from the front. */
export const emptyDrawing: TagDrawing = {outlines: [], holes: [], folds: '', cutMarks: ''};

export function upperHalf({x, y, width, height}: Rectangle): Rectangle {
  return {x, y, width, height: height / 2};
}

export function lowerHalf({x, y, width, height}: Rectangle): Rectangle {
  return {x, y: y + height / 2, width, height: height / 2};
}

/** The same place seen through a sheet that is turned over its long edge. */
export function fromBehind({paper}: TagGrid, {x, width, ...rest}: Rectangle): Rectangle {
  return {x: paper.width - x - width, width, ...rest};
}
