import type {Element} from 'hast';
import {h} from 'hastscript';

/** The one shape of a drawing with its key: drawings, key, how to read it. */
export function chartFigure({
  name,
  caption,
  drawings,
  key = [],
  notes,
}: {
  /** Second class of the figure, for the print style. */
  readonly name: string;
  readonly caption: string;
  readonly drawings: readonly Element[];
  readonly key?: readonly Element[];
  readonly notes: readonly string[];
}): Element {
  return h('figure', {className: ['computed', name]}, [
    h('div', {className: ['plots']}, [...drawings]),
    ...key,
    ...notes.map((note) => h('p', {className: ['rounding']}, note)),
    h('figcaption', caption),
  ]);
}
