import {colourWords} from './colour-words.ts';
import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree, type PhraseTree} from './phrase-tree.ts';

/** Words before the name of a yarn, in the notation of `phrase-tree.ts`. */
const leads = treeOf([
  'with|using|in|join (colour)',
  'join (in|on) (colour)',
  'change to (colour)',
  'pick up (colour)',
  'carry|carrying (colour)',
  'colour',
]);
/** What may stand behind the name and says no more. */
const tails = treeOf(['only', 'colour|yarn|shade', 'held|hold|used double|tog', 'double|alone|again']);
const names = makePhraseTree<string>();
for (const word of colourWords) addPhrase(names, `(light|dark|pale|deep) ${word}`, word);
for (const [name, phrase] of [
  ['MC', 'main|background (colour|yarn|shade)'],
  ['CC', 'contrast|contrasting (colour|yarn|shade)'],
  ['light', 'light colour|yarn|shade'],
  ['dark', 'dark colour|yarn|shade'],
] as const) {
  addPhrase(names, phrase, name);
}
/** Names that are one only behind `with` and its like. */
const ledNames = new Set(['light', 'dark', 'main', 'contrast', 'background']);
const upper = new Set(['mc', 'cc']);

/**
 * Reads `with MC`, `using A`, `in white`, `MC`, `CC1`, `B`: what the text calls the yarn. Null, and nothing read, where
 * none is named. Single letters count only when they are written large, so that `a` stays a word.
 */
export function readColour(cursor: Cursor): string | null {
  const from = cursor.at;
  const isLed = takePhrase(cursor, leads);
  const name = readName(cursor, isLed);
  if (name === null) {
    cursor.at = from;
    return null;
  }
  const both = isLed ? readSecond(cursor) : null;
  takePhrase(cursor, tails);
  return both === null ? name : `${name} + ${both}`;
}

/** `and B held together`. */
function readSecond(cursor: Cursor): string | null {
  const from = cursor.at;
  const second = cursor.take('&') ? readName(cursor, true) : null;
  if (second !== null && (cursor.is('hold') || cursor.is('held') || cursor.is('tog'))) return second;
  cursor.at = from;
  return null;
}

/** `Drop A`, `twist yarns`: what is done with a yarn that is not worked with next. False, and nothing read, otherwise. */
export function skipYarn(cursor: Cursor): boolean {
  const from = cursor.at;
  if (cursor.take('drop', 'carry', 'strand') && readName(cursor, true) !== null) return true;
  cursor.at = from;
  return false;
}

/**
 * Reads `With drab, …` at the start of a row: a yarn by a name of its own, which is known from here on in the block.
 * Null, and nothing read, when something else stands there.
 */
export function readNewColour(cursor: Cursor): string | null {
  const [lead, name, stop] = [cursor.peek(), cursor.peek(1), cursor.peek(2)];
  if (!lead || !['with', 'using'].includes(lead.text) || name?.kind !== 'word') return null;
  if (!stop || !/^[,:—]$/.test(stop.text)) return null;
  cursor.at += 2;
  cursor.reading.colours.add(name.text);
  return name.text;
}

function readName(cursor: Cursor, isLed: boolean): string | null {
  const {tokens, colours} = cursor.reading;
  const token = cursor.peek();
  if (!token) return null;
  const phrase = longestPhrase(names, tokens, cursor.at, cursor.to);
  if (phrase) {
    cursor.at = phrase.next;
    return `${upper.has(phrase.meaning) ? phrase.meaning.toUpperCase() : phrase.meaning}${readNumber(cursor)}`;
  }
  if (colours.has(token.text) || (isLed && ledNames.has(token.text))) {
    cursor.at += 1;
    return token.text;
  }
  return readLetter(cursor, isLed);
}

/** `A` to `H`; behind `with` or `using` also `M`, and `C1` for the first of several contrasts. */
function readLetter(cursor: Cursor, isLed: boolean): string | null {
  const token = cursor.peek();
  if (!token || !(isLed ? /^[a-hm]$/ : /^[a-h]$/).test(token.text)) return null;
  const before = cursor.reading.tokens[cursor.at - 1];
  if (!token.isApart && before?.kind !== 'sign' && before?.kind !== 'number') return null;
  const letter = cursor.reading.text.slice(token.start, token.end);
  const next = cursor.peek(1);
  const isJoined = next !== undefined && !next.isApart && (next.kind === 'word' || next.kind === 'number');
  if (letter !== letter.toUpperCase() || (isJoined && !(isLed && next.kind === 'number'))) return null;
  cursor.at += 1;
  return `${letter}${readNumber(cursor)}`;
}

function readNumber(cursor: Cursor): string {
  const token = cursor.peek();
  if (token?.kind !== 'number' || token.isApart) return '';
  cursor.at += 1;
  return token.text;
}

function takePhrase(cursor: Cursor, tree: PhraseTree<true>): boolean {
  const match = longestPhrase(tree, cursor.reading.tokens, cursor.at, cursor.to);
  if (match) cursor.at = match.next;
  return match !== null;
}

function treeOf(phrases: readonly string[]): PhraseTree<true> {
  const tree = makePhraseTree<true>();
  for (const phrase of phrases) addPhrase(tree, phrase, true);
  return tree;
}
