import {expect, test} from 'vitest';
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
