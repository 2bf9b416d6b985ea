import {expect, test} from 'vitest';
import {leavesInShort, readLeafNumber} from '../../src/model/leaf-number.ts';

test.each([
  ['S-07 · 2 of 3', {sheet: 'S-07', page: 2, of: 3}],
  ['Tab 12 · 1 of 1', {sheet: 'Tab 12', page: 1, of: 1}],
  ['S-07 · back', null],
  ['S-07, page 2', null],
  ['', null],
])('%j', (leaf, number) => {
  expect(readLeafNumber(leaf)).toEqual(number);
});

test.each([
  [['S-07 · 1 of 1'], '1 of 1'],
  [['S-07 · 1 of 3', 'S-07 · 2 of 3', 'S-07 · 3 of 3'], '1–3 of 3'],
  [['S-07 · 5 of 5', 'S-07 · 2 of 5', 'S-07 · 3 of 5', 'S-07 · 2 of 5'], '2–3, 5 of 5'],
  [['S-07 · 1 of 2', 'S-07 · 2 of 2', 'S-07 · 3 of 3'], '1–2 of 2, 3 of 3'],
  [['S-07 · 1 of 2', 'S-07, page 2'], '1 of 2, S-07, page 2'],
])('%j in short: %s', (leaves, words) => {
  expect(leavesInShort(leaves)).toBe(words);
});
