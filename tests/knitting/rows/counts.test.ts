import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {landmarkAhead} from '../../../src/knitting/rows/landmark-ahead.ts';
import {LawForAll, OnlyWhen, plainLaw, solveCongruence} from '../../../src/knitting/rows/law.ts';
import {
  constant,
  isExact,
  isSame,
  minus,
  plus,
  showForm,
  times,
} from '../../../src/knitting/rows/linear-form.ts';
import {
  castOn,
  isSameNeedles,
  type Mark,
  type Needles,
  rounded,
  turned,
  withMark,
  withTotal,
  worked,
} from '../../../src/knitting/rows/needle.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {
  behindRoundStart,
  broughtRound,
  nextRound,
  pastRoundStart,
} from '../../../src/knitting/rows/round-needle.ts';
import type {Landmark} from '../../../src/knitting/rows/row-syntax.ts';
import {slipChanges} from '../../../src/knitting/rows/slip-changes.ts';

const form = (each: number, fixed: number) => ({each, fixed});

describe('counts that grow with the repeats', () => {
  test.each([
    [0, 29, '29'],
    [1, 0, 'n'],
    [1, 5, 'n + 5'],
    [6, 0, '6 · n'],
    [6, 5, '6 · n + 5'],
    [6, -5, '6 · n − 5'],
    [0, 0, '0'],
  ])('%i n and %i are written %s', (each, fixed, text) => {
    expect(showForm(form(each, fixed))).toBe(text);
  });

  test('sums, differences and multiples', () => {
    expect(plus(form(6, 5), form(2, -1))).toEqual(form(8, 4));
    expect(minus(form(6, 5), form(2, -1))).toEqual(form(4, 6));
    expect(times(form(6, 5), 3)).toEqual(form(18, 15));
    expect([form(6, 5), form(6, 4), form(5, 5)].map((other) => isSame(form(6, 5), other))).toEqual([
      true,
      false,
      false,
    ]);
    expect([form(1, 1), form(2 ** 53, 1), form(1, 2 ** 53)].map(isExact)).toEqual([true, false, false]);
  });

  test('plain numbers', () => {
    expect([
      plainLaw.divide(constant(6), 3),
      plainLaw.divide(constant(7), 3),
      plainLaw.divide(constant(-1), 3),
    ]).toEqual([constant(2), {remainder: 1}, {remainder: 2}]);
    expect([-2, 0, 3].map((count) => plainLaw.signOf(constant(count)))).toEqual([-1, 0, 1]);
  });

  // Solved by hand: 2 t + 1 is never a multiple of 4, 2 t is for every second t, 3 t + 1 of 5 when t is 3, 8, 13 …
  test.each([
    [form(6, 6), 3, form(2, 2)],
    [form(6, 5), 3, {remainder: 2}],
    [form(6, -1), 3, {remainder: 2}],
    [form(0, 7), 3, {remainder: 1}],
    [form(2, 1), 4, {remainder: 1}],
    [form(2, -1), 4, {remainder: 3}],
    [form(2, 0), 4, new OnlyWhen(2, 0)],
    [form(3, 1), 5, new OnlyWhen(5, 3)],
    [form(-3, 1), 5, new OnlyWhen(5, 2)],
  ])('%j divided by %i', (count, by, expected) => {
    const law = new LawForAll(1);
    if (expected instanceof OnlyWhen) {
      let thrown: unknown;
      try {
        law.divide(count, by);
      } catch (error) {
        thrown = error;
      }
      expect(thrown).toEqual(expected);
    } else expect(law.divide(count, by)).toEqual(expected);
  });

  // 2 t − 7 is above 0 from t = 4 on, 5 − t below it from t = 6 on.
  test.each([
    [form(0, -2), -1, 1],
    [form(0, 0), 0, 1],
    [form(0, 3), 1, 1],
    [form(2, -7), 1, 4],
    [form(2, -8), 1, 5],
    [form(-1, 5), -1, 6],
    [form(1, 9), 1, 1],
  ])('the sign of %j is %i from %i repeats on', (count, sign, from) => {
    const law = new LawForAll(1);
    expect([law.signOf(count), law.from]).toEqual([sign, from]);
    const late = new LawForAll(9);
    expect([late.signOf(count), late.from]).toEqual([sign, 9]);
  });

  test('a congruence is solved by exactly the numbers that solve it', () => {
    const small = fc.integer({min: -60, max: 60});
    fc.assert(
      fc.property(small, small, fc.integer({min: 1, max: 40}), (a, b, m) => {
        const solved = solveCongruence(a, b, m);
        for (let t = 0; t < m; t++) {
          const holds = (a * t - b) % m === 0;
          expect(solved !== null && t % solved.every === solved.rest).toBe(holds);
        }
      }),
      {numRuns: 300},
    );
  });
});

const mark = (kind: Landmark, at: number, name: string | null = null): Mark => ({
  kind,
  name,
  at: constant(at),
});
const needles = (left: number, right: number, leftMarks: Mark[] = [], rightMarks: Mark[] = []): Needles => ({
  left: constant(left),
  right: constant(right),
  leftMarks,
  rightMarks,
});

/** With needles at hand: markers are counted from the far end of their needle. */
describe('needles', () => {
  test('cast on, turned and brought round', () => {
    const placed = needles(3, 5, [mark('marker', 1)], [mark('gap', 2)]);
    expect(castOn(constant(8))).toEqual(needles(8, 0));
    expect(turned(placed)).toEqual(needles(5, 3, [mark('gap', 2)], [mark('marker', 1)]));
    expect(rounded(needles(0, 8, [], [mark('marker', 3, 'A')]))).toEqual(
      needles(8, 0, [mark('marker', 5, 'A')]),
    );
    expect(rounded(needles(2, 6, [mark('marker', 1)], [mark('marker', 3)]))).toEqual(
      needles(8, 0, [mark('marker', 5), mark('marker', 1)]),
    );
  });

  test('another count is put on the left needle, the markers stay from the far end', () => {
    const placed = needles(8, 0, [mark('marker', 1)]);
    expect(withTotal(placed, constant(8))).toBe(placed);
    expect(withTotal(placed, constant(9))).toEqual(needles(9, 0, [mark('marker', 1)]));
    expect(withTotal(needles(3, 5, [mark('marker', 1)], [mark('gap', 2)]), constant(8))).toEqual(
      needles(8, 0, [mark('marker', 1)]),
    );
  });

  test('of more marks than can be followed the oldest is forgotten', () => {
    const two = needles(3, 5, [], [mark('turn', 1), mark('turn', 2)]);
    expect(withMark(two, mark('turn', 5), 3).rightMarks.map(({at}) => at.fixed)).toEqual([1, 2, 5]);
    expect(withMark(two, mark('turn', 5), 2).rightMarks.map(({at}) => at.fixed)).toEqual([2, 5]);
  });

  test.each([
    // Six stitches with a marker three before the end: passed it lies behind three, or behind a shaped passage.
    ['up to the marker', 3, 3, [mark('marker', 3)], []],
    ['past it, each stitch one', 4, 4, [], [mark('marker', 3)]],
    ['past it, a stitch lost', 4, 3, [], [mark('marker', 0)]],
    ['nothing', 0, 1, [mark('marker', 3)], []],
  ])('%s', (_, used, made, left, right) => {
    const before = needles(6, 0, [mark('marker', 3)]);
    const after = worked(before, constant(used), constant(made), plainLaw);
    expect([after.leftMarks, after.rightMarks]).toEqual([left, right]);
    expect([after.left.fixed, after.right.fixed]).toEqual([6 - used, made]);
  });

  test('a turn or a gap is done with when it is passed, a beginning of a round is not', () => {
    const before = needles(6, 2, [mark('gap', 4), mark('turn', 5), mark('round start', 4)]);
    const after = worked(before, constant(3), constant(3), plainLaw);
    expect(after).toEqual(needles(3, 5, [], [mark('round start', 4)]));
  });

  test('needles are the same when every mark is', () => {
    const one = needles(3, 5, [mark('marker', 1, 'A')], [mark('gap', 2)]);
    const others = [
      needles(3, 5, [mark('marker', 1, 'A')], [mark('gap', 2)]),
      needles(4, 5, [mark('marker', 1, 'A')], [mark('gap', 2)]),
      needles(3, 4, [mark('marker', 1, 'A')], [mark('gap', 2)]),
      needles(3, 5, [mark('marker', 1, 'B')], [mark('gap', 2)]),
      needles(3, 5, [mark('marker', 2, 'A')], [mark('gap', 2)]),
      needles(3, 5, [mark('turn', 1, 'A')], [mark('gap', 2)]),
      needles(3, 5, [], [mark('gap', 2)]),
      needles(3, 5, [mark('marker', 1, 'A')], []),
      needles(3, 5, [mark('marker', 1, 'A'), mark('marker', 2)], [mark('gap', 2)]),
      needles(3, 5, [mark('marker', 1, 'A')], [mark('gap', 3)]),
    ];
    expect(others.map((other) => isSameNeedles(one, other))).toEqual([true, ...Array(9).fill(false)]);
  });

  /** Ten in the round, four of them worked, turned: what is worked on past the beginning comes round. */
  test('a round that was turned goes on past its beginning', () => {
    const back = needles(4, 6, [], [mark('marker', 2), mark('turn', 6)]);
    const round = broughtRound(back, constant(3), plainLaw);
    expect(round).toEqual(needles(7, 3, [mark('marker', 1), mark('round start', 3)], [mark('turn', 3)]));
    expect(behindRoundStart(round, plainLaw)).toEqual(constant(3));
    expect(behindRoundStart(needles(2, 8, [mark('round start', 3)]), plainLaw)).toEqual(constant(0));
    expect(behindRoundStart(needles(3, 7, [mark('round start', 3)]), plainLaw)).toEqual(constant(3));
    const again = broughtRound(round, constant(1), plainLaw);
    expect(again.leftMarks.filter(({kind}) => kind === 'round start')).toEqual([mark('round start', 4)]);
    expect(again.rightMarks).toEqual([mark('turn', 2)]);
    expect(pastRoundStart(needles(1, 9, [], [mark('round start', 7)]))).toEqual(constant(2));
    expect(pastRoundStart(needles(1, 9, [], [mark('marker', 7)]))).toEqual(constant(0));
  });

  test('the next round begins where this one did', () => {
    expect(
      nextRound(needles(0, 8, [], [mark('marker', 3), mark('round start', 5)]), false, plainLaw),
    ).toEqual(needles(8, 0, [mark('marker', 5)]));
    expect(nextRound(needles(0, 8, [], [mark('marker', 3)]), true, plainLaw)).toEqual(
      needles(8, 0, [mark('marker', 3)]),
    );
    expect(nextRound(needles(2, 6, [mark('round start', 2)], [mark('marker', 1)]), false, plainLaw)).toEqual(
      needles(8, 0, [mark('marker', 5)]),
    );
  });

  test.each([
    ['marker', null, null, 5],
    ['marker', 'A', null, 2],
    ['marker', 'C', null, null],
    ['marker', null, 6, 5],
    ['gap', null, null, 4],
    ['turn', null, null, 3],
    ['double stitch', null, null, null],
  ] as const)('to %s %s, from a marker at %s', (landmark, name, reached, at) => {
    const placed = needles(6, 0, [
      ...[mark('marker', 2, 'A'), mark('marker', 5, 'B'), mark('gap', 4), mark('turn', 3), mark('marker', 8)],
    ]);
    const extent = {kind: 'to landmark', landmark, name, before: null, past: null} as const;
    const found = landmarkAhead(extent, placed, plainLaw, reached === null ? null : constant(reached));
    expect(found?.fixed ?? null).toBe(at);
  });

  test('a marker that was just reached is passed by', () => {
    const placed = needles(5, 1, [mark('marker', 5), mark('marker', 2)]);
    const extent = {kind: 'to landmark', landmark: 'marker', name: null, before: null, past: null} as const;
    const from = (reached: number | null) =>
      landmarkAhead(extent, placed, plainLaw, reached === null ? null : constant(reached))?.fixed;
    expect([from(null), from(5), from(4)]).toEqual([5, 2, 5]);
  });
});

/** Each count of a row up and down, as a slip of the pen would have it. */
test.each([
  ['K3, p to end.', 1, ['k3 → k2', 'k3 → k4']],
  ['K3, p to end.', 3, ['k3 → k6']],
  [
    'K2tog, k1.',
    1,
    ['(k2tog → nothing)', 'k2tog → k3tog', '(k2tog → k2tog 2 times)', '(k1 → nothing)', 'k1 → k2'],
  ],
  [
    'P3tog tbl, p to end.',
    1,
    [
      'p3tog tbl → p2tog tbl',
      '(p3tog tbl → nothing)',
      'p3tog tbl → p4tog tbl',
      '(p3tog tbl → p3tog tbl 2 times)',
    ],
  ],
  ['Ssk, k to end.', 2, ['(ssk → ssk 3 times)']],
  ['Yo 3 times, k to end.', 2, ['yo 3 times → yo', 'yo 3 times → yo 5 times']],
  [
    'K to last 3 sts, p3.',
    1,
    ['k to last 3 sts → k to last 2 sts', 'k to last 3 sts → k to last 4 sts', 'p3 → p2', 'p3 → p4'],
  ],
  [
    'K to 2 sts before marker, p to end.',
    1,
    [
      'k to 2 sts before marker → k to 1 st before marker',
      'k to 2 sts before marker → k to 3 sts before marker',
    ],
  ],
  ['K to 2 sts past marker, p to end.', 2, ['k to 2 sts past marker → k to 4 sts past marker']],
  [
    '*Yo, k2; rep from * 3 more times.',
    1,
    [
      '3 more times → 2 more times',
      '3 more times → 4 more times',
      '(yo → nothing)',
      '(yo → yo 2 times)',
      'k2 → k1',
      'k2 → k3',
    ],
  ],
  ['[P2] 2 times.', 2, ['2 times → 4 times', 'p2 → p4']],
  ['BO 4, k to end.', 1, ['BO 4 → BO 3', 'BO 4 → BO 5']],
  ['CO 4, k to end.', 1, ['CO 4 → CO 3', 'CO 4 → CO 5']],
  [
    'Inc 2 sts evenly across row.',
    1,
    [
      'inc 2 sts evenly across row → inc 1 sts evenly across row',
      'inc 2 sts evenly across row → inc 3 sts evenly across row',
    ],
  ],
  ['K to end. 8 sts.', 10, ['8 sts → 18 sts']],
  [
    'K2 (3), p to end. 8 (9) sts.',
    1,
    [
      'k2 (3) → k1 (3)',
      'k2 (3) → k2 (2)',
      'k2 (3) → k3 (3)',
      'k2 (3) → k2 (4)',
      '8, 9 sts → 7, 9 sts',
      '8, 9 sts → 8, 8 sts',
      '8, 9 sts → 9, 9 sts',
      '8, 9 sts → 8, 10 sts',
    ],
  ],
])('%s by %i', (text, by, changes) => {
  const block = `stitches: 8 (9)\nRow 1: ${text}`;
  const {pattern, problems} = readRows(block);
  expect(problems).toEqual([]);
  const [row] = pattern.entries;
  const found = row?.kind === 'row' ? [...slipChanges(row, by)] : [];
  const words = found.map(({was, would, isWritten}) => {
    const change = `${was} → ${would ?? 'nothing'}`;
    return isWritten ? change : `(${change})`;
  });
  expect(words).toEqual(changes);
  for (const {span} of found) expect(block.slice(span.start, span.end)).not.toBe('');
});
