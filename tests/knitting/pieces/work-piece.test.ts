import {describe, expect, test} from 'vitest';
import {type SamplePiece, samplePieces, work} from './sample-pieces.ts';

/**
 * Stitches after each step and rows so far, counted by hand. Vest back: 114 − 16 = 98, − 6 = 92, − 2 × 8 = 76, − 40 = 36.
 * Front: 56 − 8 − 3 − 8 − 17 = 20. Sleeve: 56 + 30 = 86, − 16 = 70, − 6 = 64, − 50 = 14, − 6 = 8. Hat: 96 − 88 = 8 in
 * 11 + 10 rounds. Mitten: 40 + 12 = 52, − 12 = 40, − 12 = 28, − 20 = 8. Sock: 32 − 14 = 18, + 32 = 50, + 32 = 82,
 * − 18 = 64, − 32 = 32, − 16 = 16.
 */
const counted: Readonly<Record<SamplePiece, readonly (readonly [stitches: number, rows: number])[]>> = {
  'vest back': [
    [114, 0],
    [114, 20],
    [114, 110],
    [98, 112],
    [92, 114],
    [76, 130],
    [76, 182],
    [36, 188],
    [36, 188],
  ],
  'vest front': [
    [114, 0],
    [114, 20],
    [114, 110],
    [114, 110],
    [20, 182],
    [0, 188],
  ],
  sleeve: [
    [56, 0],
    [56, 20],
    [86, 110],
    [86, 120],
    [70, 122],
    [64, 124],
    [14, 174],
    [8, 176],
    [0, 176],
  ],
  hat: [
    [96, 0],
    [96, 14],
    [96, 36],
    [8, 57],
    [8, 57],
  ],
  mitten: [
    [40, 0],
    [40, 16],
    [52, 34],
    [40, 34],
    [40, 58],
    [28, 64],
    [8, 69],
    [8, 69],
  ],
  sock: [
    [64, 0],
    [64, 60],
    [32, 60],
    [32, 92],
    [18, 99],
    [50, 99],
    [82, 99],
    [64, 117],
    [64, 157],
    [32, 173],
    [16, 177],
    [16, 177],
  ],
  'shoulder in short rows': [
    [60, 0],
    [60, 10],
    [60, 16],
    [0, 16],
  ],
  'one side after the other': [
    [40, 0],
    [40, 2],
    [40, 2],
    [15, 12],
    [0, 12],
    [20, 12],
    [0, 12],
  ],
};

describe('a piece worked by its steps', () => {
  test.each(Object.entries(samplePieces))('%s', (name, text) => {
    const {worked, problems} = work(text);
    expect(problems).toEqual([]);
    const steps = worked.steps.map(({stitches, rowsSoFar}) => [stitches, rowsSoFar]);
    expect(steps).toEqual(counted[name as SamplePiece]); // The keys of one table are those of the other.
  });

  test('right-side rows begin at the right edge, wrong-side rows at the left', () => {
    const {worked} = work('cast on 20\nbind off 3 at the beginning of the next 2 rows\nbind off');
    const rows = worked.panels[0]?.base.rows.map(({left, right, after}) => [left.kind, right.kind, after]);
    expect(rows).toEqual([
      ['plain', 'bind off', 17],
      ['bind off', 'plain', 14],
    ]);
  });

  test.each([
    ['', 'every 4th row 2 times', [3, 7], 'the last right-side row of each four'],
    ['work 1 row', 'every 4th row 2 times', [5, 9], 'begun on a wrong-side row'],
    ['', 'every other row 3 times', [1, 3, 5], 'right-side rows'],
    ['', 'every 3rd row 2 times', [3, 6], 'no three rows end alike, so the last of them'],
    ['', 'on the next and every 4th row 3 times', [1, 5, 9], 'nothing even behind the last'],
    ['in the round', 'every other round 2 times', [2, 4], 'no wrong side in the round'],
  ])('%s shaping %s falls on rows %j: %s', (before, interval, rows) => {
    const start = before === 'in the round' ? `${before}\ncast on 40` : `cast on 40\n${before}`;
    const {worked} = work(`${start}\ndecrease 1 at each edge ${interval}\nbind off`);
    const shaped = worked.panels[0]?.base.rows.filter(({left}) => left.kind === 'decrease');
    expect(shaped?.map(({number}) => number)).toEqual(rows);
  });

  test('both sides of a neck are worked as mirrors, each row as wide as its stitches', () => {
    const [left, right] = work(samplePieces['vest front']).worked.panels[0]?.parts ?? [];
    expect(left?.right).toEqual(right?.left.map(({x, row}) => ({x: -x, row})));
    expect(left?.left).toEqual(right?.right.map(({x, row}) => ({x: -x, row})));
    expect(left?.rows.at(-7)?.after).toBe(20);
  });

  test.each([
    ['work 6 cm', 18, '60 mm × 0.3 = 18 rows'],
    ['work 6.5 cm', 20, '19.5 rows, half up'],
    ['work 4 in', 30, '101.6 mm × 0.3 = 30.48 rows'],
    ['work 20 rows, measuring 6 cm', 20, 'rows with a length of their own'],
  ])('`%s` is %i rows', (line, rows) => {
    expect(work(`cast on 10\n${line}\nbind off`).worked.steps[1]?.rowsSoFar).toBe(rows);
  });

  test('`work to` counts what is worked already', () => {
    const {worked} = work('cast on 10\nwork 10 rows\nwork to 10 cm from the cast-on\nbind off');
    expect(worked.steps[2]?.rowsSoFar).toBe(30);
  });
});

describe('what cannot be worked is a problem at its line', () => {
  test.each([
    [
      'cast on 6\nbind off 8 at the beginning of the next 2 rows\nbind off',
      '`6 stitches` are left, `8` are to be bound off',
    ],
    [
      'cast on 10\ndecrease 1 at each edge every row 5 times\nbind off',
      '`2 stitches` are left, and `2 decreases` would take `4`',
    ],
    ['cast on 10\nbind off 9', '`10 stitches` are left, not `9`'],
    ['cast on 10\nwork 4 rows', '`10 stitches` are still on the needle at the end'],
    [
      'cast on 10\ndivide: 4 left, 4 right\neach side:\nbind off',
      'the parts add up to `8` stitches, and `10` are on the needle',
    ],
    ['cast on 10\ndivide: 5 left, 5 right\nwork 4 rows', 'it is not said which part this is worked on'],
    ['cast on 10\ndivide: 5 left, 5 right\nleeft side:\nbind off', 'no part is called `leeft`'],
    ['work 4 rows', 'nothing is on the needle yet'],
    ['cast on 0', 'nothing is cast on'],
    ['cast on 10\nbind off\nwork 2 rows', 'no stitch is left on the needle'],
    [
      'in the round\ncast on 10\nbind off 2 at the beginning of the next 2 rows\nbind off',
      'a round has no edge to bind off at',
    ],
    ['cast on 10\ndecrease 1 at the neck edge every row 2 times\nbind off', 'no edge faces a neck here'],
    [
      'cast on 40\ndivide: 20 left, 20 right\neach side:\nat the side edge: work 10 rows\nat the neck edge: decrease 1 every other row 4 times\nbind off',
      'the side edge takes `10 rows` and the neck edge `8 rows`',
    ],
    ['cast on 10\nwork 9999 rows\nbind off', 'the piece would have more than `3000` rows'],
    [
      'cast on 10\nwork 40 rows\nwork to 10 cm\nbind off',
      '`10 cm` are `30 rows`, and `40` are worked already',
    ],
  ])('%j', (text, message) => {
    const {problems} = work(text);
    expect(problems.map((problem) => problem.message)).toContain(message);
    for (const {hint} of problems) expect(hint).toMatch(/^[A-Z].*\.$/);
  });

  test('the same mistake on both sides is said once', () => {
    const {problems} = work('cast on 10\ndivide: 5 left, 5 right\neach side:\nbind off 6');
    expect(problems.filter(({message}) => message.includes('not `6`'))).toHaveLength(1);
  });
});
