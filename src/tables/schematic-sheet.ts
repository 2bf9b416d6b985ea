import type {Fraction} from '../knitting/fraction.ts';
import type {PlacedPoint} from '../knitting/pieces/piece-outline.ts';

/** Where a panel lies on paper; all in millimetres of paper, y downward. */
export interface Sheet {
  /** The piece is this many times larger than the drawing. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  readonly x: (across: Fraction) => number;
  readonly y: (up: Fraction) => number;
  /** Lines for measures outside the outline. */
  readonly aboveTop: number;
  readonly belowFoot: number;
  readonly leftOf: number;
  readonly rightOf: number;
}

const mostWidth = 86;
const mostHeight = 112;
const margin = {left: 22, right: 34, top: 10, bottom: 12};
const lineGap = 4.5;

/** The largest drawing, at a scale of a round number, that leaves room for the measures around it. */
export function sheetFor(outline: readonly PlacedPoint[]): Sheet {
  const xs = outline.map(({x}) => x.toNumber());
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const top = Math.max(...outline.map(({y}) => y.toNumber()));
  const scale = scaleFor(most - least, top);
  const x = (across: number) => mm(margin.left + (across - least) / scale);
  const y = (up: number) => mm(margin.top + (top - up) / scale);
  return {
    scale,
    width: mm(margin.left + (most - least) / scale + margin.right),
    height: mm(margin.top + top / scale + margin.bottom),
    x: (across) => x(across.toNumber()),
    y: (up) => y(up.toNumber()),
    aboveTop: mm(margin.top - lineGap),
    belowFoot: mm(y(0) + lineGap),
    leftOf: mm(margin.left - lineGap),
    rightOf: mm(x(most) + lineGap),
  };
}

function scaleFor(width: number, height: number): number {
  for (let decade = 1; ; decade *= 10) {
    for (const step of [1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8]) {
      const scale = step * decade;
      if (width / scale <= mostWidth && height / scale <= mostHeight) return scale;
    }
  }
}

function mm(length: number): number {
  return Number(length.toFixed(2));
}
