import {type Paper, pageMargins} from './paper.ts';
import type {EdgeMark} from './planned-sheet.ts';
import {tabPlace, tabShape} from './tab-place.ts';

/** What is drawn on a page behind its text. */
export interface PageMarks {
  readonly side: 'recto' | 'verso';
  readonly edge: EdgeMark | null;
}

/**
 * The CSS `background` of a page: hole centres and tab as one drawing in millimetres. It is laid from the content
 * area, so it is moved back by the page's margins.
 */
export function pageBackground(paper: Paper, marks: PageMarks): string {
  const left = marks.side === 'recto' ? pageMargins.ring : pageMargins.outer;
  const svg = drawing(paper, marks).replaceAll('#', '%23').replaceAll('<', '%3c').replaceAll('>', '%3e');
  return (
    `url("data:image/svg+xml,${svg}") ` +
    `-${left}px -${pageMargins.top}px / ${paper.width}mm ${paper.height}mm no-repeat`
  );
}

function drawing(paper: Paper, {side, edge}: PageMarks): string {
  const {width, height} = paper;
  const shapes = [...paper.holesFromTop.map((y) => holeMark(paper.holesFromEdge, y)), edgeShape(paper, edge)];
  const mirrored = side === 'verso' ? ` transform='translate(${width} 0) scale(-1 1)'` : '';
  return (
    `<svg xmlns='http://www.w3.org/2000/svg' width='${width}mm' height='${height}mm' viewBox='0 0 ${width} ${height}'>` +
    `<g fill='none' stroke='#8c8c8c' stroke-width='.2'${mirrored}>${shapes.join('')}</g></svg>`
  );
}

/** A cross small enough that punching the 6 mm hole takes it away. */
function holeMark(x: number, y: number): string {
  const arm = 2;
  return `<path d='M${x - arm} ${round(y)}H${x + arm}M${x} ${round(y - arm)}V${round(y + arm)}'/>`;
}

function edgeShape(paper: Paper, edge: EdgeMark | null): string {
  if (edge === null) return '';
  const {x, y, width, height} = tabPlace(edge.place, paper);
  const {gap, bevel} = tabShape;
  const [top, bottom, outer] = [round(y + gap), round(y + height - gap), round(x + width)];
  if (edge.drawn === 'thumb') {
    return `<path fill='#c9c2bd' stroke='none' d='M${round(outer - 1.4)} ${top}H${outer}V${bottom}H${round(outer - 1.4)}Z'/>`;
  }
  return (
    `<path fill='#f1edea' stroke='#7a3326' stroke-width='.25' d='M${outer} ${top}L${round(x)} ${round(top + bevel)}` +
    `V${round(bottom - bevel)}L${outer} ${bottom}Z'/>`
  );
}

/** Thousandths of a millimetre are enough, and keep float noise out of the page. */
function round(millimetres: number): number {
  return Math.round(millimetres * 1000) / 1000;
}
