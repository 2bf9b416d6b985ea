import {expect, test} from 'vitest';
import {knownSources} from '../../../src/references/import/same-source.ts';
import type {Source} from '../../../src/references/source.ts';
import {importText} from './import-text.ts';

const library: readonly Source[] = [
  {
    id: 'dunmail1926',
    type: 'book',
    title: 'Plain Knitting: for the Upper Standards',
    issued: {'date-parts': [[1926]]},
    // The ISBN manual's own pair: 0-306-40615-2 and 978-0-306-40615-7 are one number.
    ISBN: '0-306-40615-2',
  },
  {id: 'moss', type: 'article-journal', title: 'Relaxation', DOI: '10.1234/JDT.7'},
  {
    id: 'kestrel',
    type: 'chapter',
    title: 'Introduction',
    'container-title': 'Fastenings',
    issued: {'date-parts': [[2015]]},
    ISBN: '978-0-306-40615-7',
  },
];

async function leftOut(item: object) {
  const {leftOut: out} = await importText(
    JSON.stringify([{type: 'book', title: 'New', ...item}]),
    'csl-json',
    library,
  );
  return out.map(({reason}) => reason);
}

test.each([
  ['its key', {id: 'moss'}, 'the library has a source of this key'],
  ['its ISBN, of thirteen digits', {id: 'x', ISBN: '9780306406157'}, 'it has the ISBN of dunmail1926'],
  ['its DOI, as an address', {id: 'x', DOI: 'https://doi.org/10.1234/jdt.7'}, 'it has the DOI of moss'],
  [
    'title and year, written otherwise',
    {id: 'x', title: 'PLAIN KNITTING for the upper standards', issued: {'date-parts': [[1926]]}},
    'it has the title and year of dunmail1926',
  ],
])('what the library has by %s is left out', async (_, item, reason) => {
  expect(await leftOut(item)).toEqual([reason]);
});

test.each([
  [
    'of another year',
    {id: 'x', title: 'Plain Knitting for the Upper Standards', issued: {'date-parts': [[1930]]}},
  ],
  ['a part of a book that the library has', {id: 'x', type: 'chapter', ISBN: '978-0-306-40615-7'}],
  [
    'a part of the same title in another book',
    {
      id: 'x',
      type: 'chapter',
      title: 'Introduction',
      'container-title': 'Edges',
      issued: {'date-parts': [[2015]]},
    },
  ],
])('%s is not', async (_, item) => {
  expect(await leftOut(item)).toEqual([]);
});

test('what the file has twice comes once', async () => {
  const {sources, leftOut: out} = await importText(
    '@book{a, title={Welts}, year=1992}\n@book{b, title={Welts!}, date={1992-03}}',
    'bib',
  );
  expect(sources.map(({id}) => id)).toEqual(['a']);
  expect(out).toEqual([{name: 'b', reason: 'it has the title and year of a'}]);
});

// What two sources of one book, one volume or one article have in common and what not.
test.each([
  ['of another volume', {volume: '1'}, {volume: '2'}, null],
  ['of the same volume', {volume: '1'}, {volume: ' 1. '}, 'title and year'],
  ['of which one does not say its volume', {volume: '1'}, {}, 'title and year'],
  [
    'of another volume and one number',
    {volume: '1', ISBN: '0-306-40615-2'},
    {volume: '2', ISBN: '0-306-40615-2'},
    null,
  ],
  ['of one number and other titles', {ISBN: '0-306-40615-2'}, {title: 'Other', ISBN: '0306406152'}, 'ISBN'],
  ['of which one number is none', {ISBN: '0-306-40615-3'}, {title: 'Other', ISBN: '0-306-40615-3'}, null],
  [
    'of one DOI in other journals',
    {DOI: '10.1234/a', 'container-title': 'J'},
    {title: 'Other', DOI: '10.1234/A', 'container-title': 'K'},
    'DOI',
  ],
  ['of one title in other books', {'container-title': 'J'}, {'container-title': 'K'}, null],
  ['of one title, one of them in no book', {'container-title': 'J'}, {}, 'title and year'],
  ['without a year', {issued: undefined}, {issued: undefined}, 'title and year'],
  ['of which one has no year', {issued: undefined}, {}, null],
  ['without titles', {title: undefined}, {title: undefined}, null],
  ['with titles of signs alone', {title: '!'}, {title: '?'}, null],
  ['that say part of a year', {issued: {'date-parts': []}}, {issued: {'date-parts': []}}, 'title and year'],
])('two books %s', (_, one, other, by) => {
  const book = {
    type: 'book',
    title: 'Welts',
    issued: {'date-parts': [[1992]]},
    author: [{family: 'Moss'}],
  } as const;
  const known = knownSources([]);
  known.add({...book, ...one, id: 'one'} as Source);
  const same = known.sameAs({...book, ...other} as Omit<Source, 'id'>);
  expect(same).toEqual(by === null ? null : {by, key: 'one'});
});

test.each([
  [{title: 'A'}, 1],
  [{author: [{family: 'Moss'}]}, 1],
  [{editor: [{family: 'Moss'}]}, 1],
  [{director: [{family: 'Moss'}]}, 1],
  [{publisher: 'Loft', translator: [{family: 'Moss'}]}, 0],
])('%j says something: %i', async (item, count) => {
  const {sources, leftOut: out} = await importText(
    JSON.stringify({type: 'book', id: 'k', ...item}),
    'csl-json',
  );
  expect(sources).toHaveLength(count);
  expect(out).toEqual(count === 1 ? [] : [{name: 'k', reason: 'it has neither a title nor a name'}]);
});

test.each([
  [{id: 'k'}, 'k', []],
  [{}, 'welts1992', ['it had no key']],
  [{id: 'a b'}, 'welts1992', ['its key was `a b`, which cannot be cited']],
])('%j becomes %s', async (item, id, changed) => {
  const record = {type: 'book', title: 'Welts', issued: {'date-parts': [[1992]]}, ...item};
  const {added} = await importText(JSON.stringify([record]), 'csl-json');
  expect(added.map((each) => [each.source.id, each.changed])).toEqual([[id, changed]]);
});

test('a key that the file has twice gets a letter, and that is said', async () => {
  const {added} = await importText(
    '[{"type":"book","id":"k","title":"A"},{"type":"book","id":"k","title":"B"}]',
    'csl-json',
  );
  expect(added.map((each) => [each.source.id, each.changed])).toEqual([
    ['k', []],
    ['ka', ['its key was `k`, which stands in the file before']],
  ]);
});
