/** Where a dot stands: `level` 0 on the line, 1 above it, and so on. */
export interface StackedDot {
  readonly x: number;
  readonly level: number;
}

/** Lifts each dot to the lowest level at which it touches no other; dots nearer than `pitch` touch. From left to right. */
export function stackDots(positions: readonly number[], pitch: number): readonly StackedDot[] {
  const lastAtLevel: number[] = [];
  return [...positions]
    .sort((a, b) => a - b)
    .map((x) => {
      const free = lastAtLevel.findIndex((last) => x - last >= pitch);
      const level = free === -1 ? lastAtLevel.length : free;
      lastAtLevel[level] = x;
      return {x, level};
    });
}
