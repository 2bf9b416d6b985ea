export type Point = readonly [x: number, y: number];

/** Hundredths of a millimetre are finer than any printer draws. */
export function mm(length: number): number {
  return Number(length.toFixed(2));
}

/** Straight strokes through the points, as path data. */
export function stroke(...points: readonly Point[]): string {
  return points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`).join('');
}

export function closed(...points: readonly Point[]): string {
  return `${stroke(...points)}Z`;
}

/** A bow from one point to another, drawn towards `by`. */
export function bow([x1, y1]: Point, [bx, by]: Point, [x2, y2]: Point): string {
  return `M${mm(x1)} ${mm(y1)}Q${mm(bx)} ${mm(by)} ${mm(x2)} ${mm(y2)}`;
}

export function circle([x, y]: Point, radius: number): string {
  const r = mm(radius);
  return `M${mm(x - radius)} ${mm(y)}a${r} ${r} 0 1 0 ${mm(2 * radius)} 0a${r} ${r} 0 1 0 ${mm(-2 * radius)} 0Z`;
}
