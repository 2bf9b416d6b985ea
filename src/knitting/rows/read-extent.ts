import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree} from './phrase-tree.ts';
import type {Extent, Landmark, Sized} from './row-syntax.ts';

type Says =
  | 'to end'
  | 'to last'
  | 'times'
  | 'more'
  | {readonly landmark: Landmark; readonly distance: 'none' | 'before' | 'past'};

/** How far or how often, in the notation of `phrase-tree.ts`. `#` is the number of stitches or of times. */
const extentPhrases: readonly (readonly [Says, readonly string[]])[] = [
  [
    'to end',
    [
      'to|until end (of) (this) (row|round|needle|work|side)',
      'to|until begin of round',
      'to|until bor',
      'across (to) (end) (row|round)',
      'all (st) (across)',
      'all (a) round|around|along|over',
      'around|round|along (row)',
      'every|each st (across) (to) (end)',
      'in every|each st',
      'remain st (to) (end)',
      'all remain st',
      'remainder (of) (row|round|st|needle) (plain)',
      'those leave|remain (at) (end)',
      'st leave|remain (at) (end)',
      'all along (row)',
      'whole row|round',
      '1|a row|round',
      'row|round',
      'back',
      'back to end|begin',
      'as far as|to end',
      'as often as required|necessary',
    ],
  ],
  [
    'to last',
    [
      'to|until last # (st) (remain)',
      'across to last # (st)',
      'to|until last (st)',
      'to|until within # (st) of|from end (of) (row|round|needle)',
      'to|until # (st) before|from end (of) (row|round)',
      'until (there) (are|is) (only) # (st) remain|leave (on) (needle)',
      'until (only) # remain|leave',
      'all but (last) # (st)',
      'to # before end',
    ],
  ],
  [
    'times',
    [
      '# time',
      '# time in all',
      '# time altogether|total',
      'x #',
      '# x',
      'a total of # time',
      'once',
      'twice',
      'thrice',
    ],
  ],
  [
    'more',
    [
      '# more time',
      '# time more',
      '# additional time',
      'another # time',
      'a further # time',
      'once|twice|thrice more',
      '# time again',
      'once again',
      '# more',
    ],
  ],
  ...landmarkPhrases('marker', 'marker|m', 'first|next|second|last|1|each marker'),
  ...landmarkPhrases('gap', 'gap', 'bo st|edge|loop', 'cast off st|edge', 'bo off st', 'buttonhole'),
  ...landmarkPhrases('turn', 'wrap st', 'last wrap st', 'wrap', 'last turn', 'turn', 'turning gap|point'),
  ...landmarkPhrases('double stitch', 'ds', 'double st', 'last ds', 'last double st', 'previous ds'),
];

const tree = makePhraseTree<Says>();
for (const [says, phrases] of extentPhrases) for (const phrase of phrases) addPhrase(tree, phrase, says);

/** The extent that begins at the cursor, or null and nothing read. */
export function readExtent(cursor: Cursor): Extent | null {
  const {tokens} = cursor.reading;
  const match = longestPhrase(tree, tokens, cursor.at, cursor.to);
  if (!match) return null;
  const from = cursor.at;
  cursor.at = match.next;
  const count = (): Sized => countIn(cursor, from, match.firstNumber);
  const {meaning} = match;
  if (meaning === 'to end') return {kind: 'to end'};
  if (meaning === 'to last') return {kind: 'to last', count: count()};
  if (meaning === 'times') return {kind: 'times', count: count()};
  if (meaning === 'more') return {kind: 'more', count: count(), isPlain: false};
  const {landmark, distance} = meaning;
  return {
    kind: 'to landmark',
    landmark,
    name: landmark === 'marker' ? readMarkerName(cursor) : null,
    before: distance === 'before' ? count() : null,
    past: distance === 'past' ? count() : null,
  };
}

/** `A` behind `marker` or `pm`; null, and nothing read, where there is none. */
export function readMarkerName(cursor: Cursor): string | null {
  const token = cursor.peek();
  if (token === undefined || !/^[a-h]$/.test(token.text) || !token.isApart) return null;
  cursor.at += 1;
  return token.text.toUpperCase();
}

/** The number at its place; `twice` and the like carry their own; `to last st` is one. */
function countIn(cursor: Cursor, from: number, firstNumber: number): Sized {
  if (firstNumber >= 0) return cursor.sizedAt(firstNumber);
  const value = cursor.reading.tokens[from]?.value || 1;
  return {values: [value], span: cursor.spanFrom(from)};
}

function landmarkPhrases(landmark: Landmark, ...names: readonly string[]) {
  const to = (distance: 'none' | 'before' | 'past', lead: string): readonly [Says, readonly string[]] => [
    {landmark, distance},
    names.map((name) => `${lead} ${name}`),
  ];
  return [
    to('none', 'to|until|before'),
    to('none', 'up to'),
    to('before', 'to|until # (st) before|from (last)'),
    to('before', 'to|until within # (st) of'),
    to('past', 'to|until # (st) past|beyond|after'),
  ];
}
