import {expect, it} from 'vitest';
import {countsOf, prove} from './prove.ts';

/** Definitions, a row on 24 stitches, and the stitches after it. */
const defined: readonly (readonly [string, string, number])[] = [
  ['MB: uses 1, makes 1, "make bobble"', 'K4, MB, k to end.', 24],
  ['MB: makes five, uses one, "make bobble"', 'K4, MB, k to end.', 28],
  ['MB: consumes 1, produces 1', 'K4, MB, k to end.', 24],
  ['MB (make bobble): uses 1 and makes 3', 'K4, MB, k to end.', 26],
  ['MB: (k1, yo, k1) in next st, turn, p3, turn, k3tog', 'K4, MB, k to end.', 24],
  ['MB = make bobble: (k1, p1) twice in next st, turn, p4, turn, k4.', 'K4, MB, k to end.', 27],
  ['4-st knot: uses 4, makes 2', 'K4, 4-st knot, k16.', 22],
  ['B: uses 1, makes 1, "back stitch"\nT: uses 2, makes 1, "take in two"', 'B2, T, b1, T, b to end.', 22],
  ['bead: uses 0, makes 0, "slide a bead up"', 'K4, bead, k20.', 24],
];

it.each(defined)('%s', (lines, row, after) => {
  const proof = prove(`stitches: 24\n${lines}\nRow 1: ${row}`);
  expect(proof.found).toEqual([]);
  expect(countsOf(proof)).toEqual([after]);
});

it('may stand behind the rows that use it', () => {
  expect(prove('stitches: 24\nRow 1: K4, MB, k to end.\nMB: uses 1, makes 1').found).toEqual([]);
});

it('keeps its words for the key', () => {
  const {pattern} = prove(
    'stitches: 24\nMB: uses 1, makes 1, "make a bobble: (k1, yo, k1)"\nRow 1: K23, MB.',
  );
  expect(pattern.header.ownAbbreviations.map(({names}) => names.british.words)).toEqual([
    'make a bobble: (k1, yo, k1)',
  ]);
});

/** A faulty definition is one finding, at its word; rows that use it are then not counted. */
const faulty: readonly (readonly [string, string, RegExp])[] = [
  ['MB: uses 1', 'MB', /^`MB` does not say how many stitches it makes$/],
  ['MB: produces 1', 'MB', /^`MB` does not say how many stitches it uses$/],
  ['MB: uses x, makes 1', 'x', /^`x` is not a number of stitches$/],
  ['MB: uses 1, makes 99999', '99999', /^`99999` stitches are more than one thing/],
  ['MB: uses 1, makes 1\nMB: uses 1, makes 5', 'MB', /^`MB` is defined a second time$/],
  ['MB: (k1, yo, k1) in next st, turn, p3, turn, k3tgo', 'k3tgo', /^`k3tgo` is not a stitch/],
  ['MB: (k1, yo, k1) in next st, turn, p3', 'MB', /^what `MB` uses and makes cannot be told/],
];

it.each(faulty)('%s', (lines, actual, message) => {
  const {found} = prove(`stitches: 24\n${lines}\nRow 1: K4, MB, k2.\nRow 2: Purl.`);
  expect(found.map((each) => each.actual)).toEqual([actual]);
  expect(found[0]?.message).toMatch(message);
});

it('one that is not defined is a finding where it stands', () => {
  expect(prove('stitches: 24\nRow 1: K4, MB, k to end.').found).toMatchObject([{actual: 'MB'}]);
});
