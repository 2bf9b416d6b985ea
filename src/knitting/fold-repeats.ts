/** A passage with its repeats folded: things in a row, or a passage worked `times` times. */
export type Folded<T> =
  | {readonly kind: 'one'; readonly value: T}
  | {readonly kind: 'repeat'; readonly times: number; readonly passage: readonly Folded<T>[]};

/** A passage that a knitter can keep in mind; also keeps folding fast. */
const longestPassage = 64;

/**
 * Folds neighbouring equal passages: `a b a b a` becomes 2 × (a b), a. The repeat that saves most is taken first, the
 * earliest of equals; what stands before, inside and behind it is folded likewise. Unfolding gives `values` back.
 */
export function foldRepeats<T>(values: readonly T[]): readonly Folded<T>[] {
  const best = bestRepeat(values);
  if (!best) return values.map((value) => ({kind: 'one', value}));
  const {start, length, times} = best;
  return [
    ...foldRepeats(values.slice(0, start)),
    {kind: 'repeat', times, passage: foldRepeats(values.slice(start, start + length))},
    ...foldRepeats(values.slice(start + length * times)),
  ];
}

function bestRepeat<T>(values: readonly T[]): {start: number; length: number; times: number} | null {
  let best: {start: number; length: number; times: number} | null = null;
  let saved = 0;
  for (let length = 1; length <= Math.min(longestPassage, values.length / 2); length++) {
    let run = 0;
    for (let end = length; end < values.length; end++) {
      run = values[end] === values[end - length] ? run + 1 : 0;
      const times = Math.floor(run / length) + 1;
      if ((times - 1) * length > saved) {
        saved = (times - 1) * length;
        best = {start: end + 1 - run - length, length, times};
      }
    }
  }
  return best;
}
