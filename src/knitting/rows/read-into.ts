import type {Cursor} from './cursor.ts';
import {longestPhrase} from './phrase-tree.ts';
import type {IntoStep, Step} from './row-syntax.ts';

/**
 * Reads `in next st`, `all in the same st`, `into next 2 sts` behind a group that began at token `from`, and makes the
 * group one step. Null, and nothing read, when it does not stand there.
 */
export function readInto(cursor: Cursor, steps: readonly Step[], from: number): IntoStep | null {
  const {phrases, tokens} = cursor.reading;
  const match = longestPhrase(phrases, tokens, cursor.at, cursor.to);
  if (match?.meaning.says !== 'into') return null;
  cursor.at = match.next;
  const stitches = match.numbers[0];
  const isDouble = tokens.slice(match.next - 3, match.next).some((token) => token.text === 'double');
  return {kind: 'into', steps, uses: stitches ?? (isDouble ? 2 : 1), span: cursor.spanFrom(from)};
}
