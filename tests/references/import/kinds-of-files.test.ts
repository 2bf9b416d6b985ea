import {expect, test} from 'vitest';
import {importFormat, isRecord, textOf} from '../../../src/references/import/csl-record.ts';
import {decodeText} from '../../../src/references/import/decode-text.ts';

// Bytes are written out by hand from the Unicode code charts and the WHATWG Encoding Standard's index windows-1252.

test.each([
  ['UTF-8', [0x45, 0x6d, 0x69, 0xc3, 0xa8], 'Emi\u00e8'],
  ['UTF-8', [0xef, 0xbb, 0xbf, 0x61], 'a'],
  ['UTF-8', [], ''],
  ['UTF-16', [0xff, 0xfe, 0xe8, 0x00, 0x61, 0x00], '\u00e8a'],
  ['UTF-16', [0xfe, 0xff, 0x00, 0xe8, 0x00, 0x61], '\u00e8a'],
  ['Windows-1252', [0x45, 0xe8, 0x80], 'E\u00e8\u20ac'],
  ['Windows-1252', [0x91, 0x92, 0x93, 0x94, 0x96, 0x97, 0x9f], '\u2018\u2019\u201c\u201d\u2013\u2014\u0178'],
  ['Windows-1252', [0x81, 0xa0, 0x9d], '\u0081\u00a0\u009d'],
  ['Windows-1252', [0xff, 0x61], '\u00ffa'],
  ['Windows-1252', [0x61, 0xfe], 'a\u00fe'],
  ['Windows-1252', [0xfe, 0x61], '\u00fea'],
] as const)('%s: bytes %j', (encoding, bytes, text) => {
  expect(decodeText(Uint8Array.from(bytes))).toEqual({text, encoding});
});

// RIS: a tag of two letters, two spaces, a hyphen; Patashnik, BibTeXing (1988): `@type{` or `@type(`.
test.each([
  ['lace.bib', '', 'bib'],
  ['lace.BibTeX', '[]', 'bib'],
  ['lace.biblatex', '', 'bib'],
  ['my.json.ris', '{', 'ris'],
  ['lace.json', 'TY  - BOOK', 'csl-json'],
  ['lace.csljson', '', 'csl-json'],
  ['lace.txt', ' \n [{"id": "a"}]', 'csl-json'],
  ['lace', '{"id": "a"}', 'csl-json'],
  ['lace.txt', 'Exported\nTY  - BOOK\n', 'ris'],
  ['lace.txt', 'TY - BOOK\n', 'ris'],
  ['lace.txt', '% lace\n@book{a, title = {A}}', 'bib'],
  ['lace.txt', '  @book (a, title = {A})', 'bib'],
  ['lace.constructor', '@misc{a}', 'bib'],
  ['bib/lace', '@misc{a}', 'bib'],
])('%s with %j', (name, text, format) => {
  expect(importFormat(name, text)).toEqual({ok: true, value: format});
});

test.each([
  ['lace.txt', 'Lace [1] and {braces}'],
  ['lace.txt', 'PTY  - none\nTY: BOOK'],
  ['lace.txt', 'write to guild@book{a}'],
  ['lace.txt', '@book, @7{'],
  ['lace.bib.txt', 'words'],
  ['bib', 'words'],
  ['lace.doc/bib', 'words'],
])('%s with %j is none of them', (name, text) => {
  expect(importFormat(name, text)).toMatchObject({ok: false, problems: [{span: {start: 0, end: 0}}]});
});

test('values of a record', () => {
  expect([{}, [], null, 'a', 7].map(isRecord)).toEqual([true, false, false, false, false]);
  expect([7, 0, Number.NaN, ' a ', ' ', '', null, true, ['a']].map(textOf)).toEqual([
    ...['7', '0', null, ' a ', null, null, null, null, null],
  ]);
});
