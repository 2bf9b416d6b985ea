import {expect, test} from 'vitest';
import {foldRows} from '../../../src/knitting/pieces/fold-rows.ts';
import {writePieceRows} from '../../../src/knitting/pieces/write-piece-rows.ts';
import {type SamplePiece, samplePieces, work} from './sample-pieces.ts';

function written(name: SamplePiece) {
  return writePieceRows(work(samplePieces[name]).worked);
}

test('short rows turn before all the stitches left waiting, 7, then 14, then 20 at each end', () => {
  const [block] = written('shoulder in short rows');
  const left = [...(block?.text ?? '').matchAll(/to last (\d+) sts, turn/g)].map(([, count]) =>
    Number(count),
  );
  expect(left).toEqual([7, 7, 14, 14, 20, 20]);
  expect(block?.ending).toBe('Bind off the last 60 stitches.');
});

test('a group of rows that comes again is written once, with the count at its end', () => {
  expect(written('vest back')[0]?.text.split('\n').slice(8, 11)).toEqual([
    'Row 115 (RS): K1, ssk, k to last 3 sts, k2tog, k1. 90 sts.',
    'Row 116 (WS): Purl.',
    'Rows 117–130: rep rows 115–116. 76 sts.',
  ]);
});

test('each part above a divide, and each stretch behind a holder, is a block of its own', () => {
  expect(written('vest front').map(({title}) => title)).toEqual([null, 'left', 'right']);
  expect(written('mitten').map(({text}) => text.split('\n')[0])).toEqual(['cast on: 40', 'stitches: 40']);
  expect(written('sock').map(({ending}) => ending)).toEqual([
    null,
    null,
    'Graft the last 16 stitches, half of them to the other half.',
  ]);
});

/** Bound off at the one edge and decreased at the other in the same row. */
const both = (count: number) =>
  `cast on ${2 * count}\ndivide: ${count} left, ${count} right\nleft:\nat the side edge: bind off 3\nat the neck edge: decrease 1 every row once; work 1 row\nbind off\nright:`;

/** A row of each kind of shaping in words, and the count after it where that changes: worked out with a pencil. */
test.each([
  // Flat: decreases one stitch inside the edge, ssk at the right of the right side and k2tog at its left.
  [
    'cast on 20\ndecrease 1 at each edge every row 2 times',
    1,
    'K1, ssk, k to last 3 sts, k2tog, k1. 18 sts.',
  ],
  [
    'cast on 20\ndecrease 1 at each edge every row 2 times',
    2,
    'P1, p2tog, p to last 3 sts, ssp, p1. 16 sts.',
  ],
  [
    'cast on 20\ndecrease 2 at each edge every row once',
    1,
    'K1, ssk, ssk, k to last 5 sts, k2tog, k2tog, k1. 16 sts.',
  ],
  ['cast on 20\ndecrease 1 at the left edge every row 2 times', 1, 'K to last 3 sts, k2tog, k1. 19 sts.'],
  ['cast on 20\ndecrease 1 at the left edge every row 2 times', 2, 'P1, p2tog, p to end. 18 sts.'],
  ['cast on 20\ndecrease 1 at the right edge every row 2 times', 1, 'K1, ssk, k to end. 19 sts.'],
  ['cast on 6\ndecrease 1 at each edge every row once', 1, 'K1, ssk, k to last 3 sts, k2tog, k1. 4 sts.'],
  ['cast on 5\ndecrease 1 at each edge every row once', 1, 'Ssk, k to last 2 sts, k2tog. 3 sts.'],
  ['cast on 4\nwork 1 row\ndecrease 1 at each edge every row once', 2, 'P2tog, p to last 2 sts, ssp. 2 sts.'],
  ['cast on 3\ndecrease 1 at the right edge every row once', 1, 'K1, ssk, k to end. 2 sts.'],
  ['cast on 2\ndecrease 1 at the right edge every row once', 1, 'Ssk, k to end. 1 st.'],
  ['cast on 20\nincrease 1 at each edge every row 2 times', 1, 'K1, m1, k to last 1 st, m1, k1. 22 sts.'],
  ['cast on 20\nincrease 1 at each edge every row 2 times', 2, 'P1, m1p, p to last 1 st, m1p, p1. 24 sts.'],
  ['cast on 20\nincrease 2 at the left edge every row once', 1, 'K to last 1 st, m1, m1, k1. 22 sts.'],
  ['cast on 2\nincrease 1 at each edge every row once', 1, 'K1, m1, k to last 1 st, m1, k1. 4 sts.'],
  ['cast on 1\nincrease 1 at each edge every row once', 1, 'M1, k to end, m1. 3 sts.'],
  ['cast on 20\nbind off 5 at the beginning of the next 2 rows', 1, 'Bind off 5, k to end. 15 sts.'],
  ['cast on 20\nbind off 5 at the beginning of the next 2 rows', 2, 'Bind off 5, p to end. 10 sts.'],
  ['cast on 5\nbind off 5 at the beginning of the next row', 1, 'Bind off 5. 0 sts.'],
  [both(6), 1, 'Bind off 3, k to last 3 sts, k2tog, k1. 2 sts.'],
  [both(5), 1, 'Bind off 3, k to last 2 sts, k2tog. 1 st.'],
  ['cast on 20\nshort rows in steps 7 at each edge', 1, 'K to last 7 sts, turn.'],
  ['cast on 20\nshort rows in steps 7 at each edge', 2, 'P to last 7 sts, turn.'],
  ['cast on 20\nwork 2 rows', 1, 'Knit.'],
  ['cast on 20\nwork 2 rows', 2, 'Purl.'],
  // Evenly: a repeat where it comes out, else so many across.
  ['cast on 96\ndecrease 8 evenly', 1, '*K10, k2tog; rep from * to end. 88 sts.'],
  ['cast on 96\nwork 1 row\ndecrease 8 evenly', 2, '*P10, p2tog; rep from * to end. 88 sts.'],
  ['cast on 16\ndecrease 8 evenly', 1, '*K2tog; rep from * to end. 8 sts.'],
  ['cast on 96\nincrease 8 evenly', 1, '*K12, m1; rep from * to end. 104 sts.'],
  ['cast on 96\nwork 1 row\nincrease 8 evenly', 2, '*P12, m1p; rep from * to end. 104 sts.'],
  ['cast on 96\ndecrease 7 evenly', 1, 'Dec 7 sts evenly across. 89 sts.'],
  ['cast on 96\nincrease 7 evenly', 1, 'Inc 7 sts evenly across. 103 sts.'],
  ['cast on 96\nincrease 0 evenly', 1, 'Knit.'],
  // In the round the edges are two lines half a round apart: pairs where both halves come out alike.
  [
    'in the round\ncast on 40\ndecrease 2 at each edge every round once',
    1,
    '*K1, ssk, k14, k2tog, k1; rep from * to end. 36 sts.',
  ],
  [
    'in the round\ncast on 40\ndecrease 4 at each edge every round once',
    1,
    '*K1, ssk, ssk, k10, k2tog, k2tog, k1; rep from * to end. 32 sts.',
  ],
  [
    'in the round\ncast on 12\ndecrease 2 at each edge every round once',
    1,
    '*K1, ssk, k2tog, k1; rep from * to end. 8 sts.',
  ],
  [
    'in the round\ncast on 10\ndecrease 2 at each edge every round once',
    1,
    'Dec 4 sts evenly across. 6 sts.',
  ],
  [
    'in the round\ncast on 40\nincrease 2 at each edge every round once',
    1,
    '*K1, m1, k18, m1, k1; rep from * to end. 44 sts.',
  ],
  [
    'in the round\ncast on 4\nincrease 2 at each edge every round once',
    1,
    '*K1, m1, m1, k1; rep from * to end. 8 sts.',
  ],
  ['in the round\ncast on 2\nincrease 2 at each edge every round once', 1, 'Inc 4 sts evenly across. 6 sts.'],
  [
    'in the round\ncast on 40\ndecrease 1 at each edge every round once',
    1,
    'Dec 2 sts evenly across. 38 sts.',
  ],
  [
    'in the round\ncast on 41\ndecrease 2 at each edge every round once',
    1,
    'Dec 4 sts evenly across. 37 sts.',
  ],
  [
    'in the round\ncast on 40\nincrease 2 at the right edge every round once',
    1,
    'Inc 2 sts evenly across. 42 sts.',
  ],
  [
    'in the round\ncast on 40\ndecrease 2 at the left edge every round once',
    1,
    'Dec 2 sts evenly across. 38 sts.',
  ],
  ['in the round\ncast on 40\nwork 1 round\ndecrease 4 evenly', 2, '*K8, k2tog; rep from * to end. 36 sts.'],
])('%j: row %i is “%s”', (steps, number, words) => {
  const rows = writePieceRows(work(`${steps}\nbind off`).worked)
    .at(-1)
    ?.text.split('\n')
    .filter((line) => /^(?:Row|Rnd) \d/.test(line));
  expect(rows?.[number - 1]?.replace(/^.*?: /, '')).toBe(words);
});

test.each([
  ['cast on 1\nwork 2 rows\nput 1 on a holder', ['Put the last 1 stitch on a holder.']],
  ['cast on 8\nwork 2 rows\ndraw up 8', ['Draw the yarn through the last 8 stitches and pull up.']],
  ['cast on 8\nwork 2 rows\nbind off', ['Bind off the last 8 stitches.']],
  ['cast on 8\nbind off 8 at the beginning of the next row', [null]],
  [
    'cast on 8\nwork 2 rows\ndivide: 4 left, 4 right\neach side:\nwork 2 rows\ngraft',
    [
      null,
      'Graft the last 4 stitches, half of them to the other half.',
      'Graft the last 4 stitches, half of them to the other half.',
    ],
  ],
])('%j ends with %j', (steps, endings) => {
  expect(writePieceRows(work(steps).worked).map(({ending}) => ending)).toEqual(endings);
});

test('only the foot of the piece is cast on; each block begins with what it finds', () => {
  const heads = (steps: string) =>
    writePieceRows(work(`${steps}\nbind off`).worked).map(({text, stitches}) => [
      text.split('\n')[0],
      stitches,
    ]);
  expect(
    heads('cast on 8\nwork 2 rows\npick up 4\nwork 3 rows\ndivide: 6 left, 6 right\neach side:\nwork 1 row'),
  ).toEqual([
    ['cast on: 8', 8],
    ['stitches: 12', 12],
    ['stitches: 6', 6],
    ['stitches: 6', 6],
  ]);
  expect(
    heads(
      'cast on 8\nwork 2 rows\nadd 4 cast on\nwork 3 rows\nadd 1 cast on\nincrease 1 at the left edge every row 2 times',
    ),
  ).toEqual([
    ['cast on: 8', 8],
    ['stitches: 12', 12],
    ['stitches: 13', 15],
  ]);
});

/** Rows of words alone; each row below stands for one that changes nothing unless it says a count. */
const folded = (words: string, isRound: boolean) =>
  foldRows(
    [...words].map((word, index) => ({
      words: word,
      isRight: isRound || index % 2 === 0,
      after: 9,
      isChanged: word === 'x',
    })),
    isRound,
  );

test.each([
  ['aa', true, ['Rnd 1: a.', 'Rnd 2: rep rnd 1.']],
  ['aaa', true, ['Rnd 1: a.', 'Rnds 2–3: rep rnd 1.']],
  ['xxb', true, ['Rnd 1: x. 9 sts.', 'Rnd 2: rep rnd 1. 9 sts.', 'Rnd 3: b.']],
  ['bab', true, ['Rnd 1: b.', 'Rnd 2: a.', 'Rnd 3: b.']],
  ['ababa', true, ['Rnd 1: a.', 'Rnd 2: b.', 'Rnds 3–4: rep rnds 1–2.', 'Rnd 5: a.']],
  ['aa', false, ['Row 1 (RS): a.', 'Row 2 (WS): a.']],
  ['aaaa', false, ['Row 1 (RS): a.', 'Row 2 (WS): a.', 'Rows 3–4: rep rows 1–2.']],
  [
    'abcabc',
    false,
    [
      'Row 1 (RS): a.',
      'Row 2 (WS): b.',
      'Row 3 (RS): c.',
      'Row 4 (WS): a.',
      'Row 5 (RS): b.',
      'Row 6 (WS): c.',
    ],
  ],
  // The group that covers most rows: all six of `aab` twice, and not the first two.
  ['aabaab', true, ['Rnd 1: a.', 'Rnd 2: a.', 'Rnd 3: b.', 'Rnds 4–6: rep rnds 1–3.']],
  ['', true, []],
])('rows %s, round and round %s', (words, isRound, lines) => {
  expect(folded(words, isRound)).toEqual(lines);
});

test('a group of sixteen rows is found, a longer one not looked for', () => {
  const group = (length: number) => 'abcdefghijklmnopqr'.slice(0, length).repeat(2);
  expect(folded(group(16), true)).toHaveLength(17);
  expect(folded(group(16), false)).toHaveLength(17);
  expect(folded(group(17), true)).toHaveLength(34);
  expect(folded(group(18), false)).toHaveLength(36);
});
