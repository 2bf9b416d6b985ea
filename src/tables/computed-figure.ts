import type {Element} from 'hast';
import {h} from 'hastscript';

/** A block of lines under a heading of its own; without a title it has none. */
export interface FigureGroup {
  readonly title: string | null;
  readonly lines: readonly {readonly label: string; readonly cells: readonly string[]}[];
}

export interface ComputedFigure {
  /** Further classes of the `<figure>`, for the print style, with a space between them. */
  readonly name: string;
  readonly caption: string;
  /** Column headings; the first stands over the line labels. */
  readonly columns: readonly string[];
  readonly groups: readonly FigureGroup[];
  /** Drawings below the table. */
  readonly drawings: readonly Element[];
  /** What to do, in words and rows to work from, below the table. */
  readonly instructions?: readonly string[];
  /** Each formula in words, with the figures put in where that helps. */
  readonly formulas: readonly string[];
  readonly rounding: string;
  readonly source: string;
}

/** The one shape of a computed table: what went in, what came out, how, how it was rounded, and where the formula is from. */
export function computedFigure(figure: ComputedFigure): Element {
  return h('figure', {className: ['computed', figure.name]}, [
    h('table', [
      h('thead', [
        h(
          'tr',
          figure.columns.map((column) => h('th', {scope: 'col'}, column)),
        ),
      ]),
      ...figure.groups.map((group) => tableBody(group, figure.columns.length)),
    ]),
    ...(figure.drawings.length > 0 ? [h('div', {className: ['plots']}, [...figure.drawings])] : []),
    ...(figure.instructions ?? []).map((words) => h('p', {className: ['instruction']}, words)),
    h('div', {className: ['working']}, [
      ...figure.formulas.map((formula) => h('p', {className: ['formula']}, formula)),
      h('p', {className: ['rounding']}, figure.rounding),
      h('p', {className: ['source']}, figure.source),
    ]),
    h('figcaption', figure.caption),
  ]);
}

function tableBody({title, lines}: FigureGroup, columns: number): Element {
  return h('tbody', [
    ...(title === null ? [] : [h('tr', [h('th', {scope: 'rowgroup', colSpan: columns}, title)])]),
    ...lines.map(({label, cells}) =>
      h('tr', [h('th', {scope: 'row'}, label), ...cells.map((cell) => h('td', cell))]),
    ),
  ]);
}
