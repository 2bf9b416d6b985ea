import type {LayoutInput} from '../layout-input.ts';
import {draftMark} from '../page-rules.ts';
import {paperOf, type Size} from '../paper.ts';

/** A page of pieces to cut out; all measures in millimetres. */
export interface CuttingPage extends Size {
  readonly draft: string | null;
  /** A line of known length beside the pieces, to see whether the page was printed true; null where it has no room. */
  readonly ruler: Ruler | null;
}

interface Ruler {
  /** SVG path data of the line and its ends. */
  readonly path: string;
  /** Where its words stand. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly length: number;
}

const ruler = {length: 100, fromEdge: 14, end: 2, words: 28, clear: 8};

/** `width` is that of the pieces, which stand in the middle of the page. */
export function cuttingPage(input: LayoutInput, width: number): CuttingPage {
  const paper = paperOf(input.binder.settings);
  return {
    width: paper.width,
    height: paper.height,
    draft: draftOf(input),
    ruler: rulerBeside(paper, (paper.width - width) / 2),
  };
}

export function draftOf({draft}: LayoutInput): string | null {
  return draft === null ? null : draftMark(draft.errors);
}

function rulerBeside(paper: Size, room: number): Ruler | null {
  const {length, fromEdge, end, words, clear} = ruler;
  if (room < fromEdge + end + words + clear) return null;
  const x = paper.width - fromEdge;
  const top = (paper.height - length) / 2;
  const ends = [top, top + length].map((y) => `M${x - end} ${y}h${end}`).join('');
  return {path: `M${x} ${top}v${length}${ends}`, left: x - end - words, top, width: words, length};
}
