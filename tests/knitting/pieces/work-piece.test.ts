import {describe, expect, test} from 'vitest';
import {readPiece} from '../../../src/knitting/pieces/read-piece.ts';
import {workPiece} from '../../../src/knitting/pieces/work-piece.ts';
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

  /** Each part that is worked on in the step, its stitches and the rows so far, counted by hand. */
  test.each([
    [
      'parts that stand alike are one line, others one each',
      'cast on 10\ndivide: 5 left, 5 right\neach side:\nwork 2 rows\nleft side:\nwork 2 rows\neach side:\nwork 2 rows\nright side:\nwork 2 rows\ndecrease 1 at the neck edge on the next row once\neach side:\nbind off',
      [
        [null, 10, 0],
        [null, 10, 0],
        ['each side', 5, 2],
        ['left', 5, 4],
        ['left', 5, 6],
        ['right', 5, 4],
        ['right', 5, 6],
      ],
    ],
    [
      'stitches of another part on a holder',
      'cast on 12\nwork 2 rows\ndivide: 4 left, 4 on a holder, 4 right\nleft side:\nwork to 10 cm\nput all on a holder\nright side:\nwork 4 rows\nbind off',
      [
        [null, 12, 0],
        [null, 12, 2],
        [null, 12, 2],
        ['left', 4, 30],
        ['left', 4, 30],
        ['right', 4, 6],
        ['right', 0, 6],
      ],
    ],
    [
      'stitches added to a part widen it, those picked up along the whole begin anew',
      'cast on 10\nwork 4 rows\npick up 6\nwork 3 rows\ndivide: 8 left, 8 right\neach side:\npick up 3\nadd 2 cast on\nwork 1 row\nbind off',
      [
        [null, 10, 0],
        [null, 10, 4],
        [null, 16, 4],
        [null, 16, 7],
        [null, 16, 7],
        ['each side', 11, 7],
        ['each side', 13, 7],
        ['each side', 13, 8],
        ['each side', 0, 8],
      ],
    ],
    [
      'a second `in the round` changes nothing, and nor does one above a divide',
      'in the round\ncast on 10\nwork 2 rounds\nin the round\nwork 2 rounds\nback and forth\nwork 2 rows\nwork 0 rows\nbind off',
      [
        [null, 10, 0],
        [null, 10, 2],
        [null, 10, 4],
        [null, 10, 6],
        [null, 10, 6],
        [null, 0, 6],
      ],
    ],
  ])('%s', (_, text, counts) => {
    const {worked} = work(text);
    expect(worked.steps.map(({part, stitches, rowsSoFar}) => [part, stitches, rowsSoFar])).toEqual(
      expect.arrayContaining(counts),
    );
    expect(worked.steps.slice(0, counts.length).map(({part}) => part)).toEqual(counts.map(([part]) => part));
  });

  test('a panel begins where work turns from round to flat, and where stitches are picked up', () => {
    const panels = (text: string) =>
      work(text).worked.panels.map(({isRound, base, parts}) => [
        isRound,
        base.startStitches,
        base.rows.length,
        parts.length,
      ]);
    expect(
      panels('in the round\ncast on 10\nin the round\nwork 2 rounds\nback and forth\nwork 3 rows\nbind off'),
    ).toEqual([
      [true, 10, 2, 0],
      [false, 10, 3, 0],
    ]);
    expect(panels('cast on 10\nin the round\nadd 4 cast on\nwork 2 rounds\nbind off')).toEqual([
      [true, 14, 2, 0],
    ]);
    expect(panels('cast on 10\nwork 2 rows\nadd 4 cast on\nwork 2 rows\nbind off')).toEqual([
      [false, 10, 4, 0],
    ]);
    expect(panels('cast on 10\nwork 2 rows\npick up 4\nwork 3 rows\nbind off')).toEqual([
      [false, 10, 2, 0],
      [false, 14, 3, 0],
    ]);
    expect(
      panels(
        'cast on 10\nwork 2 rows\ndivide: 5 left, 5 right\nin the round\neach side:\nwork 3 rows\nbind off',
      ),
    ).toEqual([[false, 10, 2, 2]]);
  });

  /** Half stitches from the middle: 10 stitches from -10 to 10, 4 more are 2 at each edge. */
  test('stitches cast on before the first row are at the foot of the outline, later ones are a step in it', () => {
    const edge = (text: string) => work(text).worked.panels[0]?.base.right.map(({x, row}) => [x, row]);
    expect(edge('cast on 10\nadd 4 cast on\nwork 2 rows\nbind off')).toEqual([
      [14, 0],
      [14, 2],
    ]);
    expect(edge('cast on 10\nwork 2 rows\nadd 4 cast on\nwork 2 rows\nbind off')).toEqual([
      [10, 0],
      [10, 2],
      [14, 2],
      [14, 4],
    ]);
    const parts = work(
      'cast on 10\nwork 2 rows\ndivide: 5 left, 5 right\nleft:\nadd 4 cast on\nwork 1 row\nadd 2 cast on\nwork 1 row\nbind off\nright:\nbind off',
    ).worked.panels[0]?.parts;
    expect(parts?.[0]?.startStitches).toBe(9);
    expect(parts?.[0]?.right.map(({x, row}) => [x, row])).toEqual([
      [14, 2],
      [14, 3],
      [16, 3],
      [16, 4],
    ]);
  });

  test('of three parts the outer two face the middle, which faces neither', () => {
    const parts = work('cast on 12\ndivide: 4 left, 2 bound off, 3 middle, 3 right\neach side:\nbind off')
      .worked.panels[0]?.parts;
    expect(parts?.map(({name, inner, startStitches}) => [name, inner, startStitches])).toEqual([
      ['left', 'left', 4],
      ['middle', null, 3],
      ['right', 'right', 3],
    ]);
    expect(parts?.map(({left, right}) => [left[0]?.x, right[0]?.x])).toEqual([
      [4, 12],
      [-6, 0],
      [-12, -6],
    ]);
  });

  test('a length of its own is noted once, by the rows that it is of', () => {
    const {worked} = work(
      'cast on 10\nwork 20 rows, measuring 6 cm\nwork 4 rows\ndivide: 5 left, 5 right\neach side:\nwork 8 rows, measuring 2 cm\nleft:\nwork 6 rows, measuring 1 cm\neach side:\nbind off',
    );
    expect(worked.panels[0]?.stretches.map(({from, to, length}) => [from, to, length.toNumber()])).toEqual([
      [0, 20, 60],
      [24, 32, 20],
      [32, 38, 10],
    ]);
  });

  test('`work to` counts what is worked already', () => {
    const {worked} = work('cast on 10\nwork 10 rows\nwork to 10 cm from the cast-on\nbind off');
    expect(worked.steps[2]?.rowsSoFar).toBe(30);
    const inTwo = work(
      'in the round\ncast on 10\nwork 6 rounds\nback and forth\nwork 4 rows\nat each edge: work 5 rows; work to 10 cm\nwork to 10 cm\nbind off',
    );
    expect([inTwo.problems, inTwo.worked.steps.map(({rowsSoFar}) => rowsSoFar)]).toEqual([
      [],
      [0, 6, 10, 30, 30, 30],
    ]);
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
    [
      'cast on 10\nat the left edge: work 4 rows\nat the right edge: work 2 rows\nbind off',
      'the left edge takes `4 rows` and the right edge `2 rows`',
    ],
    [
      'cast on 10\ndivide: 5 left, 5 right\nright side:\nat the neck edge: work 1 row\nat the side edge: work 3 rows\nbind off\nleft side:\nbind off',
      'the side edge takes `3 rows` and the neck edge `1 row`',
    ],
    ['cast on 10\nat the neck edge: work 2 rows\nbind off', 'no edge faces a neck here'],
    ['cast on 10\nwork 3001 rows\nbind off', 'the piece would have more than `3000` rows'],
    ['cast on 10\nwork 2000 rows\nwork 1001 rows\nbind off', 'the piece would have more than `3000` rows'],
    ['cast on 10\nwork 90 m\nbind off', 'the piece would have more than `3000` rows'],
    [
      'cast on 10\nwork to 1 mm\nwork 2 rows\nwork to 3 mm\nbind off',
      '`3 mm` are `1 row`, and `2` are worked already',
    ],
    ['cast on 10\nput 4 on a holder\nbind off', '`10 stitches` are left, not `4`'],
    ['in the round\ncast on 10\nput 12 on a holder\nbind off', '`10 stitches` are left, not `12`'],
    ['in the round\ncast on 10\nbind off 4', '`10 stitches` are left, not `4`'],
    ['cast on 1\nbind off 2', '`1 stitch` is left, not `2`'],
    ['cast on 1\nwork 2 rows', '`1 stitch` is still on the needle at the end'],
    [
      'cast on 10\ndivide: 6 left, 4 right\nright side:\nbind off\nleft side:\nwork 2 rows',
      '`6 stitches` of `left` are still on the needle at the end',
    ],
    [
      'cast on 10\nshort rows in steps 6 at each edge\nbind off',
      '`4 stitches` are left, `6` are to be left waiting',
    ],
    ['cast on 10\nbind off in steps 9, 9 at the left edge', '`1 stitch` is left, `9` are to be bound off'],
    [
      'cast on 1\ndecrease 1 at the left edge every row once',
      '`1 stitch` is left, and `1 decrease` would take `2`',
    ],
    ['cast on 5\ndecrease 3 evenly\nbind off', '`5 stitches` are left, and `3 decreases` would take `6`'],
    [
      'cast on 10\nshort rows in steps 5 at each edge\nincrease 1 at each edge every row once\nbind off',
      '`0` stitches are left to increase on',
    ],
    ['in the round\ncast on 10\ndivide: 5 left, 5 right', 'a round cannot be divided here'],
    [
      'cast on 10\ndivide: 5 left, 5 right\neach side:\ndivide: 2 one, 3 other',
      'the piece is divided already',
    ],
    [
      'cast on 10\nbind off\ndivide: 5 left, 5 right',
      'the parts add up to `10` stitches, and `0` are on the needle',
    ],
    ['cast on 10\neach side:\nbind off', 'no part is called `each side`'],
    ['cast on 10\ncast on 4\nbind off', 'the piece is cast on already'],
    ['cast on 10\nmark the foot\nwork 2 rows\nmark the foot\nbind off', '`foot` is marked twice'],
    [
      'in the round\ncast on 10\nmark the foot\nwork 2 rounds\nback and forth\nmark the foot\nbind off',
      '`foot` is marked twice',
    ],
  ])('%j', (text, message) => {
    const {problems} = work(text);
    expect(problems.map((problem) => problem.message)).toEqual([message]);
    for (const {hint} of problems) expect(hint).toMatch(/^[A-Z].*\.$/);
  });

  test.each([
    ['cast on 10\ndivide: 5 left, 5 right\nleeft:\nbind off', ['Write `left:` if that is what was meant.']],
    [
      'cast on 10\ndivide: 5 left, 5 right\nstrap:\nbind off',
      ['Name the parts where they are divided, such as `divide: 56 left, 2 on a holder, 56 right`.'],
    ],
    [
      'cast on 10\ndivide: 5 left, 5 right\nwork 2 rows\nbind off',
      ['Write `each side:`, `left:` or `right:` above it.'],
    ],
    [
      'cast on 10\nat the left edge: work 4 rows\nat the right edge: work 2 rows\nbind off',
      ['Add `work 2 rows` at the right edge.'],
    ],
    [
      'cast on 10\nat the left edge: work 2 rows\nat the right edge: work 3 rows\nbind off',
      ['Add `work 1 row` at the left edge.'],
    ],
    [
      'cast on 10\ndivide: 5 left, 5 right\nleft side:\nat the neck edge: work 1 row\nat the side edge: work 3 rows',
      ['Add `work 2 rows` at the neck edge.'],
    ],
    ['cast on 10\nbind off 4', ['Use `divide:` to go on with the others, or bind off at an edge.']],
    ['cast on 10\nbind off 14', ['Check the counts of the steps before it.']],
  ])('%j is told what to do', (text, hints) => {
    const {problems} = work(text);
    expect(problems.map(({hint}) => hint).slice(0, hints.length)).toEqual(hints);
  });

  test('what is marked on both parts, or below and above a divide, is marked once each', () => {
    const {worked, problems} = work(
      'cast on 10\nmark the side\ndivide: 5 left, 5 right\neach side:\nwork 2 rows\nmark the side\nbind off',
    );
    expect(problems).toEqual([]);
    expect(worked.marks.map(({part, row, leftX, rightX}) => [part, row, leftX, rightX])).toEqual([
      [null, 0, -10, 10],
      [0, 2, 0, 10],
      [1, 2, -10, 0],
    ]);
  });

  test('where nothing says the gauge a length cannot be worked, and rows can', () => {
    const {piece} = readPiece('cast on 10\nwork 4 rows\nwork 6 cm\nbind off');
    const {steps, problems} = workPiece(piece, null);
    expect(problems.map(({message}) => message)).toEqual(['the gauge is not said']);
    expect(steps.map(({rowsSoFar}) => rowsSoFar)).toEqual([0, 4]);
  });

  test('three thousand rows can be worked', () => {
    expect(work('cast on 10\nwork 2999 rows\nwork 1 row\nbind off').problems).toEqual([]);
  });

  test('the same mistake on both sides is said once', () => {
    const {problems} = work('cast on 10\ndivide: 5 left, 5 right\neach side:\nbind off 6');
    expect(problems.filter(({message}) => message.includes('not `6`'))).toHaveLength(1);
  });
});
