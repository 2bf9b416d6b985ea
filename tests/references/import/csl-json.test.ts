import {readFile} from 'node:fs/promises';
import {expect, test} from 'vitest';
import {appendToLibrary, readLibraryFile} from '../../../src/commands/library-file.ts';
import {importText} from './import-text.ts';

// CSL-JSON's form: the CSL data schema (csl-data.json, 1.0.2).

const example = await readFile(new URL('../../../content/library.yaml', import.meta.url), 'utf8');

test("the worked example's library as CSL-JSON gives the same sources, which the library reads back the same", async () => {
  const {sources: own} = readLibraryFile(example);
  expect(own?.length).toBeGreaterThan(25);
  const {sources, added, leftOut, problems} = await importText(JSON.stringify(own), 'csl-json');
  expect(sources).toEqual(own);
  expect([leftOut, problems]).toEqual([[], []]);
  expect(added.flatMap(({dropped, changed}) => [...dropped, ...changed])).toEqual([]);
  const {whole} = appendToLibrary(null, sources, 'From a test');
  expect(readLibraryFile(Buffer.from(whole ?? []).toString('utf8')).sources).toEqual(own);
});

test('what other programs write: numbers, text for dates, rich text, fields that the library does not have', async () => {
  const {added} = await importText(
    JSON.stringify([
      {
        id: 'http://catalogue.example/items/7',
        type: 'paper-conference',
        title: 'Lace &amp; <i>Loft</i> <script>alert(1)</script>',
        author: [
          {family: 'Berg', given: 'Jan', 'non-dropping-particle': 'van der', ORCID: '0'},
          {literal: 'Guild'},
        ],
        issued: {'date-parts': [['2012', '5']], season: 2},
        accessed: {raw: '17 May 2026'},
        volume: 7,
        ISBN: '1999999117 978-0-306-40615-7',
        URL: 'javascript:alert(1)',
        abstract: 'A',
        note: '',
      },
    ]),
    'csl-json',
  );
  expect(added[0]?.source).toEqual({
    id: 'berg2012',
    type: 'chapter',
    title: 'Lace & Loft <script>alert(1)</script>',
    author: [{family: 'Berg', given: 'Jan', 'non-dropping-particle': 'van der'}, {literal: 'Guild'}],
    issued: {'date-parts': [[2012, 5]]},
    accessed: {'date-parts': [[2026, 5, 17]]},
    volume: '7',
    ISBN: '978-0-306-40615-7',
  });
  expect(added[0]?.dropped).toEqual(['abstract', 'URL `javascript:alert(1)`', 'note', 'author.ORCID']);
  expect(added[0]?.changed).toContain('type `paper-conference` became `chapter`');
});

test.each([
  ['a comma that is missing', '[\n {"id": "a", "title": "A"}\n {"id": "b"}\n]', 3],
  ['a text that is not closed', '[\n {"id": "a", "title": "A}\n]', 2],
  ['an entry that is none', '[\n {"id": "a", "title": "A"},\n 7\n]', 3],
  ['no list', '"words"', 1],
  ['an empty list', '[]', 1],
])('%s has its line', async (_, text, line) => {
  const {problems} = await importText(text, 'csl-json');
  expect(problems.map((problem) => problem.line)).toEqual([line]);
});

test.each(['items', 'references'])('a list under `%s`, and one item alone', async (name) => {
  const item = {id: 'a', type: 'book', title: 'A'};
  expect((await importText(JSON.stringify({[name]: [item]}), 'csl-json')).sources).toEqual([item]);
  expect((await importText(JSON.stringify(item), 'csl-json')).sources).toEqual([item]);
});
