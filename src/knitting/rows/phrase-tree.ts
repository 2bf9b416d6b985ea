import {invariant} from '../../support/invariant.ts';
import {phraseWord, type Token} from './lex-row.ts';

/**
 * Phrases of several words with what each of them says, found by the longest match. A phrase is written
 * with `a|b` either, `(a)` or not, `#` a number, and letters and digits apart, as in `k # tog`.
 */
export interface PhraseTree<T> {
  readonly branches: Map<string, PhraseTree<T>>;
  meaning: T | null;
}

export interface PhraseMatch<T> {
  readonly meaning: T;
  /** Index of the first token behind the phrase. */
  readonly next: number;
  /** The numbers at the `#` places. */
  readonly numbers: readonly number[];
  /** Index of the token at the first `#`, or -1. */
  readonly firstNumber: number;
}

export function makePhraseTree<T>(): PhraseTree<T> {
  return {branches: new Map(), meaning: null};
}

/** The first phrase to be added keeps its meaning. */
export function addPhrase<T>(tree: PhraseTree<T>, phrase: string, meaning: T): void {
  let ends = [tree];
  for (const part of phrase.split(/\s+/)) {
    invariant(!/^\([^)]*$|^[^(]*\)$/.test(part), `an optional word has no space in it: ${phrase}`);
    const isOptional = part.startsWith('(');
    const words = (isOptional ? part.slice(1, -1) : part)
      .split('|')
      .flatMap((word) => phraseWord(word) ?? []);
    if (words.length === 0) continue;
    const grown = ends.flatMap((end) => words.map((word) => branch(end, word)));
    ends = [...new Set(isOptional ? [...ends, ...grown] : grown)];
  }
  for (const end of ends) end.meaning ??= meaning;
}

/** The longest phrase that begins at token `from` and ends before token `to`. */
export function longestPhrase<T>(
  tree: PhraseTree<T>,
  tokens: readonly Token[],
  from: number,
  to: number,
): PhraseMatch<T> | null {
  return search(tree, tokens, from, to, []);
}

/** A number may be one that the phrase names or one at a `#` place: both are followed. */
function search<T>(
  node: PhraseTree<T>,
  tokens: readonly Token[],
  index: number,
  to: number,
  slots: readonly number[],
): PhraseMatch<T> | null {
  const token = index < to ? tokens[index] : undefined;
  let best: PhraseMatch<T> | null = null;
  if (token) {
    const named = node.branches.get(token.text);
    if (named) best = search(named, tokens, index + 1, to, slots);
    const slot = token.kind === 'number' ? node.branches.get('#') : undefined;
    const other = slot ? search(slot, tokens, index + 1, to, [...slots, index]) : null;
    if (other && (!best || other.next > best.next)) best = other;
  }
  if (best || node.meaning === null) return best;
  const numbers = slots.map((slot) => tokens[slot]?.value ?? 0);
  return {meaning: node.meaning, next: index, numbers, firstNumber: slots[0] ?? -1};
}

function branch<T>(tree: PhraseTree<T>, word: string): PhraseTree<T> {
  let next = tree.branches.get(word);
  if (!next) {
    next = makePhraseTree<T>();
    tree.branches.set(word, next);
  }
  return next;
}
