import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree, type PhraseMatch} from './phrase-tree.ts';
import {readColour} from './read-colour.ts';
import type {Stitch} from './stitch.ts';
import {makeTogether} from './stitch-makers.ts';
import {knitTwisted, purlTwisted, slip, slipKnitwise, slipPurlwise} from './stitches.ts';

type Says = 'twisted' | 'knitwise' | 'purlwise' | 'front' | 'back' | 'nothing';

/** What may be said behind a stitch of how it is worked, in the notation of `phrase-tree.ts`. */
const mannerPhrases: readonly (readonly [Says, readonly string[]])[] = [
  [
    'twisted',
    [
      'tbl',
      't b l',
      'through|in|into|from|at (their) back (part) (of) (st|loop)',
      'through (their) backs',
      'behind',
      'inserting|insert|bring|pass|take needle in|into|at back (part) (of) (st|loop)',
      'take|taking (up) back part|loop (of) (st|loop)',
      'crossed',
      'take (them) off at|from back',
      'take (them) at|from back',
      'taken at|from back',
      'inserting needle at back',
      'twist',
    ],
  ],
  [
    'knitwise',
    ['kwise', 'k wise', 'as if (about) to k', 'as to k', 'as for k', 'as if k', 'as if for k', 'k way'],
  ],
  ['purlwise', ['pwise', 'p wise', 'as if (about) to p', 'as to p', 'as for p', 'as if for p', 'as if p']],
  [
    'front',
    [
      'wyif',
      'wyf',
      '(with) yarn (hold|held) in|at|to front (of) (work|needle)',
      'keep|hold|bring yarn in|at|to front (of) (work|needle)',
    ],
  ],
  [
    'back',
    [
      'wyib',
      'wyb',
      '(with) yarn (hold|held) in|at|to back (of) (work|needle)',
      'keep|hold|bring yarn in|at|to back (of) (work|needle)',
    ],
  ],
  [
    'nothing',
    [
      'taken|take (them) in front',
      'in front',
      'loosely|tightly|firmly|neatly|plain|singly|separately',
      'as usual|before|establish|previously',
      'off needle',
      'drop (all) extra loop|wrap',
      'wrap yarn twice|# (time) (round|around) (needle) (for) (each) (st)',
      'in seed|moss|garter|g|st st',
      'in (establish) pattern|rib (as) (establish)',
      'in stockinette|stocking (st)',
    ],
  ],
];

const tree = makePhraseTree<Says>();
for (const [says, phrases] of mannerPhrases) for (const phrase of phrases) addPhrase(tree, phrase, says);

/** Words with which a manner may also begin behind a comma: `knit three together, taking them off at the back`. */
const behindComma = ['take', 'keep', 'inserting', 'insert', 'with', 'drop', 'wrap', 'taking', 'hold'];
const places = ['in', 'into'];
const which = ['next', '1', 'last', 'same'];

export interface Manner {
  readonly stitch: Stitch;
  readonly yarn: 'front' | 'back' | null;
  /** The yarn by its name, `MC`; null where none is named. */
  readonly colour: string | null;
}

/** Reads how the stitch is worked; the stitch comes back as it then is. */
export function readManner(cursor: Cursor, plain: Stitch): Manner {
  let stitch = plain;
  let yarn: Manner['yarn'] = null;
  let colour: Manner['colour'] = null;
  for (;;) {
    const from = cursor.at;
    if (cursor.is(',') && behindComma.includes(cursor.peek(1)?.text ?? '')) cursor.at += 1;
    const match = longestPhrase(tree, cursor.reading.tokens, cursor.at, cursor.to) ?? bracketed(cursor);
    if (!match) {
      cursor.at = from;
      if (stitch.kind === 'slip' && takeLetterOfManner(cursor)) {
        stitch = worked(stitch, cursor.peek(-1)?.text === 'k' ? 'knitwise' : 'purlwise');
        continue;
      }
      const named = readColour(cursor);
      colour = named ?? colour;
      if (named !== null || (stitch.kind !== 'plain' && takeNextStitch(cursor))) continue;
      return {stitch, yarn, colour};
    }
    cursor.at = match.next;
    if (match.meaning === 'front' || match.meaning === 'back') yarn = match.meaning;
    else stitch = worked(stitch, match.meaning);
  }
}

/** `slip 5 (yarn in front)`. */
function bracketed({reading, at, to}: Cursor): PhraseMatch<Says> | null {
  if (reading.tokens[at]?.text !== '(') return null;
  const match = longestPhrase(tree, reading.tokens, at + 1, to);
  const isClosed = match !== null && match.next < to && reading.tokens[match.next]?.text === ')';
  return isClosed ? {...match, next: match.next + 1} : null;
}

/** The p of `sl 1p`, which is no purl of its own. */
function takeLetterOfManner(cursor: Cursor): boolean {
  const token = cursor.peek();
  if (!token || token.isApart || (token.text !== 'p' && token.text !== 'k')) return false;
  if (cursor.peek(-1)?.kind !== 'number' || cursor.peek(1)?.kind === 'number') return false;
  cursor.at += 1;
  return true;
}

/** `kfb in next st` says no more than `kfb`. */
function takeNextStitch(cursor: Cursor): boolean {
  if (!places.includes(cursor.peek()?.text ?? '') || !which.includes(cursor.peek(1)?.text ?? ''))
    return false;
  if (!cursor.is('st', 2)) return false;
  cursor.at += 3;
  return true;
}

function worked(stitch: Stitch, says: Says): Stitch {
  if (stitch.kind === 'slip') {
    if (says === 'knitwise') return slipKnitwise;
    return says === 'purlwise' ? slipPurlwise : stitch === slip ? slip : stitch;
  }
  if (says !== 'twisted') return stitch;
  if (stitch.id === 'k') return knitTwisted;
  if (stitch.id === 'p') return purlTwisted;
  const {face, hand, uses} = stitch;
  const isTogether = face.shape === 'decrease' && /^[kp]\d+tog$/.test(stitch.id);
  return isTogether && (hand === 'knit' || hand === 'purl') ? makeTogether(hand, uses, true) : stitch;
}
