import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {readPiece} from '../../../src/knitting/pieces/read-piece.ts';
import {samplePieces, work} from './sample-pieces.ts';

const length = (text: string) => expect.objectContaining({text});
const shape = (change: string, count: number, where: string, every: number, times: number) => ({
  ...{kind: 'shape', change, count, where, every, times},
  isOnNext: false,
});

describe('a line of a piece block', () => {
  test.each([
    ['cast on 98 sts', {kind: 'cast on', count: 98}],
    ['Work even 40 rows.', {kind: 'work', rows: 40, measuring: null}],
    [
      'decrease 1 at each edge every 4th row 6 times',
      {kind: 'shape', change: 'decrease', count: 1, where: 'each edge', every: 4, times: 6, isOnNext: false},
    ],
    [
      'increase 1 at each end on the next and every fourth row, 6 times',
      {kind: 'shape', change: 'increase', count: 1, where: 'each edge', every: 4, times: 6, isOnNext: true},
    ],
    [
      'decrease 8 evenly',
      {kind: 'shape', change: 'decrease', count: 8, where: 'evenly', every: 1, times: 1, isOnNext: true},
    ],
    ['bind off 5 at the beginning of the next 2 rows', {kind: 'bind off at beginnings', count: 5, rows: 2}],
    ['bind off 5 at the beginning of the next row', {kind: 'bind off at beginnings', count: 5, rows: 1}],
    [
      'bind off in steps 8, 8, 9 at each edge',
      {kind: 'steps', how: 'bind off', steps: [8, 8, 9], where: 'each edge'},
    ],
    ['short rows in steps 5 and 5', {kind: 'steps', how: 'short rows', steps: [5, 5], where: 'each edge'}],
    ['bind off', {kind: 'end', how: 'bound off', count: null}],
    ['bind off the remaining 12 stitches', {kind: 'end', how: 'bound off', count: 12}],
    ['put 36 on a holder', {kind: 'end', how: 'held', count: 36}],
    ['put all on a holder', {kind: 'end', how: 'held', count: null}],
    ['draw up the last 8 sts', {kind: 'end', how: 'drawn up', count: 8}],
    ['mark the underarm', {kind: 'mark', name: 'underarm'}],
    ['each side, reversing shaping:', {kind: 'on part', name: null}],
    [
      'divide: 49 left, 1 on a holder, 49 right',
      {
        kind: 'divide',
        parts: [
          {name: 'left', count: 49},
          {name: null, count: 1},
          {name: 'right', count: 49},
        ],
      },
    ],
    [
      'at the same time, at the neck edge: bind off 3; decrease 1 every other row twice',
      {
        kind: 'along',
        where: 'neck',
        steps: [
          {kind: 'bind off at edge', count: 3, where: 'neck'},
          {kind: 'shape', change: 'decrease', count: 1, where: 'neck', every: 2, times: 2, isOnNext: false},
        ],
      },
    ],
    ['Start with 14', {kind: 'cast on', count: 14}],
    ['cast on 1 stitch', {kind: 'cast on', count: 1}],
    ['join in the round', {kind: 'way', isRound: true}],
    ['work flat', {kind: 'way', isRound: false}],
    ['back and forth', {kind: 'way', isRound: false}],
    ['work  1\u00a0row', {kind: 'work', rows: 1, measuring: null}],
    [
      'work 20 rows in rib, measuring 6 cm',
      {kind: 'work', rows: 20, measuring: expect.objectContaining({text: '6 cm'})},
    ],
    ['work until 36 cm from the start', {kind: 'work length', length: length('36 cm'), isTotal: true}],
    ['work even 6 cm', {kind: 'work length', length: length('6 cm'), isTotal: false}],
    ['inc 2 evenly every 3rd round 6 times', shape('increase', 2, 'evenly', 3, 6)],
    ['dec 1 at the armhole edge every alternate row once', shape('decrease', 1, 'side', 2, 1)],
    ['decrease 1 at the left end every row twice', shape('decrease', 1, 'left', 1, 2)],
    ['decrease 1 at the outer edge on every tenth row 3 times', shape('decrease', 1, 'side', 10, 3)],
    ['decrease 1 at this edge every second row 0 times', shape('decrease', 1, 'each edge', 2, 0)],
    ['increase 12 evenly on the next round', {...shape('increase', 12, 'evenly', 1, 1), isOnNext: true}],
    ['bind off 8 sts at the inner edge', {kind: 'bind off at edge', count: 8, where: 'neck'}],
    ['bind off all', {kind: 'end', how: 'bound off', count: null}],
    ['put the last 1 stitch on a pin', {kind: 'end', how: 'held', count: 1}],
    ['draw together', {kind: 'end', how: 'drawn up', count: null}],
    ['graft 12', {kind: 'end', how: 'grafted', count: 12}],
    ['add 4 stitches cast on', {kind: 'add', how: 'cast on', count: 4}],
    ['take up 32 from the thread', {kind: 'add', how: 'take up', count: 32}],
    ['pick up and knit 16 sts', {kind: 'add', how: 'pick up', count: 16}],
    ['mark Underarm', {kind: 'mark', name: 'underarm'}],
    ['Left side:', {kind: 'on part', name: 'left'}],
    ['The strap:', {kind: 'on part', name: 'strap'}],
    [
      'Divide : 49 sts for the Left side ,1 stitch held,  3 bound off, 2 on a thread, 1 st right',
      {
        kind: 'divide',
        parts: [
          {name: 'left', count: 49},
          {name: null, count: 1},
          {name: null, count: 3},
          {name: null, count: 2},
          {name: 'right', count: 1},
        ],
      },
    ],
    [
      'divide 5 sideways, 5 on a holder strap, 5 half bound off, 5 held back',
      {
        kind: 'divide',
        parts: [
          {name: 'sideways', count: 5},
          {name: 'on a holder strap', count: 5},
          {name: 'half bound off', count: 5},
          {name: 'held back', count: 5},
        ],
      },
    ],
    [
      'along armhole edge : bind off 12 ;bind off in steps 3, 2; work 2 cm; work 4 rows',
      {
        kind: 'along',
        where: 'side',
        steps: [
          {kind: 'bind off at edge', count: 12, where: 'side'},
          {kind: 'steps', how: 'bind off', steps: [3, 2], where: 'side'},
          {kind: 'work length', length: length('2 cm'), isTotal: false},
          {kind: 'work', rows: 4, measuring: null},
        ],
      },
    ],
    [
      'At the same time at the neck edge: decrease 1 at the side edge every row 2 times',
      {kind: 'along', where: 'neck', steps: [shape('decrease', 1, 'side', 1, 2)]},
    ],
  ])('%s', (line, step) => {
    const {piece, problems} = readPiece(line);
    expect(problems).toEqual([]);
    expect(piece.steps.map((placed) => placed.step)).toEqual([step]);
  });

  test.each([
    ['divide: 56 left', '`56 left` does not say how the stitches are divided'],
    ['divide: 5 left, 5 Left', '`5 left, 5 Left` does not say how the stitches are divided'],
    ['divide: 5 left, 2 on a holder', '`5 left, 2 on a holder` does not say how the stitches are divided'],
    ['divide: five left, 5 right', '`five left` does not say how the stitches are divided'],
    ['divide: 5 left, about 5 right', '`about 5 right` does not say how the stitches are divided'],
    ['divide', '`` does not say how the stitches are divided'],
    ['we divide here', '`we divide here` is no step known here'],
    ['at the nek edge: work 2 rows', '`nek edge` is no edge of a piece'],
    ['at the neck edge: cast on 4', '`cast on 4` cannot be worked along one edge'],
    [
      'at the neck edge: bind off 5 at the beginning of the next 2 rows',
      '`bind off 5 at the beginning of the next 2 rows` cannot be worked along one edge',
    ],
    ['at the neck edge: work 2 rows; knit', '`knit` is no step known here'],
    ['at the neck edge: then bind off 5', '`then bind off 5` is no step known here'],
    ['look at the neck edge: work 2 rows', '`look at the neck edge: work 2 rows` is no step known here'],
    ['bind off 123456', '`bind off 123456` is no step known here'],
    ['k'.repeat(60), `\`${'k'.repeat(60)}\` is no step known here`],
    ['k'.repeat(61), `\`${'k'.repeat(60)}…\` is no step known here`],
  ])('`%s` is refused', (line, message) => {
    const {piece, problems} = readPiece(line);
    expect([piece.steps.length, problems.map((problem) => problem.message)]).toEqual([0, [message]]);
    expect(problems[0]?.span).toEqual({start: 0, end: line.length});
  });

  test.each([
    [
      'at the nek edge: work 2 rows',
      'Write `at the neck edge:`, or `armhole edge`, `side edge`, `each edge`.',
    ],
    [
      'at the amhole edge: work 2 rows',
      'Write `at the armhole edge:`, or `armhole edge`, `side edge`, `each edge`.',
    ],
    ['at the elbow: work 2 rows', 'Write `at the neck edge:`, or `armhole edge`, `side edge`, `each edge`.'],
    ['zzz 7', 'Write it like `work 40 rows`.'],
    ['graft', null],
    ['graffft, 7', 'Write it like `graft 12`.'],
    ['Pick -- up 7 and more', 'Write it like `pick up 16`.'],
  ])('`%s` is answered with %s', (line, hint) => {
    expect(readPiece(line).problems[0]?.hint ?? null).toBe(hint);
  });

  test.each([
    ['decrese 1 at each edge every 4th row 6 times', 'decrease 1 at each edge every 4th row 6 times'],
    ['bind off 8 stitches at beginning of next two rows', 'bind off 5 at the beginning of the next 2 rows'],
    ['cast onn 98', 'cast on 98'],
    ['put 36 on hold', 'put 36 on a holder'],
  ])('`%s` is answered with the nearest form', (line, form) => {
    const text = `cast on 10\n  ${line}`;
    const [problem] = readPiece(text).problems;
    expect(problem?.hint).toBe(`Write it like \`${form}\`.`);
    expect(text.slice(problem?.span.start, problem?.span.end)).toBe(line);
  });

  test('an edge or an interval that is not known is not guessed at', () => {
    expect(readPiece('decrease 1 at the elbow edge every other row 2 times').problems).toHaveLength(1);
    expect(readPiece('decrease 1 at each edge every blue row 2 times').problems).toHaveLength(1);
  });

  test('the gauge is read from one line, with one length or two', () => {
    for (const line of ['22 sts and 30 rows over 10 cm', '22 sts over 10 cm, 30 rows over 10 cm']) {
      const {gauge} = readPiece(`gauge: ${line}`).piece;
      expect(
        gauge?.kind === 'written' && [gauge.stitches, gauge.rows].map(([count]) => count?.count.toNumber()),
      ).toEqual([22, 30]);
    }
    expect(readPiece('gauge: 22 over 10 cm').problems[0]?.message).toBe(
      '`22 over 10 cm` does not say stitches and rows',
    );
    expect(readPiece('gauge of: P-01').piece.gauge).toEqual({kind: 'of item', id: 'P-01'});
  });

  // 22 stitches over 10 cm are 0.22 to a millimetre, 5.5 over 2.5 cm too; 30 rows over 10 cm are 0.3.
  test.each([
    '22 stitches and 30 rounds to 10 cm',
    '22 sts over 10 cm and 30 rnds over 10 cm',
    '5.5 sts per 2.5 cm;  30 rows per 10 cm',
    '30 rows, 22 sts over 10 cm',
  ])('gauge: %s', (line) => {
    const {piece, problems} = readPiece(`Gauge : ${line}`);
    expect(problems).toEqual([]);
    const {gauge} = piece;
    if (gauge?.kind !== 'written') throw new Error('no gauge was read');
    const perMillimetre = [...gauge.stitches, ...gauge.rows].map(({count, over}) =>
      count.dividedBy(over.millimetres).toNumber(),
    );
    expect(perMillimetre).toEqual([0.22, 0.3]);
  });

  test.each([
    ['22 sts over 10 cm', '`22 sts over 10 cm` does not say stitches and rows'],
    ['30 rows over 10 cm', '`30 rows over 10 cm` does not say stitches and rows'],
    ['22 and 30 rows over 10 cm', '`22 and 30 rows over 10 cm` does not say stitches and rows'],
  ])('the gauge %s is half of one', (line, message) => {
    const text = `name: Vest\ngauge: ${line}`;
    const {piece, problems} = readPiece(text);
    expect([piece.gauge, problems.map((problem) => problem.message)]).toEqual([null, [message]]);
    expect(text.slice(problems[0]?.span.start, problems[0]?.span.end)).toBe(`gauge: ${line}`);
  });

  test.each([
    ['name: Vest, back ', 'Vest, back'],
    ['NAME:Vest', 'Vest'],
    ['name : Vest', 'Vest'],
    ['name:', null],
    ['# name: Vest', null],
    ['', null],
  ])('`%s` names the piece %s', (line, name) => {
    expect(readPiece(line)).toEqual({piece: {name, gauge: null, steps: []}, problems: []});
  });

  test('each line keeps its place and its words', () => {
    const text = 'cast on 10\n\n#\n# a remark\n  work 4 rows  \n\tbind off';
    const {steps} = readPiece(text).piece;
    expect(steps.map(({text: words}) => words)).toEqual(['cast on 10', 'work 4 rows', 'bind off']);
    expect(steps.map(({span}) => text.slice(span.start, span.end))).toEqual(steps.map((step) => step.text));
  });
});

const words =
  'cast on work rows decrease increase at each neck edge every other 4th times bind off the beginning of next in steps divide: left right side: mark put a holder cm ; , : 0 1 2 7 99999 100000 -1 ½'.split(
    ' ',
  );
const line = fc.oneof(
  fc.string({unit: 'grapheme', maxLength: 60}),
  fc.array(fc.constantFrom(...words), {maxLength: 12}).map((parts) => parts.join(' ')),
  fc.constantFrom(...Object.values(samplePieces).flatMap((text) => text.split('\n'))),
);

test('whatever is written, reading and working never throw, and every problem has a place and says what to do', () => {
  fc.assert(
    fc.property(fc.array(line, {maxLength: 12}), (lines) => {
      const text = lines.join('\n');
      for (const {span, message, hint} of work(text).problems) {
        expect(text.slice(span.start, span.end)).not.toBe('');
        expect(message).not.toMatch(/NaN|undefined|invalid/);
        expect(hint).toMatch(/^[A-Z].*\.$/s);
      }
    }),
    {numRuns: 400},
  );
});

test('a text of a hundred thousand letters or lines is refused without being worked', () => {
  expect(readPiece('k'.repeat(100_000)).problems).toHaveLength(1);
  expect(readPiece('work 2 rows\n'.repeat(100_000)).piece.steps).toHaveLength(300);
  expect(readPiece(`mark ${'a '.repeat(190)}`).problems).toHaveLength(1);
});

test('a line of 400 letters and a block of 300 lines are read, one more is not', () => {
  const messages = (text: string) => readPiece(text).problems.map(({message}) => message);
  expect(messages(`# ${'k'.repeat(500)}\nwork 2${' '.repeat(389)} rows`)).toEqual([]);
  expect(messages(`work 2${' '.repeat(390)} rows`)).toEqual([
    'a line of `401` letters is no step of a piece',
  ]);
  expect(messages(`${'work 2 rows\n'.repeat(300)}\n`)).toEqual([]);
  const {problems} = readPiece(`${'work 2 rows\n'.repeat(300)}\nwork 3 rows\nwork 4 rows`);
  expect(problems).toMatchObject([
    {message: 'the block has more than `300` lines', span: {start: 3601, end: 3612}},
  ]);
});
