import {describe, expect, test} from 'vitest';
import {importText} from './import-text.ts';

// What a field means in which type of entry: BibLaTeX manual 3.20, sections 2.1.1 (types), 2.2.2 (data fields), 2.2.5
// (aliases) and 4.9.2.13 (words for kinds of theses and reports); Patashnik, BibTeXing (1988), for the fields of BibTeX.

/** What becomes of an entry whose key is `k`. */
async function read(entry: string) {
  const {added, problems} = await importText(entry, 'bib');
  expect(problems).toEqual([]);
  const [only] = added;
  if (only === undefined) throw new Error('nothing came');
  const {source, dropped, changed} = only;
  const {id, ...fields} = source;
  expect(id).toBe('k');
  return {fields, dropped, changed};
}

/** What a book of the title T has besides. */
async function readBook(fields: string) {
  const {fields: all, dropped, changed} = await read(`@book{k, title = {T}, ${fields}}`);
  const {type, title, ...others} = all;
  expect([type, title]).toEqual(['book', 'T']);
  return {fields: others, dropped, changed};
}

describe('what an entry stands in', () => {
  test.each([
    ['inbook', 'B'],
    ['incollection', 'B'],
    ['inproceedings', 'B'],
    ['conference', 'B'],
    ['suppbook', 'B'],
    ['suppcollection', 'B'],
    ['bookinbook', 'B'],
    ['article', 'J'],
    ['suppperiodical', 'J'],
    ['misc', 'J'],
  ])('@%s stands in %s, and the other is left out', async (type, container) => {
    for (const fields of ['journaltitle={J}, booktitle={B}', 'booktitle={B}, journaltitle={J}']) {
      const {fields: found, dropped} = await read(`@${type}{k, title={T}, ${fields}}`);
      expect(found['container-title']).toBe(container);
      expect(dropped).toEqual([container === 'B' ? 'journaltitle' : 'booktitle']);
    }
  });

  test.each([
    ['@article{k, title={T}, booktitle={B}}', 'B'],
    ['@inbook{k, title={T}, journal={J}}', 'J'],
    ['@inbook{k, title={T}, maintitle={M}, mainsubtitle={S}}', 'M: S'],
    ['@inbook{k, title={T}, booktitle={B}, booksubtitle={S}, maintitle={M}}', 'B: S'],
    ['@article{k, title={T}, journal={J}, journalsubtitle={S}}', 'J: S'],
  ])('%s stands in %s', async (entry, container) => {
    expect((await read(entry)).fields['container-title']).toBe(container);
  });
});

describe('types', () => {
  test.each([
    ['@audio{k, title={T}}', 'broadcast'],
    ['@music{k, title={T}}', 'broadcast'],
    ['@suppbook{k, title={T}}', 'chapter'],
    ['@suppcollection{k, title={T}}', 'chapter'],
    ['@bookinbook{k, title={T}}', 'chapter'],
    ['@suppperiodical{k, title={T}}', 'article-journal'],
    ['@article{k, title={T}, entrysubtype={Newspaper}}', 'article-newspaper'],
    ['@article{k, title={T}, entrysubtype={old magazine}}', 'article-journal'],
    ['@article{k, title={T}, entrysubtype={magazines}}', 'article-journal'],
    ['@book{k, title={T}, entrysubtype={magazine}}', 'book'],
  ])('%s is %s', async (entry, type) => {
    const {fields, dropped, changed} = await read(entry);
    expect(fields.type).toBe(type);
    expect([dropped, changed]).toEqual([[], []]);
  });

  test('a subtype that makes no other type is kept as what the source calls itself', async () => {
    expect((await readBook('entrysubtype={magazine}')).fields).toEqual({genre: 'magazine'});
    const newspaper = await read('@article{k, title={T}, entrysubtype={newspaper}}');
    expect(newspaper.fields).not.toHaveProperty('genre');
  });

  test.each([
    ['@phdthesis{k, title={T}}', 'PhD thesis'],
    ['@mastersthesis{k, title={T}}', 'MA thesis'],
    ['@thesis{k, title={T}, type={bathesis}}', 'BA thesis'],
    ['@thesis{k, title={T}, type={candthesis}}', 'candidate thesis'],
    ['@thesis{k, title={T}, type={Licentiate}}', 'Licentiate'],
    ['@techreport{k, title={T}}', 'technical report'],
    ['@report{k, title={T}, type={resreport}}', 'research report'],
    ['@report{k, title={T}}', undefined],
  ])('%s calls itself %s', async (entry, genre) => {
    expect((await read(entry)).fields.genre).toBe(genre);
  });
});

test.each([
  ['title={T}, subtitle={S}', 'T: S'],
  ['title={Why?}, subtitle={S}', 'Why? S'],
  ['title={Knit!}, subtitle={S}', 'Knit! S'],
  ['title={Why? A book}, subtitle={S}', 'Why? A book: S'],
  ['subtitle={S}', 'S'],
  ['title={ \\emph{T} }, subtitle={ }', 'T'],
])('%s is the title %s', async (fields, title) => {
  expect((await read(`@book{k, ${fields}}`)).fields.title).toBe(title);
});

// A field that says the same as another one counts only where the other is not written, whichever comes first.
test.each([
  ['@inproceedings', 'organization={O}, publisher={P}', {publisher: 'P'}, ['organization']],
  ['@inproceedings', 'organization={O}', {publisher: 'O'}, []],
  ['@misc', 'howpublished={H}, publisher={P}', {publisher: 'P'}, ['howpublished']],
  ['@thesis', 'school={S}, institution={I}', {publisher: 'I'}, ['school']],
  ['@thesis', 'school={S}', {publisher: 'S'}, []],
  ['@article', 'issue={Spring}, number={3}', {issue: '3'}, ['issue']],
  ['@article', 'issue={Spring}', {issue: 'Spring'}, []],
  ['@book', 'addendum={A}, note={N}', {note: 'N'}, ['addendum']],
  ['@book', 'annotation={A}, note={N}', {note: 'N'}, ['annotation']],
  ['@book', 'annotation={A}', {note: 'A'}, []],
  ['@book', 'annote={A}', {note: 'A'}, []],
  ['@book', 'address={A}, location={L}', {'publisher-place': 'A'}, ['location']],
])('%s with %s', async (type, written, expected, left) => {
  const {fields, dropped} = await read(`${type}{k, title={T}, ${written}}`);
  expect(fields).toMatchObject(expected);
  expect(dropped).toEqual(left);
});

describe('addresses and numbers are read as they stand', () => {
  test.each([
    ['{https://a.example/x}', 'https://a.example/x'],
    [' \\url {https://a.example/x} ', 'https://a.example/x'],
    ['\\url{https://a.example/x\\_y\\%7E}\n', 'https://a.example/x_y%7E'],
    ['\\url{https://a.example/\n}', 'https://a.example/'],
    [' https://a.example/~k ', 'https://a.example/~k'],
  ])('url = {%s}', async (written, address) => {
    expect((await readBook(`url={${written}}`)).fields).toEqual({URL: address});
  });

  test('of two good numbers that stand together the first is taken, and that is said', async () => {
    expect(await readBook('isbn={0-306-40615-2 (cloth); 978-0-306-40615-7}')).toEqual({
      fields: {ISBN: '0-306-40615-2'},
      dropped: [],
      changed: ['of ISBN `0-306-40615-2 (cloth); 978-0-306-40615-7` the first was taken'],
    });
  });
});

describe('names', () => {
  test.each([
    ['author={}', {}, ['author'], []],
    ['author={others}', {}, ['author'], ['author ends in “and others”, which was left out']],
    ['author={Others, Olive}', {author: [{family: 'Others', given: 'Olive'}]}, [], []],
    ['author={Brothers, Bo}', {author: [{family: 'Brothers', given: 'Bo'}]}, [], []],
    ['author={Moss, Ann and and Otter, Bo}', {author: ['Moss, Ann', 'Otter, Bo']}, [], []],
    [
      'author={{Knit and Purl {Guild}} and Moss, Ann}',
      {author: ['Knit and Purl Guild', 'Moss, Ann']},
      [],
      [],
    ],
    [
      'author={{Guild} of {Loft}}',
      {author: [{family: 'Loft', given: 'Guild', 'non-dropping-particle': 'of'}]},
      [],
      [],
    ],
    ['editor={Moss, Ann}, editortype={assistant director}', {editor: ['Moss, Ann']}, [], []],
    ['editor={Moss, Ann}, editortype={directors}', {editor: ['Moss, Ann']}, [], []],
    ['editor={Moss, Ann}, editortype={ Director }', {director: ['Moss, Ann']}, [], []],
    [
      'author={Moss, Ann}, editor={Otter, Bo}, editortype={director}',
      {author: ['Moss, Ann'], director: ['Otter, Bo']},
      [],
      [],
    ],
  ])('%s', async (written, expected, left, said) => {
    const people = Object.fromEntries(
      Object.entries(expected).map(([role, names]) => [role, names.map(person)]),
    );
    expect(await readBook(written)).toEqual({fields: people, dropped: left, changed: said});
  });

  test('two hundred come; how many are left is said', async () => {
    const names = Array.from({length: 203}, (_, index) => `Moss${index}, Ann`);
    const most = await readBook(`author={${names.slice(0, 200).join(' and ')}}`);
    expect([most.fields.author?.length, most.dropped]).toEqual([200, []]);
    const more = await readBook(`author={${names.join(' and ')}}`);
    expect([more.fields.author?.length, more.dropped]).toEqual([200, ['3 names of author']]);
    const one = await readBook(`author={${names.slice(0, 201).join(' and ')}}`);
    expect(one.dropped).toEqual(['1 name of author']);
  });
});

/** `Moss, Ann` is a person, a name without a comma a body. */
function person(name: string | object): object {
  if (typeof name !== 'string') return name;
  const [family, given] = name.split(', ');
  return given === undefined ? {literal: family} : {family, given};
}

describe('what is said of an entry', () => {
  test.each([
    ['publisher=tithe', {publisher: 'tithe'}, [], ['`tithe` is no @string and was taken as text']],
    [
      'subtitle={\\emph{S}}, publisher={P \\& Q}, abstract={\\emph{A}}',
      {publisher: 'P & Q'},
      ['abstract'],
      ['TeX became plain text in subtitle, publisher', 'marks were taken out of title'],
    ],
    ['publisher={P and Q}', {publisher: 'P and Q'}, [], []],
    ['crossref={nothing}', {}, [], []],
    // A formula or an environment that nothing closes is no sound TeX.
    [
      'publisher={Loft \\begin{x} Press}',
      {publisher: 'Loft x Press'},
      [],
      ['TeX became plain text in publisher'],
    ],
    ['edition={2 \\begin{x}}', {edition: '2 x'}, [], ['TeX became plain text in edition']],
    ['keywords={a \\begin{x}}', {}, ['keywords'], []],
  ])('%s', async (written, expected, left, said) => {
    const {fields, dropped, changed} = await read(`@book{k, title={T}, ${written}}`);
    expect(fields).toMatchObject(expected);
    expect([dropped, changed]).toEqual([left, said]);
  });

  test('two hundred fields are read', async () => {
    const many = (count: number) => Array.from({length: count}, (_, index) => `x${index}y={1}`).join(', ');
    const most = await readBook(many(199));
    expect(most.dropped).toHaveLength(199);
    expect(most.dropped).not.toContain('the fields after the first 200');
    expect((await readBook(many(200))).dropped.at(-1)).toBe('the fields after the first 200');
  });
});
