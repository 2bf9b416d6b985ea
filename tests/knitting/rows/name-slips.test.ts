import {expect, it} from 'vitest';
import {nameSlipOfLaw, nameSlips} from '../../../src/knitting/rows/name-slips.ts';
import {proveForEveryMultiple} from '../../../src/knitting/rows/prove-for-every-multiple.ts';
import {prove} from './prove.ts';

/** What is wrong, the block, and for its one problem the words it stands at and its hint. */
const cases: readonly (readonly [string, string, string, RegExp])[] = [
  [
    'the only count that would do',
    'stitches: 21\nRow 1: K2, *yo, k2tog; rep from * to last 3 sts, k2.',
    'k2',
    /^`k3` for `k2` would make everything come out; if it is right/,
  ],
  [
    'rows that follow decide',
    'stitches: 12\nRow 1: K3, yo 2 times, ssk, k to end.\nRow 2: P12.\nRow 3: K12.',
    'yo 2 times',
    /^`yo` for `yo 2 times` in `Row 1` would make everything come out/,
  ],
  [
    'a stated count decides',
    'stitches: 20\nRow 1: K3tog, k to end. 19 sts.\nRow 2: P19.',
    'K3tog',
    /^`k2tog` for `k3tog` would/,
  ],
  [
    'the count that is stated is the slip',
    'stitches: 20\nRow 1: K2tog, k to end. 18 sts.\nRow 2: P19.',
    '18 sts',
    /^`19 sts` for `18 sts` would/,
  ],
  [
    'several would do, and the rows next to it tell',
    'stitches: 14\nRow 1: K4, p6, k4.\nRow 2: P4, k7, p4.\nRow 3: K4, p6, k4.',
    'k7',
    /^`k6` for `k7` would make everything come out, and it suits the rows next to it; by the count alone so would `p3` for `p4`\.$/,
  ],
  [
    'several would do and nothing tells',
    'stitches: 14\nRow 1: K4, k5, k6.',
    'k6',
    /Any one of these would do: `k3` for `k4`, `k4` for `k5`, `k5` for `k6`\.$/,
  ],
  [
    'a stitch worked once too often',
    'stitches: 10\nRow 1: *K2tog; rep from *.\nRow 2: P4.',
    'P4',
    /^`p5` for `p4` would/,
  ],
  [
    'one size of several',
    'cast on: 20 (24, 28)\nRow 1: K10 (13, 14), yo, k to end. 21 (25, 29) sts.\nRow 2: P21 (26, 29).',
    'P21 (26, 29)',
    /^`p21 \(25, 29\)` for `p21 \(26, 29\)` would/,
  ],
  [
    'a bind-off',
    'stitches: 20\nRow 1: Bind off 5 sts, k to end. 16 sts.\nRow 2: P16.',
    'Bind off 5 sts',
    /^`BO 4` for `BO 5` would/,
  ],
];

it.each(cases)('%s', (_, text, actual, hint) => {
  const {pattern, proved} = prove(text);
  const problems = nameSlips(pattern, proved.problems);
  expect(problems.map(({span}) => text.slice(span.start, span.end))).toEqual([actual]);
  expect(problems[0]?.hint).toMatch(hint);
});

it('names the slip of rows that hold only for some numbers of repeats', () => {
  const text = 'multiple: 4 + 2\ncast on: 34\nRow 1: K1, *RT 2 times, LT, RT; rep from * to last st, k1.';
  const {pattern, found} = prove(text);
  expect(found).toEqual([]);
  const failure = proveForEveryMultiple(pattern).firstFailure;
  expect(failure && nameSlipOfLaw(pattern, failure.problem).hint).toMatch(/would/);
});

it('looks no further than a budget, however much is wrong', () => {
  const rows = Array.from({length: 200}, (_, row) => `Row ${row + 1}: ${'k3, p2, '.repeat(20)}k${row % 7}.`);
  const {pattern, proved} = prove(`stitches: 103\n${rows.join('\n')}`);
  expect(nameSlips(pattern, proved.problems)).toHaveLength(proved.problems.length);
});
