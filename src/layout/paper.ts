import {paperSizes} from '../model/paper-sizes.ts';
import type {BinderSettings} from '../model/schema/binder-settings.ts';

/** Width and height in millimetres. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A sheet of paper and where its holes are, all in millimetres. */
export interface Paper extends Size {
  /** Distance of the hole centres from the edge that goes into the rings. */
  readonly holesFromEdge: number;
  /** Distances of the hole centres from the top edge. */
  readonly holesFromTop: readonly number[];
}

/**
 * Hole centres as offsets from the middle of the edge. Two: ISO 838, 80 mm apart and 12 mm from the edge. Four: the
 * same with one more 80 mm beyond each. Three: 4¼ in apart and ½ in from the edge (common practice, no source).
 */
const holePatterns = {
  2: {fromEdge: 12, offsets: [-40, 40]},
  3: {fromEdge: 12.7, offsets: [-107.95, 0, 107.95]},
  4: {fromEdge: 12, offsets: [-120, -40, 40, 120]},
} as const;

export function paperOf({paper, rings}: Pick<BinderSettings, 'paper' | 'rings'>): Paper {
  const {width, height} = paperSizes[paper];
  const {fromEdge, offsets} = holePatterns[rings];
  return {width, height, holesFromEdge: fromEdge, holesFromTop: offsets.map((offset) => height / 2 + offset)};
}

/**
 * Page margins in whole CSS pixels: the browser rounds margins to pixels, and the page background is placed from
 * them, so that only whole ones keep the hole marks true. `ring` is the side of the holes, `outer` the other.
 */
export const pageMargins = {top: 88, bottom: 88, ring: 100, outer: 68} as const;

/** What the margins of a leaf leave for text, in whole CSS pixels. */
export function textArea({width, height}: Size): Size {
  const {top, bottom, ring, outer} = pageMargins;
  const pixels = 96 / 25.4;
  return {
    width: Math.floor(width * pixels) - ring - outer,
    height: Math.floor(height * pixels) - top - bottom,
  };
}

/** The rim that a home printer may not be able to print on, in millimetres (common practice, no source). */
export const unprintableRim = 6;
