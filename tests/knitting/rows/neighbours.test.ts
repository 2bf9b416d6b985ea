import {expect, test} from 'vitest';
import {nameSlips} from '../../../src/knitting/rows/name-slips.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {suitsNeighbours} from '../../../src/knitting/rows/suits-neighbours.ts';
import {prove} from './prove.ts';

// Seen from the right side, left to right: a right-side row is worked from the right, a wrong-side row from the left, and
// a knit stitch of it is a purl. The row asked about is the one with the arrow before it.
test.each([
  ['K2, p2.|>K2, p2.', true, 'each over its own kind'],
  ['>K2, p2.|K2, p2.', true, 'each under its own kind'],
  ['K2, p2.|>P2, k2.', true, 'each over the other kind, as in seed stitch'],
  ['K2, p2.|>K1, p3.', false, 'one over the other kind'],
  ['K4.|>P4.|K4.', true, 'stockinette'],
  ['K4.|>K4.|K4.', true, 'garter'],
  ['K4.|>P4.|P4.', false, 'its own kind below, the other above'],
  ['K4.|>K4.|P4.', false, 'the other kind below, its own above'],
  ['>K4.|P4.|K4.|K2, p2.', true, 'rows further off say nothing'],
  ['K2, p2.|P4.|K4.|>P4.', true, 'nor those before'],
  ['K1, yo, k3.|>P5.', true, 'what an over becomes is not known'],
  ['K1, yo, k3.|>P2, k1, p2.', false, 'the over stands in the middle of knit stitches: at its left'],
  ['K2tog, p2.|>K2, p1.', true, 'a decrease shows as the stitch it becomes'],
  ['K2tog, p2.|>P1, k1, p1.', false, 'and not as another'],
  ['K4.|>P2tog, p2.', true, 'what goes into a decrease is not compared'],
  ['K4.|>K2tog, p2.', true, 'nor what it is'],
  ['K2, p2.|>Sl 1, k1, p2.', true, 'a slipped stitch has no kind'],
  ['2/2 LC.|>P4.', true, 'a crossing shows its strands'],
  ['2/2 LC.|>P3, k1.', false, 'each of them'],
  ['2/1 LPC, k1.|>P2, k1, p1.', false, 'the purl of a crossing to the left stands at its right'],
  ['P1, 2/1 LPC.|>P2, k2.', true, 'so this suits'],
  ['P1, 2/1 RPC.|>K1, p2, k1.', true, 'and to the right at its left'],
  ['K4.|>P2, turn.', false, 'a row that turns is not compared'],
  ['K3.|>P4.', false, 'nor one behind a row that does not come out'],
  ['>K4.', false, 'a row alone has nothing to suit'],
])('%s %s: %s', (rows, suits) => {
  const lines = rows.split('|');
  const {pattern} = readRows(
    ['stitches: 4', ...lines.map((line, index) => `Row ${index + 1}: ${line.replace('>', '')}`)].join('\n'),
  );
  const row = pattern.entries[lines.findIndex((line) => line.startsWith('>'))];
  expect(row?.kind === 'row' && suitsNeighbours(pattern, row)).toBe(suits);
});

test.each([
  [5000, true],
  [5001, false],
])('rows of %i stitches are compared: %s', (stitches, are) => {
  const {pattern} = readRows(`stitches: ${stitches}\nRow 1: Knit.\nRow 2: Purl.`);
  const [, row] = pattern.entries;
  expect(row?.kind === 'row' && suitsNeighbours(pattern, row)).toBe(are);
});

const ifRight =
  'would make everything come out; if it is right as written, check the rest of the row and the count before it.';

/** The hint of the first problem; null where nothing is said but what the proof says. */
test.each([
  ['stitches: 10\nRow 1: K4, yo, k6. 11 sts.\nRow 2: P10.', `\`p11\` for \`p10\` ${ifRight}`],
  ['stitches: 10\nRow 1: K4, yo, k6.\nRow 2: P10.', `\`p11\` for \`p10\` ${ifRight}`],
  ['stitches: 10\nRow 1: K2tog, k to end.\nRow 2: P10.', `\`p9\` for \`p10\` ${ifRight}`],
  ['stitches: 10\nRow 1: K2tog, k to end. 10 sts.\nRow 2: P10.', `Leaving out \`k2tog\` ${ifRight}`],
  ['stitches: 10\nRow 1: K12.', `\`k10\` for \`k12\` ${ifRight}`],
  ['stitches: 10\nRow 1: K20.', `\`k10\` for \`k20\` ${ifRight}`],
  ['stitches: 10\nRow 1: K13.', `\`k10\` for \`k13\` ${ifRight}`],
  ['stitches: 10\nRow 1: K14.', `\`k10\` for \`k14\` ${ifRight}`],
  ['stitches: 10\nRow 1: K15.', null],
  ['stitches: 8\nRow 1 (inc): K8.', null],
  ['stitches: 8\nRow 1: K8.\nRow 2: P7.\nRow 3: K8.', `\`p8\` for \`p7\` ${ifRight}`],
  [
    'stitches: 20\nRow 1: K2, k3, k4, k5, k7.',
    'Check the numbers of the row and the count at the end of the row before. Any one of these would do: `k1` for `k2`, `k2` for `k3`, `k3` for `k4`, `k4` for `k5`, or others.',
  ],
  [
    'stitches: 14\nRow 1: K2, k3, k4, k6.',
    'Check the numbers of the row and the count at the end of the row before. Any one of these would do: `k1` for `k2`, `k2` for `k3`, `k3` for `k4`, `k5` for `k6`.',
  ],
  [
    'stitches: 10\nRow 1: K3, p4, k3.\nRow 2: P3, k4, p4.',
    '`p3` for `p4` would make everything come out, and it suits the rows next to it; by the count alone so would `p2` for `p3`, `k3` for `k4`.',
  ],
])('%j', (text, hint) => {
  const {pattern, proved} = prove(text);
  const [first] = proved.problems;
  const [named] = nameSlips(pattern, proved.problems);
  expect(named?.hint).toBe(hint ?? first?.hint);
});

test('eight rows back are looked at, and no more', () => {
  // The slip is a yarn over too many, which the rows behind it do not notice.
  const rows = (between: number) =>
    [
      'stitches: 8',
      'Row 1: K4, yo 2 times, k to end.',
      ...Array.from({length: between}, (_, index) => `Row ${index + 2}: K to end.`),
      `Row ${between + 2}: K4, p5.`,
    ].join('\n');
  const hintOf = (text: string) => {
    const {pattern, proved} = prove(text);
    return nameSlips(pattern, proved.problems)[0]?.hint ?? '';
  };
  expect(hintOf(rows(6))).toContain('`yo` for `yo 2 times` in `Row 1`');
  expect(hintOf(rows(7))).not.toContain('Row 1');
});

test('three problems are looked into, each as if the others were right', () => {
  const rows = Array.from({length: 9}, (_, row) => `Row ${row + 1}: ${row % 2 === 1 ? 'P3, k4' : 'K8'}.`);
  const {pattern, proved} = prove(`stitches: 8\n${rows.join('\n')}`);
  expect(proved.problems).toHaveLength(4);
  const named = nameSlips(pattern, proved.problems);
  expect(named.map((problem, index) => problem.hint !== proved.problems[index]?.hint)).toEqual([
    ...[true, true, true, false],
  ]);
});
