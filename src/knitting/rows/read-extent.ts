import type {Cursor} from './cursor.ts';
import {addPhrase, longestPhrase, makePhraseTree} from './phrase-tree.ts';
import type {Extent, Landmark, Sized} from './row-syntax.ts';

type Says =
  | 'to end'
  | 'to last'
  | 'times'
  | 'more'
  | {readonly landmark: Landmark; readonly distance: Distance};

type Distance = 'none' | 'before' | 'past';

const whichMarker = 'first|next|second|last|1|each|side|centre|center|gusset|raglan|thumb|heel|shoulder';

/** What stands before the name of a landmark. */
const leads: readonly (readonly [Distance, string])[] = [
  ['none', 'to|until|before'],
  ['none', 'up to'],
  ['before', 'to|until # (st) before|from (last)'],
  ['before', 'to|until within # (st) of'],
  ['past', 'to|until # (st) past|beyond|after'],
];

/** How far or how often, in the notation of `phrase-tree.ts`. `#` is the number of stitches or of times. */
const extentPhrases: readonly (readonly [Says, readonly string[]])[] = [
  [
    'to end',
    [
      'to|until end (of) (this) (row|round|needle|work|side)',
      'across (to) (end) (of) (row|round)',
      'all (st) (across)',
      'all (a) round|around|along|over',
      'around|round|along (row)',
      'every|each st (across) (to) (end)',
      'in|into every|each st',
      'remain st (to) (end)',
      'all remain st',
      'remainder (of) (row|round|st|needle) (plain)',
      'those leave|remain (at) (end)',
      'st leave|remain (at) (end)',
      'all along (row)',
      'all way across|round|around|along (row|round)',
      'right across|round|along',
      'all through (row)',
      'throughout (row|round)',
      'until row|round is complete|completed|finish',
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
      'until (only) # (st) (are|is) remain|leave (on) (needle)',
      'to|until # last (st)',
      'to|until within # (st) of|from end',
      'all but (last) # (st)',
      'to # before end',
    ],
  ],
  [
    'times',
    [
      '# time',
      '# time in all|succession',
      '# time over|running|successively',
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
  ...landmarkPhrases('marker', 'marker|m', `${whichMarker} marker|m`),
  ...landmarkPhrases(
    'round start',
    'begin of round',
    'bor (marker)',
    'begin of round marker',
    'begin marker',
  ),
  ...landmarkPhrases('gap', 'gap', 'bo st|edge|loop', 'cast off st|edge', 'bo off st', 'buttonhole'),
  ...landmarkPhrases('turn', 'wrap st', 'last wrap st', 'wrap', 'last turn', 'turn', 'turning gap|point'),
  ...landmarkPhrases('double stitch', 'ds', 'double st', 'last ds', 'last double st', 'previous ds'),
];

const tree = makePhraseTree<Says>();
for (const [says, phrases] of extentPhrases) for (const phrase of phrases) addPhrase(tree, phrase, says);

const letterTree = makePhraseTree<Distance>();
for (const [distance, lead] of leads) addPhrase(letterTree, `${lead} a|b|c|d|e|f|g|h`, distance);

/** The extent that begins at the cursor, or null and nothing read. */
export function readExtent(cursor: Cursor): Extent | null {
  const {tokens} = cursor.reading;
  const match = longestPhrase(tree, tokens, cursor.at, cursor.to);
  if (!match) return readToLetter(cursor);
  const behind = tokens[match.next]?.text ?? '';
  // `k1 all in next st` says nothing of how far.
  if (tokens[match.next - 1]?.text === 'all' && ['in', 'into'].includes(behind)) return null;
  const from = cursor.at;
  cursor.at = match.next;
  const count = (): Sized => countIn(cursor, from, match.firstNumber);
  const {meaning} = match;
  if (meaning === 'to end') return readFarther(cursor, tokens[from]?.text ?? '') ?? {kind: 'to end'};
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

/** `in each st to last 3 sts`: how far goes before each single one. Null, and nothing read, where it is not said. */
function readFarther(cursor: Cursor, first: string): Extent | null {
  const from = cursor.at;
  const farther = ['in', 'into', 'every', 'each'].includes(first) ? readExtent(cursor) : null;
  if (farther?.kind === 'to last' || farther?.kind === 'to landmark') return farther;
  cursor.at = from;
  return null;
}

/** `to A`, `to 2 sts before B`: a marker by its name alone, written large. */
function readToLetter(cursor: Cursor): Extent | null {
  const from = cursor.at;
  const match = longestPhrase(letterTree, cursor.reading.tokens, cursor.at, cursor.to);
  const letter = match && cursor.reading.tokens[match.next - 1];
  if (
    !match ||
    !letter ||
    cursor.reading.text[letter.start] === letter.text ||
    isInWord(cursor, match.next)
  ) {
    return null;
  }
  cursor.at = match.next;
  const count = () => countIn(cursor, from, match.firstNumber);
  return {
    kind: 'to landmark',
    landmark: 'marker',
    name: letter.text.toUpperCase(),
    before: match.meaning === 'before' ? count() : null,
    past: match.meaning === 'past' ? count() : null,
  };
}

function isInWord(cursor: Cursor, next: number): boolean {
  const token = cursor.reading.tokens[next];
  return token !== undefined && !token.isApart && token.kind !== 'sign';
}

/** `A` or `2` behind `marker` or `pm`; null, and nothing read, where there is none. */
export function readMarkerName(cursor: Cursor): string | null {
  const bracketed = cursor.is('(') && cursor.is(')', 2) ? 1 : 0;
  const token = cursor.peek(bracketed);
  if (token === undefined || !(token.isApart || bracketed === 1)) return null;
  const behind = cursor.peek(1)?.text ?? '';
  const isNumber = token.kind === 'number' && token.values.length === 1 && token.value < 100;
  if (!/^[a-h]$/.test(token.text) && !(isNumber && !['st', 'time', 'more', '/'].includes(behind)))
    return null;
  cursor.at += 1 + 2 * bracketed;
  return token.text.toUpperCase();
}

/** The number at its place; `twice` and the like carry their own; `to last st` is one. */
function countIn(cursor: Cursor, from: number, firstNumber: number): Sized {
  if (firstNumber >= 0) return cursor.sizedAt(firstNumber);
  const value = cursor.reading.tokens[from]?.value || 1;
  return {values: [value], span: cursor.spanFrom(from)};
}

function landmarkPhrases(landmark: Landmark, ...names: readonly string[]) {
  const to = (distance: Distance, lead: string): readonly [Says, readonly string[]] => [
    {landmark, distance},
    names.map((name) => `${lead} ${name}`),
  ];
  return leads.map(([distance, lead]) => to(distance, lead));
}
