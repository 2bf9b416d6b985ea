import {describe, expect, it} from 'vitest';
import {countsOf, prove} from './prove.ts';

/** A line before the rows, a row, and the multiple that the line gives. */
const multiples: readonly (readonly [string, string, string])[] = [
  ['multiple: 6 + 5', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Multiple of 6 sts plus 5.', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['(Multiple of 6 sts + 5)', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Worked over a multiple of 6 sts plus 5.', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Multiple of 6 sts + 3, plus 2 edge sts', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Multiple of 6 minus 1', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Sts: multiple of 8 + 3', 'K3, *k1, p7; rep from *.', '8 + 3'],
  ['Cast on any number of stitches divisible by 6, and 5 over.', 'K5, *k1, p5; rep from *.', '6 + 5'],
  ['Cast on any number of stitches that can be divided by four.', 'Knit 2; purl 2; repeat.', '4 + 0'],
  ['Cast on a number of stitches that divides by nine.', 'Knit plain.', '9 + 0'],
  ['Cast on an even number of stitches.', '*K1, p1; rep from *.', '2 + 0'],
  ['Cast on an uneven number of stitches.', '*K1, p1; rep from * to last st, k1.', '2 + 1'],
  ['Cast on 12 stitches for each pattern and 4 for the edge.', 'K4, *k10, p2; rep from *.', '12 + 4'],
];

it.each(multiples)('%s', (line, row, expected) => {
  const {found, pattern} = prove(`${line}\n1st row: ${row}`);
  expect(found).toEqual([]);
  const {multiple} = pattern.header;
  expect(`${multiple?.of} + ${multiple?.plus}`).toBe(expected);
});

it.each([
  ['Cast on 24 stitches.', [24]],
  ['Cast on twenty-four stitches.', [24]],
  ['Cast on a hundred and four stitches loosely.', [104]],
  ['Using 4 mm needles cast on 24 sts.', [24]],
  ['With MC, cast on 24 (28, 32) sts.', [24, 28, 32]],
  ['CO 24 sts. Join in the round.', [24]],
  ['Panel of 12 sts.', [12]],
])('%s', (line, values) => {
  const {found, pattern} = prove(`${line}\nRow 1: Knit.`);
  expect(found).toEqual([]);
  expect(pattern.header.start?.values).toEqual(values);
});

/** Rows as they stand below each other on 24 stitches, and the counts after each working of them. */
const blocks: readonly (readonly [string, string, readonly number[]])[] = [
  ['rows on the line of the cast on', 'Cast on 24 sts. 1st row: Knit. 2nd row: K2tog, k22.', [24, 23]],
  ['rows without a label', 'Knit 2 rows.\nPurl one row.\nRow 4: K2tog, k22.', [24, 24, 24, 23]],
  ['plain rows between others', 'Row 1: K2tog, k22.\nTwo plain rows.\nRow 4: K23.', [23, 23, 23, 23]],
  ['rows in a fabric', 'Work 3 rows in st st.\nRow 4: K2tog, k22.', [24, 24, 24, 23]],
  [
    'every alternate row',
    'Row 1: Knit.\nEvery alternate row plain.\nRow 3: K2tog, k22.\nRow 5: K23.',
    [24, 24, 23, 23, 23, 23],
  ],
  ['even-numbered rows', 'All even-numbered rows: purl.\nRow 1: K2tog, k22.\nRow 3: K23.', [23, 23, 23, 23]],
  [
    'row 2 and all following wrong-side rows',
    'Row 1 (RS): K2tog, k22.\nRow 2 and all following WS rows: Purl.\nRow 3: K23.',
    [23, 23, 23, 23],
  ],
  [
    'as another row',
    '1st row: Knit. 2nd row: As 1st row. 3rd row: The same as the second. 4th row: Like 1st row.',
    [24, 24, 24, 24],
  ],
  ['a list of ordinals', 'First, second, and third rows—plain knitting.\nFourth row—purl.', [24, 24, 24, 24]],
  ['a side behind a dash', 'Row 1—Right side—*K2, p2; repeat from * across row.\nRow 2—K24.', [24, 24]],
  ['rows of a pattern', 'Pattern row 1: Knit.\nPatt row 2: Purl.', [24, 24]],
  ['numbers and a bracket', '1) Knit\n2) Purl', [24, 24]],
  ['capitals', 'ROW 1 - KNIT\nROW 2 - PURL', [24, 24]],
  ['from the beginning', 'Row 1: Knit.\nRow 2: Purl.\nRepeat from the beginning.', [24, 24]],
  ['commence again', 'Row 1: Knit.\nRow 2: Purl.\nCommence again at the first row.', [24, 24]],
  ['begin again', 'Row 1: Knit.\nRow 2: Purl.\nBegin again from the 1st row.', [24, 24]],
  ['rows that form the pattern', 'Row 1: Knit.\nRow 2: Purl.\nThese 2 rows form the pattern.', [24, 24]],
  [
    'keep repeating',
    'Row 1: Knit.\nRow 2: Purl.\nContinue repeating these two rows until it is long enough.',
    [24, 24],
  ],
  [
    'other rows like the last',
    'Row 1: K1, m1, k to end.\nRow 2: Purl.\nWork four other rows, similar to the two last.',
    [25, 25, 26, 26, 27, 27],
  ],
];

it.each(blocks)('%s', (_, rows, counts) => {
  const proof = prove(/^cast on/i.test(rows) ? rows : `stitches: 24\n${rows}`);
  expect(proof.found).toEqual([]);
  const {sizes} = proof.proved;
  expect(sizes[0]?.rows.flatMap(({out, times}) => Array.from({length: times}, () => out))).toEqual(counts);
});

it.each([
  ['rows 1–4 that do not return', 'Row 1: K1, m1, k to end.\nThese rows form the pattern.'],
  ['a row that belongs nowhere', 'Knit four rows and rest.'],
])('%s is a finding', (_, rows) => {
  expect(prove(`stitches: 24\n${rows}`).found.length).toBeGreaterThan(0);
});

describe('markers by name', () => {
  const placed =
    'stitches: 30\nRow 1: K10, pm A, k10, pm "B", k10.\nRow 2: P to marker B, slm, p to A, slm, p to end.\n';
  it.each([
    ['K to 2 sts before marker A, k2tog, sm A, k to marker B, slip marker B, ssk, k to end.', 28],
    ['K to A, m1, sm, k to B, sm, m1, k to end.', 32],
    ['K to marker B, rm, k to 2 sts before end of row, k2tog.', 29],
  ])('%s', (row, after) => {
    const proof = prove(`${placed}Row 3: ${row}`);
    expect(proof.found).toEqual([]);
    expect(countsOf(proof).at(-1)).toBe(after);
  });

  it('one that was never placed is a finding', () => {
    expect(prove(`${placed}Row 3: K to marker C, k to end.`).found).toMatchObject([
      {actual: 'K to marker C'},
    ]);
  });
});
