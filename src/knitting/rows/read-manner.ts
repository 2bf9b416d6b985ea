import {colourWords} from './colour-words.ts';
import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree} from './phrase-tree.ts';
import type {Stitch} from './stitch.ts';
import {makeTogether} from './stitch-makers.ts';
import {knitTwisted, purlTwisted, slip, slipKnitwise, slipPurlwise} from './stitches.ts';

type Says = 'twisted' | 'knitwise' | 'purlwise' | 'front' | 'back' | 'nothing';

/** The yarn that a stitch is worked with says nothing of its count. */
const colours = [...colourWords, 'a', 'b', 'c', 'd'].join('|');
const colourPhrases = [
  `with|using|in (main|contrast|light|dark|colour) ${colours} (colour|yarn)`,
  'with|using|in main|contrast|light|dark colour|yarn',
  colours,
];

/** What may be said behind a stitch of how it is worked, in the notation of `phrase-tree.ts`. */
const mannerPhrases: readonly (readonly [Says, readonly string[]])[] = [
  [
    'twisted',
    [
      'tbl',
      'through|in|into|from|at (their) back (of) (st|loop)',
      'through (their) backs',
      'take (them) off at|from back',
      'take (them) at|from back',
      'taken at|from back',
      'inserting needle at back',
      'twist',
    ],
  ],
  ['knitwise', ['kwise', 'k wise', 'as if (about) to k', 'as to k', 'as for k', 'as if k', 'k way']],
  ['purlwise', ['pwise', 'p wise', 'as if (about) to p', 'as to p', 'as for p', 'as if p']],
  [
    'front',
    [
      'wyif',
      'wyf',
      'with yarn in|at|to front (of) (work|needle)',
      'keep yarn in front (of) (work|needle)',
      'yarn in front',
    ],
  ],
  [
    'back',
    [
      'wyib',
      'wyb',
      'with yarn in|at|to back (of) (work|needle)',
      'keep yarn in|at back (of) (work|needle)',
      'yarn in back',
    ],
  ],
  [
    'nothing',
    [
      'taken|take (them) in front',
      'in front',
      'loosely|tightly|firmly|neatly|plain|singly|separately',
      'as usual',
      'off needle',
      'drop (all) extra loop|wrap',
      'wrap yarn twice|# (time) (round|around) (needle) (for) (each) (st)',
      ...colourPhrases,
      'in seed|moss|garter|g|st st',
      'in (establish) pattern|rib (as) (establish)',
      'in stockinette|stocking (st)',
    ],
  ],
];

const tree = makePhraseTree<Says>();
for (const [says, phrases] of mannerPhrases) for (const phrase of phrases) addPhrase(tree, phrase, says);

/** Words with which a manner may also begin behind a comma: `knit three together, taking them off at the back`. */
const behindComma = ['take', 'keep', 'inserting', 'with', 'drop', 'wrap'];
const places = ['in', 'into'];
const which = ['next', '1', 'last', 'same', 'each'];

export interface Manner {
  readonly stitch: Stitch;
  readonly yarn: 'front' | 'back' | null;
}

/** Reads how the stitch is worked; the stitch comes back as it then is. */
export function readManner(cursor: Cursor, plain: Stitch): Manner {
  let stitch = plain;
  let yarn: Manner['yarn'] = null;
  for (;;) {
    const from = cursor.at;
    if (cursor.is(',') && behindComma.includes(cursor.peek(1)?.text ?? '')) cursor.at += 1;
    const match = longestPhrase(tree, cursor.reading.tokens, cursor.at, cursor.to);
    if (!match) {
      cursor.at = from;
      if (stitch.kind !== 'plain' && takeNextStitch(cursor)) continue;
      return {stitch, yarn};
    }
    cursor.at = match.next;
    if (match.meaning === 'front' || match.meaning === 'back') yarn = match.meaning;
    else stitch = worked(stitch, match.meaning);
  }
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
