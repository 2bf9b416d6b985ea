/** A size whose count breaks the equal step of the others. */
export interface OddSize {
  /** 0 is the first size. */
  readonly index: number;
  readonly count: number;
  /** The count that would keep the step. */
  readonly expected: number;
}

export interface SizeSteps {
  /** From each size to the next; the step that all would share, or null when no single count explains the rest. */
  readonly step: number | null;
  readonly odd: OddSize | null;
}

/**
 * Counts of one row in several sizes usually grow by one step. Finds that step, and the one count that breaks it, when
 * changing that count alone makes all steps equal: 19 (16, 23, 30) has the step 7 once 19 is 9. Needs four sizes to tell
 * which of them is odd; unequal steps may also be meant, so this is a hint and no proof.
 */
export function sizeSteps(counts: readonly number[]): SizeSteps {
  const [first = 0, second = first] = counts;
  if (isLine(counts, first, second - first)) return {step: second - first, odd: null};
  if (counts.length < 4) return {step: null, odd: null};
  for (const [index, count] of counts.entries()) {
    const others = counts.map((value, size) => ({value, size})).filter(({size}) => size !== index);
    const [a, b] = others;
    if (!a || !b) break;
    const step = (b.value - a.value) / (b.size - a.size);
    const start = a.value - a.size * step;
    if (others.every(({value, size}) => value === start + size * step) && Number.isInteger(step)) {
      return {step, odd: {index, count, expected: start + index * step}};
    }
  }
  return {step: null, odd: null};
}

function isLine(counts: readonly number[], start: number, step: number): boolean {
  return counts.every((count, size) => count === start + size * step);
}
