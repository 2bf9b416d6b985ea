import type {ComputedTable} from '../model/computed-table.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed} from './define-table.ts';

/** One line: what it is, and its figure. */
export type FigureLine = readonly [label: string, figure: string];

export interface ArithmeticFigure {
  readonly name: string;
  readonly caption: string;
  /** The figures that went in, as they are understood. */
  readonly given: readonly FigureLine[];
  /** What was worked out, and the error that rounding leaves. */
  readonly result: readonly FigureLine[];
  readonly instructions: readonly string[];
  readonly formulas: readonly string[];
  readonly rounding: string;
  readonly source: string;
}

/** The shape that all sums share: given, worked out, what to do, how it was worked out, how rounded, and from where. */
export function arithmeticFigure(figure: ArithmeticFigure): ComputedTable {
  const {given, result, ...rest} = figure;
  return computed(() =>
    computedFigure({
      ...rest,
      name: `sum ${rest.name}`,
      columns: ['Line', 'Figure'],
      groups: [group('Given', given), group('Worked out', result)],
      drawings: [],
    }),
  );
}

function group(title: string, lines: readonly FigureLine[]): FigureGroup {
  return {title, lines: lines.map(([label, figure]) => ({label, cells: [figure]}))};
}
