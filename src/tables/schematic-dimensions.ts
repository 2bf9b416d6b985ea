import {type PieceGauges, type PlacedPoint, placePoint} from '../knitting/pieces/piece-outline.ts';
import type {Panel, PieceMark, Point, Run} from '../knitting/pieces/worked-piece.ts';
import {type Millimetres, millimetres} from '../knitting/units.ts';

/** A measure on a schematic: between two points of the piece, level or upright. */
export interface Dimension {
  /** `mark` lies across the piece at a mark, `neck` upright in the opening above a divide. */
  readonly place: 'foot' | 'top' | 'length' | 'chain' | 'mark' | 'neck';
  readonly from: PlacedPoint;
  readonly to: PlacedPoint;
  readonly length: Millimetres;
  /** The mark's name; null for a measure that needs no name. */
  readonly name: string | null;
}

/** Everything a schematic of one panel shows the measure of. Widths of a tube are those of the tube laid flat. */
export function dimensionsOf(
  panel: Panel,
  marks: readonly PieceMark[],
  gauges: PieceGauges,
): readonly Dimension[] {
  const place = (point: Point) => placePoint(point, gauges, panel);
  const level = (
    where: 'foot' | 'top' | 'mark',
    row: number,
    left: number,
    right: number,
    name: string | null = null,
  ): Dimension => {
    const [from, to] = [place({x: left, row}), place({x: right, row})];
    return {place: where, from, to, length: millimetres(to.x.minus(from.x)), name};
  };
  const upright = (where: 'length' | 'chain' | 'neck', low: number, high: number, x: number): Dimension => {
    const [from, to] = [place({x, row: low}), place({x, row: high})];
    return {place: where, from, to, length: millimetres(to.y.minus(from.y)), name: null};
  };
  const {base, parts} = panel;
  const top = Math.max(...[base, ...parts].map(({right}) => right.at(-1)?.row ?? 0));
  const widest = Math.max(...base.right.map(({x}) => x));
  const levels = [...new Set([0, ...marks.map(({row}) => row), top])].sort((a, b) => a - b);
  const [first, second] = parts;
  const neck = first && second ? [(first.left.at(-1)?.x ?? 0) + (second.right.at(-1)?.x ?? 0)] : [];
  return [
    level('foot', 0, base.left[0]?.x ?? 0, base.right[0]?.x ?? 0),
    upright('length', 0, top, -widest),
    ...(levels.length > 2
      ? levels.slice(1).map((high, index) => upright('chain', levels[index] ?? 0, high, widest))
      : []),
    ...pairs(topEnds(panel, marks)).map(([left, right]) => level('top', top, left, right)),
    ...marks
      .filter(({row}) => row > 0)
      .map(({row, leftX, rightX, name}) => level('mark', row, leftX, rightX, name)),
    ...neck.flatMap((twice) =>
      top > (first?.startRow ?? top) ? [upright('neck', first?.startRow ?? 0, top, twice / 2)] : [],
    ),
  ].filter(({length}) => length.numerator > 0n);
}

/** Where the chain of widths at the top is divided: at the ends of all runs, and at the outer edge of shoulders. */
function topEnds({base, parts}: Panel, marks: readonly PieceMark[]): readonly number[] {
  const shoulders = marks
    .filter(({name}) => name === 'shoulder')
    .flatMap(({leftX, rightX}) => [leftX, rightX]);
  const runs: readonly Run[] = parts.length > 0 ? parts : [base];
  const ends = runs.flatMap(({left, right}) => [left.at(-1)?.x ?? 0, right.at(-1)?.x ?? 0]);
  return [...new Set([...ends, ...shoulders])].sort((a, b) => a - b);
}

function pairs(values: readonly number[]): readonly (readonly [number, number])[] {
  return values.slice(1).map((value, index) => [values[index] ?? value, value]);
}
