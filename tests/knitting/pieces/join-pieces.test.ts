import {expect, test} from 'vitest';
import {joinPieces} from '../../../src/knitting/pieces/join-pieces.ts';
import {gauges, samplePieces, work} from './sample-pieces.ts';

function named(name: string, text: string) {
  return {name, worked: work(text).worked, gauges};
}

const back = named('back', samplePieces['vest back']);
const front = named('front', samplePieces['vest front']);

function checksOf(piece: ReturnType<typeof named>, ...others: ReturnType<typeof named>[]) {
  const result = joinPieces(piece, others);
  return result.ok
    ? result.value.map(({what, one, other, meets}) => [
        what,
        one.toNumber().toFixed(1),
        other.toNumber().toFixed(1),
        meets,
      ])
    : result.problems.map(({message}) => message);
}

test('front and back meet: sides of 110 rows ÷ 0.3, shoulders of √(90.9² + 20²) mm', () => {
  expect(checksOf(front, back)).toEqual([
    ['side seam', '366.7', '366.7', true],
    ['shoulder', '93.1', '93.1', true],
  ]);
});

test('a side 2 rows longer still meets, 6.7 mm apart it does not', () => {
  const longer = (rows: number) =>
    named('long', samplePieces['vest back'].replace('work 90 rows', `work ${rows} rows`));
  expect(checksOf(front, longer(91))[0]?.at(-1)).toBe(true);
  expect(checksOf(front, longer(92))[0]?.at(-1)).toBe(false);
});

/**
 * By hand, in mm. Armhole: 36.364 level, 6.667 up, 13.636 level, 6.667 up, √(36.364² + 53.333²) = 64.550, 173.333 up:
 * 301.217 on each body. Cap: 36.364 + 6.667 + 13.636 + 6.667 + √(113.636² + 166.667²) = 201.718 + 13.636 + 6.667 = 285.354
 * twice, and 36.364 at the top: 607.071.
 */
test('the cap is a little longer than the armholes of front and back', () => {
  expect(checksOf(named('sleeve', samplePieces.sleeve), front, back)).toEqual([
    ['cap and armhole', '607.1', '602.4', true],
  ]);
});

test('a cap shorter than its armhole does not meet', () => {
  const low = samplePieces.sleeve.replace('every other row 25 times', 'every row 25 times');
  expect(checksOf(named('sleeve', low), front, back)[0]?.at(-1)).toBe(false);
});

test('a piece without marks is told which one it needs', () => {
  expect(checksOf(named('hat', samplePieces.hat), back)).toEqual([
    '`hat` has no mark `underarm` to measure from',
  ]);
});
