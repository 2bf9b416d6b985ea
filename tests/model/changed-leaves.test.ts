import fc from 'fast-check';
import {expect, test} from 'vitest';
import {changedLeaves} from '../../src/model/changed-leaves.ts';
import {leavesInBinder, sheetsInBinder} from '../../src/model/leaves-in-binder.ts';

const on = '2026-03-02';

test('what differs is taken out and put in, what is new is put in, what has no place any more is taken out', () => {
  const inBinder = new Map([
    ['S-01 · 1 of 1', 'a'],
    ['S-02 · 1 of 2', 'b'],
    ['S-02 · 2 of 2', 'c'],
    ['S-03 · 1 of 1', null],
  ]);
  const now = [
    {leaf: 'S-01 · 1 of 1', fingerprint: 'a'},
    {leaf: 'S-02 · 1 of 1', fingerprint: 'd'},
    {leaf: 'S-03 · 1 of 1', fingerprint: 'e'},
    {leaf: 'S-04 · 1 of 1', fingerprint: 'f'},
  ];
  expect(changedLeaves(now, inBinder)).toEqual({
    takeOut: ['S-03 · 1 of 1', 'S-02 · 1 of 2', 'S-02 · 2 of 2'],
    putIn: ['S-02 · 1 of 1', 'S-03 · 1 of 1', 'S-04 · 1 of 1'],
    gone: ['S-02 · 1 of 2', 'S-02 · 2 of 2'],
  });
});

test('once everything was done, the paper binder is what would be printed, and nothing differs', () => {
  const leaf = fc.constantFrom('S-01 · 1 of 1', 'S-01 · 1 of 2', 'S-01 · 2 of 2', 'S-02 · 1 of 1');
  const binder = fc
    .array(fc.tuple(leaf, fc.constantFrom('a', 'b', 'c')))
    .map((pairs) => new Map<string, string>(pairs));
  fc.assert(
    fc.property(binder, binder, (before, after) => {
      const now = [...after].map(([number, fingerprint]) => ({leaf: number, fingerprint}));
      const {takeOut, putIn, gone} = changedLeaves(now, before);
      const hands = new Map(before);
      for (const each of takeOut) expect(hands.delete(each)).toBe(true);
      for (const each of putIn) {
        expect(hands.has(each)).toBe(false);
        hands.set(each, after.get(each) ?? '');
      }
      expect(new Map([...hands].sort())).toEqual(new Map([...after].sort()));
      expect(gone.every((each) => takeOut.includes(each) && !putIn.includes(each))).toBe(true);
      expect(changedLeaves(now, hands)).toEqual({takeOut: [], putIn: [], gone: []});
    }),
  );
});

test('the ledger is replayed in its order; a sheet of drafts is not in the binder for good', () => {
  const entries = [
    {leaf: 'S-01 · 1 of 1', done: 'printed', on, fingerprint: 'a', draft: true},
    {leaf: 'S-02 · 1 of 1', done: 'printed', on, fingerprint: 'b', draft: true},
    {leaf: 'S-03 · 1 of 1', done: 'printed', on, fingerprint: 'c'},
    {leaf: 'S-04 · 1 of 1', done: 'taken out', on},
    {leaf: 'S-02 · 1 of 1', done: 'printed', on, fingerprint: 'd'},
    {leaf: 'S-03 · 1 of 1', done: 'taken out', on},
  ] as const;
  expect([...leavesInBinder(entries)]).toEqual([
    ['S-01 · 1 of 1', 'a'],
    ['S-02 · 1 of 1', 'd'],
  ]);
  expect([...sheetsInBinder(entries)]).toEqual(['S-02']);
});
