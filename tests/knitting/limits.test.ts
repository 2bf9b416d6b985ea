import {describe, expect, test} from 'vitest';
import {mostAlongEdge, mostCounted, mostPlaces} from '../../src/knitting/cannot-work.ts';
import {castOnCount} from '../../src/knitting/cast-on-count.ts';
import {curvedEdge} from '../../src/knitting/curved-edge.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {heelTurns} from '../../src/knitting/heel-turns.ts';
import {joinEdges} from '../../src/knitting/join-edges.ts';
import {type EdgePart, pickUp} from '../../src/knitting/pick-up.ts';
import {pickUpBlocks} from '../../src/knitting/pick-up-blocks.ts';
import {shoulderSteps} from '../../src/knitting/shoulder-steps.ts';
import {slope} from '../../src/knitting/slope.ts';
import {type Ends, spreadEvenly} from '../../src/knitting/spread-evenly.ts';
import {spreadInRib} from '../../src/knitting/spread-in-rib.ts';
import {multipleWords, parseStitchMultiple} from '../../src/knitting/stitch-multiple.ts';
import {millimetres, perMillimetre, rows, stitches} from '../../src/knitting/units.ts';
import {widthMatch} from '../../src/knitting/width-match.ts';
import type {Result} from '../../src/support/result.ts';

// Numbers that no knitting can follow, and those beside them that it can. The advice was worked out by hand: whoever
// follows it gets a piece.

/** The fact and the advice of a refusal, in one line; null when it can be worked. */
const refusal = (result: Result<unknown>) =>
  result.ok ? null : result.problems.map(({message, hint}) => `${message}. ${hint}`).join(' ');

const over = mostCounted + 1;

describe('heel of short rows', () => {
  const heel = (all: number, middle: number) => refusal(heelTurns(stitches(all), stitches(middle)));

  test('the largest and the smallest heel are worked', () => {
    expect(heel(mostCounted, 33_333)).toBeNull();
    expect(heelTurns(stitches(3), stitches(1))).toMatchObject({value: {each: 1, first: 2, last: 1}});
  });

  test('a heel beyond counting is refused', () => {
    expect(heel(over, 33_334)).toContain('more stitches than a heel has');
  });

  // 2 stitches: one each side and none left. 10 stitches: at most 8 may stay in the middle.
  test.each([
    [2, 1, 'at least 3 stitches'],
    [2, 0, 'at least 3 stitches'],
    [3, 0, 'Leave 1 to 1 stitches'],
    [10, 0, 'Leave 1 to 8 stitches'],
    [10, 9, 'Leave 1 to 8 stitches'],
  ])('%i stitches do not leave %i in the middle', (all, middle, advice) => {
    expect(heel(all, middle)).toContain(advice);
  });

  // Both neighbours are even with the heel; none may be zero or leave less than one stitch at each side.
  test.each([
    [30, 11, 'Leave 10 or 12 stitches'],
    [4, 1, 'Leave 2 stitches'],
    [10, 7, 'Leave 6 or 8 stitches'],
    [9, 6, 'Leave 5 or 7 stitches'],
    [5, 2, 'Leave 1 or 3 stitches'],
  ])('%i less %i is odd', (all, middle, advice) => {
    expect(heel(all, middle)).toContain(advice);
  });
});

describe('slope', () => {
  const sloped = (from: number, to: number, height: number, edges: 1 | 2, onlyRight = false) =>
    refusal(slope({from: stitches(from), to: stitches(to), rows: rows(height), edges, onlyRight}));

  test('the longest is worked', () => {
    expect(sloped(mostCounted, mostCounted - 2, mostCounted, 2)).toBeNull();
    expect(sloped(mostPlaces + 1, 1, mostPlaces, 1)).toBeNull();
    expect(sloped(20, 10, 10, 2, true)).toBeNull();
  });

  test.each([
    ['from', over, 10, 10],
    ['to', 10, over, 10],
    ['rows', 10, 20, over],
  ])('too many: %s', (_, from, to, height) => {
    expect(sloped(from, to, height, 1)).toMatch(/^`100000` is more than a piece of knitting has/);
  });

  test('nothing to shape is said so', () => {
    expect(sloped(40, 40, 20, 2)).toContain('Work even');
  });

  test.each([
    [40, 31, 'Work to 32 or 30 stitches, or work one single decrease'],
    [31, 40, 'Work to 39 or 41 stitches, or work one single increase'],
    [5, 0, 'Work to 1 stitches, or'],
    [4, 1, 'Work to 2 or 0 stitches, or'],
  ])('%i to %i is odd', (from, to, advice) => {
    expect(sloped(from, to, 60, 2)).toContain(advice);
  });

  // 40 to 20 at both edges are 10 shaping rows: 10 rows, or 20 when only every second row is a right-side row.
  test('too few rows', () => {
    expect(sloped(40, 20, 9, 2)).toContain('Work at least 10 rows');
    expect(sloped(40, 20, 19, 2, true)).toMatch(/do not fit in `9` right-side rows. Work at least 20 rows/);
    expect(sloped(2 * mostPlaces + 2, 0, 5000, 2)).toContain(`Shape on at most ${mostPlaces} rows`);
    expect(sloped(2 * mostPlaces, 0, 500, 2)).toContain(`Work at least ${mostPlaces} rows`);
  });
});

describe('buttonholes in ribs', () => {
  const band = (count: number, knit: number, purl: number, buttonholes = 1, width = purl) =>
    spreadInRib({stitches: stitches(count), rib: {knit, purl}, buttonholes, width});

  test('a band of one repeat and the longest band are worked', () => {
    expect(band(4, 2, 2)).toMatchObject({value: {ribs: [1]}});
    expect(refusal(band(mostCounted, 2, 2))).toBeNull();
  });

  test.each([
    [20, 0, 2],
    [20, 2, 0],
    [3, 2, 2],
    [over, 2, 2],
  ])('a rib does not fit: %i stitches, k%i, p%i', (count, knit, purl) => {
    expect(refusal(band(count, knit, purl, 1, 1))).toContain(`\`k${knit}, p${purl}\` does not fit`);
  });

  // Centred means as many purl stitches on both sides: all odd widths up to an odd rib, all even ones up to an even rib.
  test.each([
    [1, 2, 'Make it 1 stitch wide.'],
    [1, 0, 'Make it 1 stitch wide.'],
    [2, 1, 'Make it 2 stitches wide.'],
    [3, 2, 'Make it 1 or 3 stitches wide.'],
    [4, 6, 'Make it 2 or 4 stitches wide.'],
    [5, 0, 'Make it 1 or 3 or 5 stitches wide.'],
  ])('in %i purl stitches a width of %i', (purl, width, advice) => {
    expect(refusal(band(60, 2, purl, 1, width))).toContain(advice);
  });

  test('as many buttonholes as ribs, not one more', () => {
    expect(band(20, 2, 2, 5)).toMatchObject({value: {ribs: [1, 2, 3, 4, 5], free: [0, 0, 0, 0, 0, 0]}});
    expect(refusal(band(20, 2, 2, 6))).toContain('Work 1 to 5 of them');
    expect(refusal(band(20, 2, 2, 0))).toContain('Work 1 to 5 of them');
    expect(refusal(band(8000, 2, 2, mostPlaces + 1))).toContain(`Work 1 to ${mostPlaces} of them`);
  });

  // k2, p2 three times and two knit stitches over; the middle rib is bound off, and its two stitches come back.
  test('the rows of a band that ends with knit stitches', () => {
    expect(band(14, 2, 2)).toMatchObject({
      value: {
        ribs: [2],
        boundOff: 'Row 1 (RS): K2, p2, k2, bind off 2, k2, p2, k2. (12 sts)',
        castOn: 'Row 2 (WS): P2, k2, p2, cast on 2, p2, k2, p2. (14 sts)',
      },
    });
  });
});

describe('spread over a row', () => {
  const spread = (count: number, places: number, uses: number, ends: Ends | null, needsNeighbours = false) =>
    spreadEvenly({stitches: stitches(count), places, work: {uses, makes: 1}, ends, needsNeighbours});

  test('the longest row and the most places are worked', () => {
    expect(refusal(spread(mostCounted, mostPlaces, 2, 'half'))).toBeNull();
  });

  test.each([
    [0, 1, 'Write the stitches on the needle'],
    [over, 1, 'Write the stitches on the needle'],
    [5000, 0, `1 to ${mostPlaces} times`],
    [5000, mostPlaces + 1, `1 to ${mostPlaces} times`],
  ])('%i stitches, %i places', (count, places, advice) => {
    expect(refusal(spread(count, places, 1, 'half'))).toContain(advice);
  });

  // 20 stitches hold 10 decreases of two; with 3 fixed at each end, 14 are left for 7. 5 stitches hold none with 3 and 3.
  test.each([
    [
      20,
      11,
      'half',
      /^`11 places` of `2 stitches` use `22` stitches.* at most 10 times, or begin with at least 22/,
    ],
    [20, 8, 3, /^`8 places` of `2 stitches` with 3 at each end use `22`.* at most 7 times/],
    [5, 1, 3, /has `5`\. Begin with at least 8 stitches/],
    [1, 1, 'half', /has `1`\. Begin with at least 2 stitches/],
  ] as const)('%i stitches do not hold %i decreases, ends %s', (count, places, ends, said) => {
    expect(refusal(spread(count, places, 2, ends))).toMatch(said);
  });

  test('one place between two fixed ends must use up the row', () => {
    expect(spread(8, 1, 2, 3)).toMatchObject({value: {spaces: [3, 3], between: null, result: 7}});
    expect(refusal(spread(9, 1, 2, 3))).toContain('use up all 9 stitches');
    expect(spread(10, 2, 2, 3)).toMatchObject({
      value: {spaces: [3, 0, 3], between: {shortest: 0, longest: 0}},
    });
    expect(spread(9, 1, 2, 'half')).toMatchObject({value: {between: null}});
  });

  // Lifted from between two stitches: in 10 stitches, 9 gaps; 10 in the round; 5 with half a space at each end, which
  // is rounded down to none above that; 5 gaps between 3 and 3 at the ends.
  test.each([
    [10, 'whole', 9],
    [10, null, 10],
    [10, 'half', 5],
    [10, 3, 5],
    [7, 3, 2],
  ] as const)('of %i stitches, ends %s, at most %i raised increases', (count, ends, most) => {
    expect(refusal(spread(count, most, 0, ends, true))).toBeNull();
    expect(refusal(spread(count, most + 1, 0, ends, true))).toContain(`Work at most ${most} of them`);
  });

  test.each([
    [10, 0],
    [1, 'half'],
    [1, 'whole'],
  ] as const)('of %i stitches, ends %s, no raised increase', (count, ends) => {
    expect(refusal(spread(count, 2, 0, ends, true))).toContain(
      'Work bar increases, which use a stitch, instead',
    );
  });
});

describe('shoulder, curve and joined edges', () => {
  const shoulder = (count: number, steps: number) => refusal(shoulderSteps(stitches(count), steps));
  const curve = (width: number, height: number) =>
    refusal(curvedEdge('neckline', stitches(width), rows(height)));

  test('the largest are worked, one more is refused', () => {
    expect(shoulder(mostCounted, mostPlaces)).toBeNull();
    expect(shoulder(over, 3)).toContain('more than a piece of knitting has');
    expect(shoulder(2000, mostPlaces + 1)).toContain('more than a piece of knitting has');
    expect(curve(mostCounted, 2 * mostPlaces)).toBeNull();
    expect(curve(over, 10)).toContain('more than a piece of knitting has');
    expect(curve(10, 2 * mostPlaces + 2)).toContain('more than a piece of knitting has');
    expect(refusal(joinEdges(mostAlongEdge, 1))).toBeNull();
    expect(refusal(joinEdges(mostAlongEdge + 1, 1))).toContain(`Write edges up to ${mostAlongEdge}`);
    expect(refusal(joinEdges(1, mostAlongEdge + 1))).toContain(`Write edges up to ${mostAlongEdge}`);
  });

  test.each([
    [3, 0, 'Work 1 to 3 steps'],
    [3, 4, 'Work 1 to 3 steps'],
    [0, 1, 'Write the stitches of one shoulder'],
  ])('%i stitches in %i steps', (count, steps, advice) => {
    expect(shoulder(count, steps)).toContain(advice);
  });

  test('an edge of nothing is not joined', () => {
    expect(refusal(joinEdges(0, 5))).toContain('cannot be joined');
    expect(refusal(joinEdges(5, 0))).toContain('cannot be joined');
  });

  // 11 over 4: 2, 3, 3, 3 in some order; a quarter of 4 is 1, half 2, three quarters 3.
  test('the numbers that meet come smallest first, and equal edges are pinned alike', () => {
    expect(joinEdges(11, 4)).toMatchObject({
      value: {
        fewer: 'other',
        kinds: [
          {meets: 2, times: 1},
          {meets: 3, times: 3},
        ],
      },
    });
    expect(joinEdges(8, 8)).toMatchObject({
      value: {
        fewer: 'one',
        pins: [
          {one: 2, other: 2},
          {one: 4, other: 4},
          {one: 6, other: 6},
        ],
      },
    });
  });
});

describe('picking up', () => {
  const gauge = <U extends 'stitches' | 'rows'>(count: number) =>
    perMillimetre<U>(Fraction.ofRatio(count, 100));
  const along = (...edge: readonly EdgePart[]) =>
    pickUp(edge, {stitches: gauge(20), rows: gauge(26)}, gauge(20), {of: 1, plus: 0});
  const part = (places: number, slant = 0): EdgePart => ({
    kind: slant > 0 ? 'slanting rows' : 'rows',
    places,
    slant,
  });

  test('an edge of nothing, also beside one that is something', () => {
    for (const edge of [[], [part(0)], [part(10), part(0)]]) {
      expect(refusal(along(...edge))).toContain('no rows and no bound-off stitches');
    }
  });

  test('the longest edge is worked, a longer one is refused', () => {
    expect(refusal(along(part(mostAlongEdge)))).toBeNull();
    expect(refusal(along(part(10), part(mostAlongEdge + 1)))).toContain(
      `Write counts up to ${mostAlongEdge}`,
    );
    expect(refusal(along(part(10, mostAlongEdge + 1)))).toContain(`Write counts up to ${mostAlongEdge}`);
  });

  // Half of 2 over 3 are 1 over 1 and 1 over 2; as many as places is 1 of 1; 8 over 4 are two from each.
  test.each([
    [2, 3, [[2, 3]]],
    [
      2,
      4,
      [
        [1, 2],
        [1, 2],
      ],
    ],
    [
      3,
      3,
      [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
    ],
    [5, 4, [[5, 4]]],
    [
      4,
      2,
      [
        [2, 1],
        [2, 1],
      ],
    ],
    [
      10,
      13,
      [
        [3, 4],
        [3, 4],
        [4, 5],
      ],
    ],
  ])('%i over %i', (picked, of, blocks) => {
    expect(pickUpBlocks(picked, of).map((block) => [block.picked, block.of])).toEqual(blocks);
  });

  test('nothing is not picked up', () => {
    expect(() => pickUpBlocks(0, 3)).toThrow();
    expect(() => pickUpBlocks(3, 0)).toThrow();
  });
});

describe('cast on, panels and multiples', () => {
  const perTenCm = (count: number) => perMillimetre<'stitches'>(Fraction.ofRatio(count, 100));
  const castOn = (mm: number, ease: number, of = 1, plus = 0) =>
    castOnCount({
      width: millimetres(mm),
      ease: millimetres(ease),
      gauge: perTenCm(20),
      multiple: {of, plus},
      selvedges: 0,
    });

  // 20 over 10 cm is one stitch on 5 mm.
  test('the widest piece is worked, a wider one and none are refused', () => {
    expect(castOn(5 * mostCounted, 0)).toMatchObject({value: {chosen: {castOn: mostCounted}}});
    expect(refusal(castOn(5 * over, 0))).toContain('Check the unit of the width');
    expect(refusal(castOn(50, -50))).toContain('not above zero');
  });

  // 10 mm are 2 stitches: a multiple of 6 + 5 has 11 at least; a multiple of 10 − 12 has 8, twice the repeat less 12.
  test('a piece narrower than one repeat gets one', () => {
    expect(castOn(10, 0, 6, 5)).toMatchObject({value: {fewer: null, chosen: {castOn: 11, repeats: 1}}});
    expect(castOn(10, 0, 10, -12)).toMatchObject({value: {fewer: null, chosen: {castOn: 8, repeats: 2}}});
    expect(castOn(55, 0, 6, 5)).toMatchObject({value: {fewer: {castOn: 11}, isTie: false}});
  });

  test('a panel of cables', () => {
    const match = (count: number, panel: number, plain: number) =>
      refusal(widthMatch(stitches(count), perTenCm(panel), perTenCm(plain)));
    expect(match(mostCounted, 20, 20)).toBeNull();
    expect(match(0, 20, 20)).toContain('Write the stitches of the panel');
    expect(match(over, 20, 20)).toContain('Write the stitches of the panel');
    expect(match(mostCounted, 20, 21)).toContain('Check the unit of both gauges');
    expect(match(1, 100, 20)).toContain('Check the unit of both gauges');
  });

  test.each([
    ['99999', null],
    ['100000', 'Write a repeat of 1 to 99999'],
    ['0', 'Write a repeat of 1 to 99999'],
    ['4 + 99999', null],
    ['4 − 100000', 'Write a repeat of 1 to 99999'],
    ['six', 'such as `6 + 5`'],
  ])('a multiple of `%s`', (text, advice) => {
    const said = refusal(parseStitchMultiple(text));
    if (advice === null) expect(said).toBeNull();
    else expect(said).toContain(advice);
  });

  test.each([
    [{of: 6, plus: 0}, 'a multiple of 6'],
    [{of: 6, plus: 5}, 'a multiple of 6 + 5'],
    [{of: 6, plus: -1}, 'a multiple of 6 \u2212 1'],
    [{of: 1, plus: 0}, 'any number'],
  ])('%o in words', (multiple, words) => {
    expect(multipleWords(multiple)).toBe(words);
  });
});
