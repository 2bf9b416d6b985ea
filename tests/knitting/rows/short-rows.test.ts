import {expect, it} from 'vitest';
import {prove} from './prove.ts';

/** Short rows on 30 stitches: used, made and left unworked by each row, counted on needles. */
const cases: readonly (readonly [string, string, readonly (readonly [number, number, number])[]])[] = [
  [
    'turns without a wrap leave a gap',
    'Row 1: K16, ssk, k1, turn.\nRow 2: Sl 1, p5, p2tog, p1, turn.\nRow 3: Sl 1, k to 1 st before gap, ssk, k1, turn.\nRow 4: Sl 1, p to 1 st before gap, p2tog, p1, turn.',
    [
      [19, 18, 11],
      [9, 8, 9],
      [10, 9, 9],
      [11, 10, 7],
    ],
  ],
  [
    'wraps are picked up',
    'Row 1: K20, w&t.\nRow 2: P10, w&t.\nRow 3: K to wrapped st, work wrapped st together with its wrap, w&t.\nRow 4: P to wrapped st, pick up wrap and p it together with st, p to end.',
    [
      [20, 20, 10],
      [10, 10, 10],
      [11, 11, 9],
      [21, 21, 0],
    ],
  ],
  [
    'a round goes back past its beginning and on again',
    'in the round\nRnd 1: K5, w&t; p10, w&t; k to end of rnd.\nRnd 2: K30.',
    [
      [20, 20, 0],
      [30, 30, 0],
    ],
  ],
  [
    'the same in rows of their own',
    'in the round\nRnd 1: K5, turn.\nRow 2: Sl 1, p9, turn.\nRow 3: Sl 1, k to end of rnd.\nRnd 4: Knit.',
    [
      [5, 5, 25],
      [10, 10, 20],
      [5, 5, 0],
      [30, 30, 0],
    ],
  ],
  [
    'the beginning of the round by its name, or as a marker',
    'in the round\nRow 1: K5, w&t.\nRow 2: P to beg of rnd, p5, w&t.\nRow 3: K to marker, sm, k to 2 sts past beg of rnd, w&t.',
    [
      [5, 5, 25],
      [10, 10, 20],
      [7, 7, 23],
    ],
  ],
];

it.each(cases)('%s', (_, rows, counts) => {
  const proof = prove(`stitches: 30\n${rows}`);
  expect(proof.found).toEqual([]);
  expect(proof.proved.sizes[0]?.rows.map(({used, made, unworked}) => [used, made, unworked])).toEqual(counts);
});

it('more stitches than lie before the beginning of the round are a finding', () => {
  const {found} = prove('stitches: 30\nin the round\nRnd 1: K20, w&t; p10, w&t; k25.\nRnd 2: Knit.');
  expect(found.map(({message}) => message)).toEqual([
    '`Rnd 1` is 5 stitches short: 5 stitches are needed here and 0 are left',
  ]);
});

it('a round that was turned is worked from the wrong side, and the next from the right side again', () => {
  const {proved} = prove(
    'stitches: 30\nin the round\nRnd 1: K5, turn.\nRow 2: P10, turn.\nRow 3: K5.\nRnd 4: K30.',
  );
  expect(proved.sizes[0]?.rows.map(({side}) => side)).toEqual(['RS', 'WS', 'RS', 'RS']);
});
