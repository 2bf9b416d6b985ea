import {invariant} from '../../support/invariant.ts';
import {phraseWord, type Token} from './lex-row.ts';

/**
 * Phrases of several words with what each of them says, found by the longest match. A phrase is written
 * with `a|b` either, `(a)` or not, `#` a number, and letters and digits apart, as in `k # tog`.
 */
export interface PhraseTree<T> {
  /** Grown where they are asked for, see `grow`. */
  readonly branches: Map<string, PhraseTree<T>>;
  meaning: T | null;
  /** Phrases that go on from here and have not been followed yet. */
  pending: Pending<T>[];
}

interface Pending<T> {
  readonly parts: readonly Part[];
  readonly from: number;
  readonly meaning: T;
}

interface Part {
  readonly words: readonly string[];
  readonly isOptional: boolean;
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
  return {branches: new Map(), meaning: null, pending: []};
}

/** The first phrase to be added keeps its meaning. */
export function addPhrase<T>(tree: PhraseTree<T>, phrase: string, meaning: T): void {
  const parts = phrase.split(/\s+/).flatMap((part): Part[] => {
    invariant(!/^\([^)]*$|^[^(]*\)$/.test(part), `an optional word has no space in it: ${phrase}`);
    const isOptional = part.startsWith('(');
    const words = (isOptional ? part.slice(1, -1) : part)
      .split('|')
      .flatMap((word) => phraseWord(word) ?? []);
    return words.length === 0 ? [] : [{words, isOptional}];
  });
  tree.pending.push({parts, from: 0, meaning});
}

/**
 * Follows the phrases that wait at a node by one word. All ways to say all phrases are hundreds of thousands of nodes;
 * a text asks for a few hundred of them.
 */
function grow<T>(node: PhraseTree<T>): void {
  if (node.pending.length === 0) return;
  const waiting = node.pending;
  node.pending = [];
  for (const {parts, from, meaning} of waiting) {
    let at = from;
    for (let part = parts[at]; part; part = parts[at]) {
      at += 1;
      for (const word of part.words) branch(node, word).pending.push({parts, from: at, meaning});
      if (!part.isOptional) break;
      if (at === parts.length) node.meaning ??= meaning;
    }
    if (from === parts.length) node.meaning ??= meaning;
  }
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
  grow(node);
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
