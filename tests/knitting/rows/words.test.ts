import {expect, test} from 'vitest';
import {lexRow, phraseWord, type Token} from '../../../src/knitting/rows/lex-row.ts';

// How a row falls into words, numbers and signs. `^` begins a line, `·` follows without a space, `!` follows `then`; an
// ordinal is written with a stop, a mark of a repeat in braces, a number with all its sizes.

function shown({kind, text, values, startsLine, isApart, isAfterThen}: Token): string {
  const before = `${startsLine ? '^' : ''}${isApart ? '' : '·'}${isAfterThen ? '!' : ''}`;
  if (kind === 'ordinal') return `${before}${text}.`;
  return `${before}${kind === 'mark' ? `{${text}}` : values.length > 1 ? values.join('/') : text}`;
}

test.each([
  ['K1, p2tog.', '^k ·1 ·, p ·2 ·tog ·.'],
  // Numbers in words, as the books of the nineteenth century write them.
  ['twenty-four', '^24'],
  ['Twenty four sts', '^24 st'],
  ['a hundred and four', '^104'],
  ['two hundred and ten', '^210'],
  ['one hundred', '^100'],
  ['hundred and four', '^104'],
  ['five hundred twenty', '^520'],
  ['twenty, four', '^20 ·, 4'],
  ['twenty and four', '^20 & 4'],
  ['twelve four', '^12 4'],
  ['twenty ten', '^20 10'],
  ['twenty 4', '^20 4'],
  ['20 four', '^20 4'],
  ['thirty-first row', '^31. row'],
  ['1st 2nd 3rd 4d 5th', '^1. 2. 3. 4. 5.'],
  ['99999999 1000001 1000000', '^1000000 1000000 1000000'],
  // A number for each size.
  ['84 (92, 100)', '^84/92/100'],
  ['84 [92: 100; 7]', '^84/92/100/7'],
  ['84 (–, 100)', '^84/0/100'],
  ['K5 (6, 7), p2', '^k ·5/6/7 ·, p ·2'],
  ['(92, 100)', '^( ·92 ·, 100 ·)'],
  ['3 (k2)', '^3 ( ·k ·2 ·)'],
  ['5 ()', '^5 ( ·)'],
  ['5 (6) 7', '^5/6 7'],
  // The stop of an abbreviation ends nothing, that of a sentence does.
  ['k. 2', '^k 2'],
  ['sl. 1', '^sl 1'],
  ['no. 7', '^no 7'],
  ['inc. 1 dec. 2', '^inc 1 dec 2'],
  ['rep. from *', '^rep from {*}'],
  ['k. 2, tog.; p', '^k 2 ·, tog ; p'],
  ['Purl. 20', '^p ·. 20'],
  ['sts. 20', '^st ·. 20'],
  ['k. Knit', '^k ·. k'],
  ['K. 2nd row', '^k ·. 2. row'],
  ['K.', '^k ·.'],
  ['knit. p', '^k ·. p'],
  ['p.s.s.o., k. 1', '^psso , k 1'],
  ['t.b.l. k 2', '^tbl k 2'],
  ['k.p.k.', '^k p k ·.'],
  // Hyphens and dashes.
  ['K1-tbl', '^k ·1 ·tbl'],
  ['slip-stitch', '^sl ·st'],
  ['3-8', '^3 ·- ·8'],
  ['k 2-3', '^k 2 ·- ·3'],
  ['k - p', '^k - p'],
  ['k -- p', '^k — p'],
  ['k — p – p − p', '^k — p — p — p'],
  // Signs and marks.
  ['[k2] × 3', '^[ ·k ·2 ·] x 3'],
  ['† k ‡ § #', '^{†} k {‡} {§} {#}'],
  ['** k2 *', '^{**} k ·2 {*}'],
  ['k1;p2:k3', '^k ·1 ·; ·p ·2 ·: ·k ·3'],
  // Quotation marks are space; `then` is said of what follows.
  ['"A" k2 “B”', '^a k ·2 b'],
  ['k1, then p2', '^k ·1 ·, !p ·2'],
  ['then the 2', '^!2'],
  ["don't knit’s", '^dont k'],
  ['k1\np2\n\n k3', '^k ·1 ^p ·2 ^k ·3'],
  ['', ''],
])('%j', (text, expected) => {
  const tokens = lexRow(text);
  expect(tokens.map(shown).join(' ')).toBe(expected);
  let end = 0;
  for (const token of tokens) {
    expect(token.start).toBeGreaterThanOrEqual(end);
    expect(token.end).toBeGreaterThan(token.start);
    end = token.end;
  }
  expect(end).toBeLessThanOrEqual(text.length);
});

test.each([
  ['twice', 2],
  ['thrice', 3],
  ['once', 1],
  ['k', 0],
  ['17', 17],
  ['seventeenth', 17],
  ['ninety', 90],
  ['*', 0],
])('%s counts %i', (text, value) => {
  expect(lexRow(text)[0]?.value).toBe(value);
});

test.each([
  ['Knitting', 'k'],
  ['together', 'tog'],
  ['the', null],
  ['two', '2'],
  ['third', '3'],
  ['knitter’s', 'knitters'],
])('in a phrase `%s` is %s', (word, normal) => {
  expect(phraseWord(word)).toBe(normal);
});
