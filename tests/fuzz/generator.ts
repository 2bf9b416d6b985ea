/** Numbers that look like chance and are the same in every run. */
export interface Generator {
  /** A whole number from 0 to `below` - 1; 0 when `below` is less than 1. */
  whole(below: number): number;
  pick<T>(list: readonly [T, ...T[]]): T;
  /** Null for an empty list. */
  pick<T>(list: readonly T[]): T | null;
}

/** Mulberry32, in the public domain: small, quick, and good enough to choose what to break next. */
export function generator(seed: number): Generator {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return (mixed ^ (mixed >>> 14)) >>> 0;
  };
  const whole = (below: number) => (below < 1 ? 0 : next() % Math.floor(below));
  return {whole, pick: <T>(list: readonly T[]) => list[whole(list.length)] ?? null} as Generator;
}

/** A seed of its own for each input, so that any one of them can be made again without those before it. */
export function seedOf(seed: number, name: string, index: number): number {
  let hash = seed >>> 0;
  for (const character of `${name} ${index}`) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  return hash;
}
