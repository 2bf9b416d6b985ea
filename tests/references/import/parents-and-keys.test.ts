import {expect, test} from 'vitest';
import {withParents} from '../../../src/references/import/bib-parents.ts';
import {freeKey, isCitationKey, makeKey} from '../../../src/references/import/make-key.ts';
import type {BibEntry} from '../../../src/references/import/read-bib.ts';
import {importText} from './import-text.ts';

// What a part takes from its parent: BibLaTeX manual 3.20, section 2.4.1.1 and appendix B.

const entry = (type: string, fields: Readonly<Record<string, string>>) =>
  ({type, fields: Object.entries(fields).map(([name, text]) => ({name, text}))}) as unknown as BibEntry;

const inherited = (child: BibEntry, parents: Readonly<Record<string, BibEntry>>) =>
  Object.fromEntries(
    withParents(child, new Map(Object.entries(parents))).fields.map(({name, text}) => [name, text]),
  );

test.each([
  [
    'incollection',
    'collection',
    {booktitle: 'Lace', booksubtitle: 'A story', author: 'Moss', publisher: 'Loft'},
  ],
  ['inbook', 'book', {booktitle: 'Lace', booksubtitle: 'A story', bookauthor: 'Moss', publisher: 'Loft'}],
  ['inbook', 'mvbook', {booktitle: 'Lace', booksubtitle: 'A story', bookauthor: 'Moss', publisher: 'Loft'}],
  [
    'article',
    'periodical',
    {journaltitle: 'Lace', journalsubtitle: 'A story', author: 'Moss', publisher: 'Loft'},
  ],
  ['book', 'book', {author: 'Moss', publisher: 'Loft'}],
])('%s in %s', (type, parentType, taken) => {
  const parent = entry(parentType, {
    ...{title: 'Lace', subtitle: 'A story', author: 'Moss', publisher: 'Loft'},
    ...{pages: '1--9', note: 'n', keywords: 'k', shorttitle: 'L', abstract: 'a', file: 'f', label: 'l'},
  });
  expect(inherited(entry(type, {crossref: ' p '}), {p: parent})).toEqual({crossref: ' p ', ...taken});
});

test('what an entry has itself counts, and the nearer parent before the farther', () => {
  const child = entry('incollection', {crossref: 'p', publisher: 'Own'});
  const near = entry('collection', {crossref: 'q', publisher: 'Near', year: '2011'});
  const far = entry('mvcollection', {publisher: 'Far', year: '1999', location: 'Hollow'});
  expect(inherited(child, {p: near, q: far})).toEqual({
    ...{crossref: 'p', publisher: 'Own', year: '2011', location: 'Hollow'},
  });
});

test('parents in a ring, parents that are not there and too many of them end', () => {
  const ring = entry('collection', {crossref: 'p', year: '2011'});
  expect(inherited(entry('inbook', {crossref: 'p'}), {p: ring})).toEqual({crossref: 'p', year: '2011'});
  expect(inherited(entry('inbook', {crossref: 'x'}), {p: ring})).toEqual({crossref: 'x'});
  expect(inherited(entry('inbook', {title: 'A'}), {p: ring})).toEqual({title: 'A'});
  const chain = Object.fromEntries(
    [1, 2, 3, 4, 5].map((n) => [`p${n}`, entry(`t${n}`, {crossref: `p${n + 1}`, [`field${n}`]: 'x'})]),
  );
  expect(Object.keys(inherited(entry('inbook', {crossref: 'p1'}), chain))).toEqual([
    ...['crossref', 'field1', 'field2', 'field3'],
  ]);
});

const named = (name: object | null, title: string | null, year?: number) =>
  makeKey({
    type: 'book',
    ...(name === null ? {} : {author: [name]}),
    ...(title === null ? {} : {title}),
    ...(year === undefined ? {} : {issued: {'date-parts': [[year]]}}),
  } as Parameters<typeof makeKey>[0]);

test.each([
  [{family: 'Ashdown'}, 'A title', 2011, 'ashdown2011'],
  [{family: 'van der Berg'}, null, 2011, 'vanderberg2011'],
  [{family: 'O\u2019Br\u00edan'}, null, undefined, 'obrian'],
  [{family: 'Moss'}, null, -50, 'moss50'],
  [{literal: 'The Guild of Loft'}, null, 2011, 'guild2011'],
  [{given: 'Peregrine'}, null, undefined, 'peregrine'],
  [null, 'The Art of Lace', 1900, 'lace1900'],
  [null, 'Of a hat', 1900, 'of1900'],
  [{literal: 'A B'}, 'Knots', 1900, 'knots1900'],
  [{literal: 'A B'}, 'Hat', 1900, 'a1900'],
  [null, null, undefined, 'source'],
  [{family: 'a'.repeat(40)}, null, 2011, `${'a'.repeat(30)}2011`],
])('the key of %j, %j, %j is %s', (name, title, year, key) => {
  expect(named(name, title, year)).toBe(key);
});

test.each([
  ['ashdown2011', true],
  ['a'.repeat(100), true],
  ['a'.repeat(101), false],
  ['', false],
  ['a b', false],
  ['a; @b', false],
])('%s can stand behind @: %s', (text, can) => {
  expect(isCitationKey(text)).toBe(can);
});

// The letters of the columns of a ledger: z is the 26th, aa the 27th, az the 52nd, ba the 53rd.
test.each([
  [0, 'moss'],
  [1, 'mossa'],
  [26, 'mossz'],
  [27, 'mossaa'],
  [52, 'mossaz'],
  [53, 'mossba'],
])('with %i taken the next key is %s', (count, key) => {
  let asked = 0;
  expect(freeKey('moss', () => asked++ < count)).toBe(key);
});

// Lamport, LaTeX: A Document Preparation System (1994), chapters 2 and 3: what these signs print.
test.each([
  ['{L}ace {\\&} loft', 'Lace & loft'],
  ['a\\\\b and c\\\\*d', 'a b and c d'],
  ['a\\!b\\,c', 'ab c'],
  ['hy\\-phen and\\/or', 'hyphen andor'],
  ['\\frac{1}{2} and \\dfrac {3} {4}', '1/2 and 3/4'],
  ['\\href{https://loft.example/}{the loft}', 'the loft'],
  ['at 5\\$ a skein', 'at 5$ a skein'],
  ['20{\\times}30', '20\u00d730'],
  ["\\'{\\i}", '\u00ed'],
  ['plain words', 'plain words'],
])('the title `%s` prints as `%s`', async (tex, text) => {
  const {sources} = await importText(`@book{a, title = {${tex}}, year = 2011}`, 'bib');
  expect(sources[0]?.title).toBe(text);
});
