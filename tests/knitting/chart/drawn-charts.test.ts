import {describe, expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {gridToRows} from '../../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';
import {writeChart} from '../../../src/knitting/chart/write-chart.ts';

// Rows, and their chart drawn on squared paper as the trade draws it: seen from the right side, the first row lowest,
// right-side rows from right to left, a decrease over the stitches that it takes and on the side to which it leans.
const drawn: readonly (readonly [what: string, rows: string, chart: string])[] = [
  [
    'a repeat with an edge, whose count varies: the narrow rows stand in the middle of the wide ones',
    `multiple: 6 + 5
stitches: 11
Row 1 (RS): p5, *yo, k1, yo, p5; rep from * to end.
Row 2 (WS): *k5, p3; rep from * to last 5 sts, k5.
Row 3 (RS): p5, *s2kp, p5; rep from * to end.
Row 4 (WS): *k5, p1; rep from * to last 5 sts, k5.
`,
    `multiple: 6 + 5
stitches: 11
- = p (RS), k (WS)
o = yo (RS)
. = k (RS), p (WS)
^ = s2kp (RS)

4   | - - - - - _ . _ | - - - - -
    | - - - - - _ ^ _ | - - - - -  3
2   | - - - - - . . . | - - - - -
    | - - - - - o . o | - - - - -  1
`,
  ],
  [
    'stitches below overs stand under those that they become, decreases lean inwards',
    `stitches: 3
Row 1 (WS): p3.
Row 2 (RS): [k1, yo] 2 times, k1.
Row 3 (WS): p5.
Row 4 (RS): ssk, k1, k2tog.
`,
    `stitches: 3
first row: WS
. = k (RS), p (WS)
o = yo (RS)
\\ = ssk (RS)
/ = k2tog (RS)

   _ / . \\ _  4
3  . . . . .
   . o . o .  2
1  . _ . _ .
`,
  ],
  [
    'decreases that lean outwards, overs on the wrong side',
    `stitches: 3
Row 1 (RS): k3.
Row 2 (WS): [p1, yo] 2 times, p1.
Row 3 (RS): k2tog, k1, ssk.
`,
    `stitches: 3
. = k (RS), p (WS)
o = yo (WS)
/ = k2tog (RS)
\\ = ssk (RS)

   \\ _ . _ /  3
2  . o . o .
   . _ . _ .  1
`,
  ],
  [
    'rows below the widest one: what a decrease takes stands on both sides of it',
    `stitches: 6
Row 1 (RS): k6.
Row 2 (WS): p6.
Row 3 (RS): ssk, k2, k2tog.
Row 4 (WS): p4.
Row 5 (RS): [k1, yo] 3 times, k1.
Row 6 (WS): p7.
`,
    `stitches: 6
. = k (RS), p (WS)
\\ = ssk (RS)
/ = k2tog (RS)
o = yo (RS)

6  . . . . . . .
   . o . o . o .  5
4  . _ . _ . _ .
   / _ . _ . _ \\  3
2  . . . _ . . .
   . . . _ . . .  1
`,
  ],
  [
    'wide stitches, a stitch of its own, and a bind-off, whose loop is a stitch of the row',
    `stitches: 12
MB: uses 1, makes 1, "make bobble"
Row 1 (WS): p5, MB, k1, p1, (k1, yo, k1) in next st, p3tog.
Row 2 (RS): BO 4, k7.
`,
    `stitches: 12
MB: uses 1, makes 1, "make bobble"
first row: WS
. = k (RS), p (WS)
a = MB (WS)
- = k (WS)
+ = (k1, yo, k1) in next st (WS)
/ = p3tog (WS)
b = BO 1 (RS)

   . . . . . . . . b b b b  2
1  . . . . . a - . + > > /
`,
  ],
  [
    'rounds all begin at the right; slips by where the yarn is, twisted stitches and a crossing',
    `stitches: 9
in the round
Rnd 9: 2/2 LC, yo, k2tog, k3tog, yo.
Rnd 10: sl1 wyif, sl1 wyib, k1 tbl, p1 tbl, kfb, p3.
Rnd 11: k9.
`,
    `stitches: 9
in the round
a = 2/2 LC (RS)
o = yo (RS)
/ = k2tog (RS)
b = k3tog (RS)
v = sl wyif (RS)
c = sl wyib (RS)
d = k tbl (RS)
e = p tbl (RS)
+ = kfb (RS)
- = p (RS)
. = k (RS)

    . . . . . . . . .  11
    - - - + > e d c v  10
    o b / _ o a > > >  9
`,
  ],
  [
    'stitches that come and go within a row',
    `stitches: 4
Row 1 (RS): k2, CO 2, k2.
Row 2 (WS): k2, drop 1, k3.
Row 3 (RS): sk2p, k2.
`,
    `stitches: 4
. = k (RS)
a = CO 1 (RS)
- = k (WS)
b = drop 1 (WS)
\\ = sk2p (RS)

   . . _ _ \\ _  3
2  - - b - - -
   . . a a . .  1
`,
  ],
  [
    'textures look like the stitches that they are made of',
    `stitches: 8
Row 1 (RS): St st 4 sts, g st 4 sts.
Row 2 (WS): St st 4 sts, g st 4 sts.
Row 3 (RS): rev St st 4 sts, patt 4 sts.
`,
    `stitches: 8
. = St st
a = g st (RS)
- = rev St st (RS), g st (WS)
b = patt (RS)

   b b b b - - - -  3
2  . . . . - - - -
   a a a a . . . .  1
`,
  ],
];

describe.each(drawn)('%s', (_, rows, chart) => {
  test('is drawn from its rows', () => {
    const {grid} = chartOfRows(rows);
    expect(grid && writeChart(grid)).toBe(chart);
  });

  test('is written as rows again', () => {
    const {chart: read, problems} = readChart(chart);
    expect(problems).toEqual([]);
    expect(read?.kind === 'stitches' && gridToRows(read.grid)).toBe(rows);
  });
});

// What a chart of rows cannot say of itself, drawn and written again.
test.each([
  [
    'a row that turns within itself is drawn as several, and turns where it did',
    'stitches: 8\nRow 1 (RS): k4, turn, p4, turn, k8.\nRow 2 (WS): p8.\n',
    ['. . . . . . . .', '~ ~ ~ ~ . . . .', '~ ~ ~ ~ . . . .'],
  ],
  ['rows without numbers', 'stitches: 4\nNext row: k4.\nNext row: p4.\n', ['. . . .', '. . . .']],
  [
    'rows worked again on as many stitches',
    'stitches: 4\nRow 1 (RS): k4.\nRow 2 (WS): p4.\nRow 3 (RS): p4.\nRep rows 2–3 2 more times.\nRow 4 (WS): k4.\n',
    ['- - - -', '- - - -', '. . . .', '. . . .'],
  ],
])('%s', (_, rows, lines) => {
  const {grid, problems} = chartOfRows(rows);
  expect(problems).toEqual([]);
  expect(grid && gridToRows(grid)).toBe(rows);
  const squares = (grid ? writeChart(grid) : '')
    .split('\n')
    .filter((line) => /^\s*\d*\s+[.~-]( |$)/.test(line));
  expect(squares.map((line) => line.replaceAll(/\d/g, '').trim()).slice(-lines.length)).toEqual(lines);
});

test('a row that is worked three times is one row of the chart', () => {
  const {grid} = chartOfRows('stitches: 4\nRow 1 (RS): k4.\nRow 2 (WS): p4.\nRep rows 1 and 2 2 more times.');
  expect(grid?.rows.map(({number, times}) => [number, times])).toEqual([
    [1, 3],
    [2, 3],
  ]);
});

test.each([
  ['stitches: 400\nRow 1: Knit.', true],
  ['stitches: 401\nRow 1: Knit.', false],
  ['stitches: 402\nRow 1: *K2tog; rep from * to end.', false],
  ['stitches: 201\nRow 1: *Kfb; rep from * to end.', false],
  ['stitches: 2\nRows 1–400: Knit.', true],
  ['stitches: 2\nRows 1–401: Knit.', false],
  ['stitches: 2\n', false],
])('%j can be drawn: %s', (rows, can) => {
  expect(chartOfRows(rows).grid !== null).toBe(can);
});

// Forty squares and more are drawn as one of as many equal parts as leave it four squares wide; a narrow one whole.
test.each([
  [40, ['*K3, p1; rep from * to end'], 10, 4],
  [40, ['*K1, p1; rep from * to end'], 10, 4],
  [36, ['*K1, p1; rep from * to end'], 1, 36],
  [39, ['*K2, p1; rep from * to end'], 1, 39],
  [42, ['*K2, p1; rep from * to end'], 7, 6],
  [40, ['*K3, p1; rep from * to end', '*K4, p4; rep from * to end'], 5, 8],
  [40, ['*K3, p1; rep from * to end', 'K20, p20'], 1, 40],
  [40, ['*K3, p1; rep from * to end', 'Knit'], 10, 4],
  [40, ['*K3, p1; rep from * to last 2 sts, k1 tbl, p1'], 1, 40],
])('%i stitches of %j are %i parts of %i squares', (stitches, rounds, passes, width) => {
  const {grid} = chartOfRows(
    [
      'in the round',
      `stitches: ${stitches}`,
      ...rounds.map((text, index) => `Rnd ${index + 1}: ${text}.`),
    ].join('\n'),
  );
  expect([grid?.passes, grid?.width, grid?.start]).toEqual([passes, width, stitches / passes]);
});

const stitches = '. = k (RS), p (WS)\n/ = k2tog (RS)\nc = 2/2 LC\n';

/** What is wrong, and the text that it points at. */
describe('a chart that cannot be read', () => {
  test.each([
    ['no grid', stitches, [['the chart has no rows', '']]],
    [
      'a sign of the chart in the key',
      `${stitches}  > = k\n1 . .`,
      [['`>` has a fixed meaning in a chart', '>']],
    ],
    ['a number in the key', `12 = p\n${stitches}1 . .`, [['`12` reads as a row number', '12']]],
    ['a sign twice', `${stitches} . = p\n1 . .`, [['`.` stands twice in the key', '.']]],
    ['two stitches', `x = k2\n${stitches}1 . .`, [['`k2` in the key of `x` is not one stitch', 'x = k2']]],
    ['two steps', `x = k, p\n${stitches}1 . .`, [['`k, p` in the key of `x` is not one stitch', 'x = k, p']]],
    [
      'two rows',
      `x = k. Row 2: p\n${stitches}1 .`,
      [['`k. Row 2: p` in the key of `x` is not one stitch', 'x = k. Row 2: p']],
    ],
    [
      'a stitch and a count',
      `x = k. 3 sts\n${stitches}1 .`,
      [['`k. 3 sts` in the key of `x` is not one stitch', 'x = k. 3 sts']],
    ],
    [
      'no stitch known',
      `x = kk9z\n${stitches}1 .`,
      [['`kk9z` in the key of `x` is not one stitch', 'x = kk9z']],
    ],
    ['nothing worked', `x = yb\n${stitches}1 .`, [['`yb` in the key of `x` is not one stitch', 'x = yb']]],
    ['a marker', `x = pm\n${stitches}1 .`, [['`pm` in the key of `x` is not one stitch', 'x = pm']]],
    ['two cast on', `x = CO 2\n${stitches}1 .`, [['`CO 2` in the key of `x` is not one stitch', 'x = CO 2']]],
    [
      'two bound off',
      `x = BO 2\n${stitches}1 .`,
      [['`BO 2` in the key of `x` is not one stitch', 'x = BO 2']],
    ],
    [
      'a wrong side of two stitches',
      `x = k (RS), p2 (WS)\n${stitches}1 .`,
      [['`p2` in the key of `x` is not one stitch', 'x = k (RS), p2 (WS)']],
    ],
    ['a sign that is not in the key', `${stitches}1 . q .`, [['the key does not name `q`', 'q']]],
    ['signs run together, one of them unknown', `${stitches}1 ..q`, [['the key does not name `..q`', '..q']]],
    ['a square that goes on from nothing', `${stitches}1 > . .`, [['`>` has no stitch to its left', '>']]],
    [
      'a crossing with too few squares',
      `${stitches}1 . c > > .`,
      [['`c` takes `4` squares, the chart gives it `3`', 'c']],
    ],
    [
      'a stitch with two squares',
      `${stitches}1 . > .`,
      [['`.` takes `1` squares, the chart gives it `2`', '.']],
    ],
    [
      'a side that the key does not say',
      `${stitches}2 . /\n1 . .`,
      [['`/` stands in a WS row, but the key does not say how it is worked there', '/']],
    ],
    [
      'a number out of turn',
      `${stitches}3 . .\n1 . .`,
      [['the line is numbered `3` but is row `2` counted from the lowest', '3 . .']],
    ],
    [
      'a row too narrow',
      `${stitches}. . .\n. .\n. . .`,
      [['row `2` has `2` squares, the lowest row has `3`', '. .']],
    ],
    ['one bar', `${stitches}1 . | .`, [['the bars do not mark one repeat', '1 . | .']]],
    ['nothing between the bars', `${stitches}1 . || .`, [['the bars do not mark one repeat', '1 . || .']]],
    ['three bars', `${stitches}1 . | . | . | .`, [['the bars do not mark one repeat', '1 . | . | . | .']]],
    [
      'a row that works more than there is',
      `${stitches}. . .\n. _ .`,
      [['row `2` of the chart works `3` stitches, but there are `2`', '. . .']],
    ],
    [
      'fewer stitches than are said',
      `stitches: 5\n${stitches}1 . . .`,
      [['row `1` of the chart works `3` stitches, but there are `5`', '1 . . .']],
    ],
    [
      'too wide',
      `${stitches}${'.'.repeat(401)}`,
      [['the chart is `401` squares long or wide, more than `400`', '.'.repeat(401)]],
    ],
    [
      'too high',
      `${stitches}${'.\n'.repeat(401)}`,
      [['the chart is `401` squares long or wide, more than `400`', '.']],
    ],
  ])('%s', (_, text, found) => {
    const {chart, problems} = readChart(text);
    expect(chart).toBeNull();
    expect(problems.map(({message, span}) => [message, text.slice(span.start, span.end)])).toEqual(found);
  });

  test.each([
    ['1 c > .', 'Write `c > > >`.'],
    ['1 . > .', 'Take the `>` behind it away.'],
  ])('`%s` is told the width', (line, hint) => {
    expect(readChart(`${stitches}${line}`).problems[0]?.hint).toBe(hint);
  });

  test.each([
    [
      'lo = k\nhi = p\n1 lo hj lo',
      'Write `hi` if that is what was meant, or add a line such as `hj = k` to the key.',
    ],
    ['k = k\n1 k j', 'Add a line such as `j = k` or `j = colour chalk` to the key.'],
    [
      'ab = colour chalk\n1 ab ac',
      'Write `ab` if that is what was meant, or add a line such as `ac = k` to the key.',
    ],
  ])('%j is told the nearest sign', (text, hint) => {
    expect(readChart(text).problems[0]?.hint).toBe(hint);
  });
});
