/**
 * The known name closest to `name` by edit distance (Damerau-Levenshtein, optimal string alignment), or null when
 * none is near enough to be a likely slip: at most a third of the letters, and at least one, may differ.
 */
export function nearestName(name: string, known: Iterable<string>): string | null {
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(name.toLowerCase(), candidate.toLowerCase());
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** Number of insertions, deletions, replacements and swaps of neighbours that turn `a` into `b`. */
export function editDistance(a: string, b: string): number {
  let beforePrevious: number[] = [];
  let previous = Array.from({length: b.length + 1}, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (previous[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (previous[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) cost = Math.min(cost, (beforePrevious[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    beforePrevious = previous;
    previous = current;
  }
  return previous[b.length] ?? 0;
}
