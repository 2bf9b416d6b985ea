import {colourWords} from './colour-words.ts';
import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree} from './phrase-tree.ts';
import type {StatedCount} from './row-syntax.ts';

const yarn = ['yarn', 'a', 'b', 'c', 'd', ...colourWords].join('|');
/** How a clause about the end of the yarn begins, in the notation of `phrase-tree.ts`. */
const openings = [
  `break|cut (off) ${yarn}`,
  `break|cut ${yarn} off`,
  'break off',
  'fasten (off)',
  'secure (end|yarn|tail)',
  'weave in',
  'sew (in|up) (end|tail)',
  'leave|leaving (a) (#|long) (cm|in|inch|inches) tail|end|length',
  `pass|run|take|bring|pull|sew (a) (${yarn}|end|tail|it|needle) through`,
  'pass|run|take|bring|pull|sew (end|tail) (of) yarn through',
  `yarn (${yarn}|end|tail|it) through`,
  'pass|pull (it|up|yarn) (up) tight|tightly|firmly|securely',
  'pass up',
  'gather up|tightly',
  'close opening|hole|top',
];
const tree = makePhraseTree<true>();
for (const phrase of openings) addPhrase(tree, phrase, true);

/** Behind `through` these say that a stitch is worked through its loop. */
const loopWords = ['back', 'backs', 'their', 'front'];

/**
 * Steps over `Break yarn and draw through remaining 8 sts`, `fasten off`, `cut yarn, thread through rem sts`. The count
 * that it names is one that the row states. Null, and nothing read, when something else begins here; otherwise whether
 * the yarn goes through the stitches, so that they come off the needle.
 */
export function readClosing(
  cursor: Cursor,
  stated: StatedCount[],
): {readonly isDrawnThrough: boolean} | null {
  const {tokens} = cursor.reading;
  const match = longestPhrase(tree, tokens, cursor.at, cursor.to);
  if (!match) return null;
  const isDrawnThrough = tokens[match.next - 1]?.text === 'through';
  if (isDrawnThrough && loopWords.includes(tokens[match.next]?.text ?? '')) return null;
  cursor.at = match.next;
  while (isInClause(cursor)) {
    const token = cursor.peek();
    const isCount = token?.kind === 'number' && /^(?:st|loop|remain)$/.test(cursor.peek(1)?.text ?? '');
    if (isCount && isDrawnThrough) {
      const span = {start: token.start, end: token.end};
      stated.push({kind: 'total', count: {values: cursor.sizedAt(cursor.at).values, span}, span});
    }
    cursor.at += 1;
  }
  return {isDrawnThrough};
}

/** Up to the next stop, or the next clause that is about the yarn again. */
function isInClause(cursor: Cursor): boolean {
  const token = cursor.peek();
  if (!token || /^[.,;)\]—]$/.test(token.text) || token.startsLine) return false;
  return !(token.text === '&');
}
