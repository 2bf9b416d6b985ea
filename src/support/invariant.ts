/** Throws when `condition` does not hold: a bug of ours, never the author's mistake. */
export function invariant(condition: unknown, why: string): asserts condition {
  if (!condition) throw new Error(`bug: ${why}`);
}
