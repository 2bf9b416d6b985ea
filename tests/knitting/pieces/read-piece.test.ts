import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {readPiece} from '../../../src/knitting/pieces/read-piece.ts';
import {samplePieces, work} from './sample-pieces.ts';

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
  ])('%s', (line, step) => {
    const {piece, problems} = readPiece(line);
    expect(problems).toEqual([]);
    expect(piece.steps.map((placed) => placed.step)).toEqual([step]);
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
