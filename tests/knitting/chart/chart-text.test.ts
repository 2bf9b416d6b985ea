import {describe, expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {gridToRows} from '../../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';
import {writeChart} from '../../../src/knitting/chart/write-chart.ts';

// The text of a chart block and what it says: charts are read from the bottom up, right-side rows from the right, and
// without a word odd rows are right-side rows (common practice, no source).

const plain = '. = k (RS), p (WS)\n/ = k2tog (RS)\n';

test.each([
  ['nothing said', `${plain}. .\n. .`, 'Row 1 (RS): k2.\nRow 2 (WS): p2.\n'],
  ['a first row on the wrong side', `first row: WS\n${plain}. .\n. .`, 'Row 1 (WS): p2.\nRow 2 (RS): k2.\n'],
  ['a first line on the right side', `First line : rs\n${plain}. . 2`, 'Row 2 (RS): k2.\n'],
  ['numbers from 5', `${plain}6 . .\n. . 5`, 'Row 5 (RS): k2.\nRow 6 (WS): p2.\n'],
  ['numbers from 4', `${plain}. . 5\n4 . .`, 'Row 4 (WS): p2.\nRow 5 (RS): k2.\n'],
  ['the upper line numbered alone', `${plain}7 . .\n. .`, 'Row 6 (WS): p2.\nRow 7 (RS): k2.\n'],
  ['a number of four figures', `${plain}1001 . .`, 'Row 1001 (RS): k2.\n'],
  ['rounds', `in the round\n. = k\n. .\n2 . .`, 'Rnd 2: k2.\nRnd 3: k2.\n'],
  ['signs that touch', `${plain}..\n1 ..`, 'Row 1 (RS): k2.\nRow 2 (WS): p2.\n'],
  ['signs of several letters', 'lo = p\nhi = k\n1 lo hi lo', 'Row 1 (RS): p1, k1, p1.\n'],
  [
    'signs of one letter that are two units long',
    '\u{1f9f6} = k\n- = p\n1 \u{1f9f6}-\u{1f9f6}',
    'Row 1 (RS): k1, p1, k1.\n',
  ],
  ['a bar that touches', `${plain}1 .|..|.`, 'Row 1 (RS): k1, *k2; rep from * to last st, k1.\n'],
  ['a key without spaces', 'x = k(RS),p(WS)\nx x\nx x', 'Row 1 (RS): k2.\nRow 2 (WS): p2.\n'],
  ['a key with a semicolon', 'x = K1 (rs) ;  P1 (ws)\nx x\nx x', 'Row 1 (RS): k2.\nRow 2 (WS): p2.\n'],
  ['a key for the wrong side', 'x = k (WS)\n2 x x', 'Row 2 (WS): k2.\n'],
  ['a key for both', 'x = k2tog\no = yo\n1 x o', 'Row 1 (RS): yo, k2tog.\n'],
  ['a wide stitch', 'c = 2/2 LC\n1 c > > >', 'Row 1 (RS): 2/2 LC.\n'],
  [
    'stitches put into one',
    'b = (k1, yo, k1) in next st\n. = k\n1 . b > >',
    'Row 1 (RS): (k1, yo, k1) in next st, k1.\n',
  ],
  ['stitches that wait', `${plain}~ . .`, 'Row 1 (RS): k2, turn.\n'],
])('%s', (_, text, rows) => {
  const {chart, problems} = readChart(text);
  expect(problems).toEqual([]);
  const written = chart?.kind === 'stitches' ? gridToRows(chart.grid) : '';
  expect(written.replace(/^(?:stitches: .*|in the round)\n/gm, '')).toBe(rows);
});

test.each([
  ['x = p (RS) twice\n1 x', 'x = p (RS) twice'],
  ['x = k (RS), p (WS), k\n1 x', 'x = k (RS), p (WS), k'],
  ['x = p (WS) twice\n1 x', 'x = p (WS) twice'],
  ['x = k (2)\n1 x', 'x = k (2)'],
  ['x = turn\n1 x', 'x = turn'],
  ['x = inc 2 sts evenly\n1 x', 'x = inc 2 sts evenly'],
  ['x = [k] twice\n1 x', 'x = [k] twice'],
  ['x = (RS)\n1 x', 'x = (RS)'],
])('the key %j is not one stitch', (text, key) => {
  const {problems} = readChart(text);
  expect(problems.map(({span}) => text.slice(span.start, span.end))[0]).toBe(key);
});

test('what is wrong with one of several signs that touch is told at that sign', () => {
  const text = '\u{1f9f6} = k (RS), p (WS)\n/ = k2tog (RS)\no = yo\n2 \u{1f9f6}/\n1 o\u{1f9f6}';
  const {problems} = readChart(text);
  expect(problems.map(({span}) => [span.start, text.slice(span.start, span.end)])).toEqual([
    [text.indexOf('/\n'), '/'],
  ]);
});

describe('a chart of colours', () => {
  const read = (text: string) => {
    const {chart, problems} = readChart(text);
    expect(problems).toEqual([]);
    if (chart?.kind !== 'colours') throw new Error('no chart of colours');
    return chart.grid;
  };
  const key = 'A = colour chalk\nB = colour bramble\n';

  test('names and looks', () => {
    expect(
      read('A = Colour chalk #ABC\nB = color deep water #27506B\nC = colour bramble\nA B C').colours,
    ).toEqual([
      {symbol: 'A', name: 'chalk', hex: '#aabbcc'},
      {symbol: 'B', name: 'deep water', hex: '#27506b'},
      {symbol: 'C', name: 'bramble', hex: null},
    ]);
  });

  test.each([
    ['A = colour\nB = colour x\nB', 'the key of `A` names no colour', 'A = colour'],
    ['A = colour x\nA B', 'the key does not name `B`', 'B'],
  ])('%j', (text, message, place) => {
    const {problems} = readChart(text);
    expect(problems.map((each) => [each.message, text.slice(each.span.start, each.span.end)])).toEqual([
      [message, place],
    ]);
  });

  test.each([
    [
      'A B\nB A',
      [
        [1, 'RS', [1, 0]],
        [2, 'WS', [0, 1]],
      ],
    ],
    [
      'rows per line: 2\nA B\nB A',
      [
        [1, 'RS', [1, 0]],
        [2, 'WS', [1, 0]],
        [3, 'RS', [0, 1]],
        [4, 'WS', [0, 1]],
      ],
    ],
    [
      'rows per line: 3\nA B\nB A',
      [
        [1, 'RS', [1, 0]],
        [2, 'WS', [1, 0]],
        [3, 'RS', [1, 0]],
        [4, 'WS', [0, 1]],
        [5, 'RS', [0, 1]],
        [6, 'WS', [0, 1]],
      ],
    ],
    [
      'rows per line: 2\nfirst row: WS\nA B',
      [
        [1, 'WS', [0, 1]],
        [2, 'RS', [0, 1]],
      ],
    ],
    [
      'rows per line: 2\n2 A B',
      [
        [3, 'RS', [0, 1]],
        [4, 'WS', [0, 1]],
      ],
    ],
    [
      'in the round\nrows per line: 2\nA _',
      [
        [1, 'RS', [0, null]],
        [2, 'RS', [0, null]],
      ],
    ],
  ])('%j', (lines, rows) => {
    expect(read(key + lines).rows.map(({number, side, cells}) => [number, side, cells])).toEqual(rows);
  });

  test.each([
    ['A B', 'stranded'],
    ['method: stranded\nA B', 'stranded'],
    ['Method : Intarsia\nA B', 'intarsia'],
  ])('%j is worked %s', (lines, method) => {
    expect(read(key + lines).method).toBe(method);
  });
});

/** The lines of squares of a chart drawn from rows. */
function drawn(rows: string): readonly string[] {
  const {grid, problems} = chartOfRows(rows);
  expect(problems).toEqual([]);
  const [, lines = ''] = (grid ? writeChart(grid) : '').split('\n\n');
  return lines.split('\n').filter((line) => line !== '');
}

test.each([
  [
    'the repeat furthest to the right, which a right-side row works first',
    'stitches: 12\nRow 1 (RS): *k1, p1; rep from * 1 more time, k2, *k2, p1; rep from * to end.',
    ['   - . . - . . . . - . | - . |  1'],
  ],
  [
    'and a wrong-side row last',
    'stitches: 12\nRow 1 (WS): *p1, k1; rep from * 1 more time, p2, *p2, k1; rep from * to end.',
    ['1  . - . - . . . . - | . . - |'],
  ],
  [
    'a repeat that stands over the one below, shifted to the right',
    'multiple: 8 + 5\nRow 1 (RS): *p5, k3; rep from * to last 5 sts, p5.\nRow 2 (WS): *k5, p3; rep from * to last 5 sts, k5.',
    ['2  - - - - - | . . . - - - - - |', '   - - - - - | . . . - - - - - |  1'],
  ],
  [
    'and to the left',
    'multiple: 8 + 5\nRow 1 (RS): p5, *k3, p5; rep from *.\nRow 2 (WS): k5, *p3, k5; rep from *.',
    ['2   | - - - - - . . . | - - - - -', '    | - - - - - . . . | - - - - -  1'],
  ],
])('%s', (_, rows, lines) => {
  expect(drawn(rows)).toEqual(lines);
});

test('in pattern looks like what lies below it', () => {
  const {grid} = chartOfRows(
    'stitches: 4\nRow 1 (RS): k2, p2.\nRow 2 (WS): patt 4 sts.\nRow 3 (RS): k1, patt 3 sts.',
  );
  const surfaces = grid?.rows.map(({cells}) =>
    cells.map(({face}) => (face.shape === 'loop' ? face.surface : face.shape)),
  );
  expect(surfaces).toEqual([
    ['purl', 'purl', 'knit', 'knit'],
    ['purl', 'purl', 'knit', 'knit'],
    ['purl', 'purl', 'knit', 'knit'],
  ]);
});

test.each([
  ['multiple: 4 + 1\nRow 1: K1, *p2, k2; rep from *.', 5, ''],
  ['multiple: 4 + 1\ncast on: 13\nRow 1: K1, *p2, k2; rep from *.', 5, ''],
  ['multiple: 4 + 1\ncast on: 5\nRow 1: K1, *p2, k2; rep from *.', 5, ''],
  ['multiple: 4 + 1\ncast on: 13\nRow 1: K1, *p4, k4; rep from * to last 4 sts, k4.', 13, ''],
  ['multiple: 4 + 1\ncast on: 13\nRow 1: K1, *p2, k2; rep from *. 13 sts.', 13, ''],
  ['multiple: 4 + 1\ncast on: 13 (17)\nRow 1: K1, *p2, k2; rep from *.', 13, '13 stitches'],
  ['sizes: S (M)\nmultiple: 4 + 1\ncast on: 13 (17)\nRow 1: K1, *p2, k2; rep from *.', 13, 'S'],
  ['cast on: 13\nRow 1: K1, *p2, k2; rep from *.', 13, ''],
])('%j is drawn on %i stitches', (rows, start, size) => {
  const charted = chartOfRows(rows);
  expect([charted.grid?.start, charted.size]).toEqual([start, size]);
});
