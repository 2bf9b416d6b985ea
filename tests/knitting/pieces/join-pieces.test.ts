import {expect, test} from 'vitest';
import {Fraction} from '../../../src/knitting/fraction.ts';
import {joinPieces} from '../../../src/knitting/pieces/join-pieces.ts';
import {areaInside, heightOf, lengthAlong, outlineOf} from '../../../src/knitting/pieces/piece-outline.ts';
import {millimetres, perMillimetre} from '../../../src/knitting/units.ts';
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

/** A stitch 5 mm wide and a row 2.5 mm high, so that limits can be met exactly. */
const fine = {
  stitches: perMillimetre<'stitches'>(Fraction.ofRatio(20, 100)),
  rows: perMillimetre<'rows'>(Fraction.ofRatio(40, 100)),
};
const straight = (name: string, side: number, armhole: number) => ({
  ...named(
    name,
    `cast on 20\nwork ${side} rows\nmark the underarm\nwork ${armhole} rows\nmark the shoulder\nwork 2 rows\nbind off`,
  ),
  gauges: fine,
});
const cap = (rows: number, stitches: number) => ({
  ...named('sleeve', `cast on ${stitches}\nmark the underarm\nwork ${rows} rows\nbind off`),
  gauges: fine,
});

// Two armholes of 40 rows are 200 mm; a cap is twice its rows and the top of it, 5 mm to a stitch.
test.each([
  [40, 0, 1, '205.0', true],
  [30, 0, 10, '200.0', true],
  [30, 0, 9, '195.0', false],
  [30, 0, 15, '225.0', true],
  [30, 0, 16, '230.0', false],
])('a cap of %i rows and a top of %i + %i stitches', (rows, more, top, length, meets) => {
  const bodies = [straight('front', 40, 40), straight('back', 40, 40)];
  expect(checksOf(cap(rows, more + top), ...bodies)).toEqual([['cap and armhole', length, '200.0', meets]]);
});

test.each([
  [40, 42, true],
  [40, 43, false],
  [43, 40, false],
  [42, 40, true],
])('sides of %i and %i rows at 2.5 mm a row', (one, other, meets) => {
  expect(checksOf(straight('front', one, 40), straight('back', other, 40))).toEqual([
    ['side seam', (one * 2.5).toFixed(1), (other * 2.5).toFixed(1), meets],
    ['shoulder', '5.0', '5.0', true],
  ]);
});

test('the body that has no shoulder is named, the sleeve that has none is not', () => {
  const open = {...straight('front', 40, 40), name: 'open'};
  const worked = {...open.worked, marks: open.worked.marks.filter(({name}) => name === 'underarm')};
  expect(checksOf(straight('back', 40, 40), {...open, worked})).toEqual([
    '`open` has no mark `shoulder` to measure from',
  ]);
  expect(checksOf(cap(30, 10), straight('back', 40, 40), {...open, worked})).toEqual([
    '`open` has no mark `shoulder` to measure from',
  ]);
});

/** By hand, 0.3 rows to a millimetre: 5 rows are 16⅔ mm, 10 are 33⅓; rows 11 to 20 measure 60 mm in all. */
test.each([
  [0, '0.000'],
  [5, '16.667'],
  [10, '33.333'],
  [15, '63.333'],
  [20, '93.333'],
  [25, '110.000'],
])('%i rows, of which ten have a length of their own, are %s mm', (rows, height) => {
  const length = millimetres(60);
  const stretches = [
    {from: 10, to: 20, length},
    {from: 20, to: 20, length},
  ];
  expect(heightOf(rows, stretches, gauges.rows).toNumber().toFixed(3)).toBe(height);
});

// A right triangle of 3 by 4 rows and half stitches doubled, and a square: elementary geometry.
test('the area inside an outline, and the way round it', () => {
  const at = (x: number, y: number) => ({x: millimetres(x), y: millimetres(y)});
  expect(areaInside([at(0, 0), at(4, 0), at(0, 3)]).toNumber()).toBe(6);
  expect(areaInside([at(0, 0), at(0, 3), at(4, 0)]).toNumber()).toBe(-6);
  expect(areaInside([at(1, 1), at(3, 1), at(3, 3), at(1, 3)]).toNumber()).toBe(4);
  expect(lengthAlong([at(0, 0), at(4, 0), at(0, 3)]).toNumber()).toBe(9);
});

test('the outline of a plain piece has its four corners, once each', () => {
  const panel = work('cast on 10\nwork 2 rows\nwork 2 rows\nbind off').worked.panels[0];
  expect(panel && outlineOf(panel).map(({x, row}) => [x, row])).toEqual([
    [10, 0],
    [10, 2],
    [10, 4],
    [-10, 4],
    [-10, 2],
    [-10, 0],
  ]);
});
