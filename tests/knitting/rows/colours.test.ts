import {expect, it} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import type {Step} from '../../../src/knitting/rows/row-syntax.ts';
import {writeRows} from '../../../src/knitting/rows/write-rows.ts';

/** `k3 MC` as it is kept: the stitch, how many, and the yarn. */
function show(steps: readonly Step[]): string {
  return steps
    .map((step) => {
      if ('steps' in step) return `[${show(step.steps)}]`;
      if (step.kind !== 'work') return step.kind;
      const count = step.extent.kind === 'times' ? step.extent.count.values.join() : '';
      return `${step.stitch.id}${count}${step.colour === undefined ? '' : ` ${step.colour}`}`;
    })
    .join(', ');
}

const cases: readonly (readonly [string, string])[] = [
  ['Row 1: K2, p2.', 'k2, p2'],
  ['Row 1: With MC, knit.', 'k MC'],
  ['Row 1: With CC, k3, with MC k to end.', 'k3 CC, k MC'],
  ['Row 1: K3 MC, k2 CC, k to end.', 'k3 MC, k2 CC, k'],
  ['Row 1: *K1 A, k1 B; rep from *.', '[k1 A, k1 B]'],
  ['Row 1: *K3 (white), k2 (red); rep from *.', '[k3 white, k2 red]'],
  ['Row 1: K5A, 3B, p2A, 10B.', 'k5 A, k3 B, p2 A, p10 B'],
  ['Row 1 (MC): Knit.', 'k MC'],
  ['Row 1 (RS, A): K2, k2 B, k to end.', 'k2 A, k2 B, k A'],
  ['Row 1: Using C1, k2, *sl1, k2; rep from *.', 'k2 C1, [sl1 C1, k2 C1]'],
  ['Row 1: K2 light blue, k to end dark red.', 'k2 blue, k red'],
  ['Row 1: With drab, k2, k2 white, k to end.', 'k2 drab, k2 white, k drab'],
  ['Row 1: With A and B held together, knit.', 'k A + B'],
  ['Row 1: K1b, k1 B.', 'k1b1, k1 B'],
  ['Row 1: Drop A, pick up B, k to end.', 'k B'],
  ['colours: drab, claret\nRow 1: K2 drab, k2 in claret.', 'k2 drab, k2 claret'],
];

it.each(cases)('%s', (rows, expected) => {
  const {pattern, problems} = readRows(`stitches: 20\n${rows}`);
  expect(problems).toEqual([]);
  const [row] = pattern.entries;
  expect(row?.kind === 'row' && show(row.steps)).toBe(expected);
});

it('is written so that it is read again', () => {
  const {pattern} = readRows(
    'stitches: 20\nRow 1: With drab, k2, *k1 A, k1 B; rep from * to last 2 sts, k2 white.',
  );
  const again = readRows(writeRows(pattern));
  expect(again.problems).toEqual([]);
  expect(writeRows(again.pattern)).toBe(writeRows(pattern));
});

it('a yarn that nobody named is a word that is not known', () => {
  expect(readRows('stitches: 20\nRow 1: K2 qualm, k to end.').problems).toHaveLength(1);
});
