import {describe, expect, test} from 'vitest';
import {importText} from './import-text.ts';

// What a tag means: RIS format specification (2011), with the older tags of 2001 (T1, A1, Y1, Y2, CT, BT, ED, JF, JO, JA);
// its name in the library: CSL 1.0.2, appendices III and IV.

async function read(type: string, ...lines: readonly string[]) {
  const {added, problems} = await importText([`TY  - ${type}`, ...lines, 'ER  - ', ''].join('\n'), 'ris');
  expect(problems).toEqual([]);
  const [only] = added;
  if (only === undefined) throw new Error('nothing came');
  const {id, type: kind, ...fields} = only.source;
  return {id, kind, fields, dropped: only.dropped, changed: only.changed};
}

describe('tags', () => {
  test.each([
    ['BOOK', ['TI  - A', 'ED  - Moss, Ann'], {title: 'A', editor: [{family: 'Moss', given: 'Ann'}]}, []],
    [
      'BOOK',
      ['T1  - A', 'A1  - van Moss, Ann'],
      {
        title: 'A',
        author: [{family: 'Moss', given: 'Ann', 'non-dropping-particle': 'van'}],
      },
      [],
    ],
    ['BOOK', ['CT  - A'], {title: 'A'}, []],
    ['GEN', ['CT  - A'], {title: 'A'}, []],
    [
      'BOOK',
      ['TI  - A', 'PY  - 1882///', 'Y2  - 2026/04/18/'],
      {
        title: 'A',
        issued: {'date-parts': [[1882]]},
        accessed: {'date-parts': [[2026, 4, 18]]},
      },
      [],
    ],
    // The first date that can be read, and by the specification the day before the year.
    [
      'BOOK',
      ['TI  - A', 'PY  - 1882', 'DA  - 1882/05/17/'],
      {title: 'A', issued: {'date-parts': [[1882, 5, 17]]}},
      ['PY'],
    ],
    [
      'BOOK',
      ['TI  - A', 'DA  - in press', 'PY  - 1882'],
      {title: 'A', issued: {'date-parts': [[1882]]}},
      ['DA'],
    ],
    ['BOOK', ['TI  - A', 'DA  - in press', 'PY  - soon'], {title: 'A'}, ['DA', 'PY', 'issued `in press`']],
    ['BOOK', ['TI  - A', 'SP  - 528'], {title: 'A', 'number-of-pages': '528'}, []],
    [
      'JOUR',
      ['TI  - A', 'SP  - 5', 'EP  - 8', 'JF  - J'],
      {title: 'A', page: '5-8', 'container-title': 'J'},
      [],
    ],
    ['JOUR', ['TI  - A', 'JO  - J', 'T2  - Journal'], {title: 'A', 'container-title': 'Journal'}, ['JO']],
    ['MGZN', ['TI  - A', 'JA  - M.'], {title: 'A', 'container-title': 'M.'}, []],
    [
      'BOOK',
      ['TI  - A', 'UR  - https://a.example/', 'DO  - 10.1234/a'],
      {
        title: 'A',
        URL: 'https://a.example/',
        DOI: '10.1234/a',
      },
      [],
    ],
    ['BOOK', ['TI  - A', 'N1  - one', 'N1  - two'], {title: 'A', note: 'one two'}, []],
    ['BOOK', ['TI  - A', 'TI  - B'], {title: 'A'}, ['TI after the first']],
    ['BOOK', ['TI  - A', 'KW  - a', 'KW  - b'], {title: 'A'}, ['KW']],
    ['BOOK', ['TI  -   ', 'TI  - B'], {title: 'B'}, []],
    [
      'BOOK',
      ['TI  - A', 'AU  - Moss, Ann', 'AU  - ', 'AU  - Otter, Bo'],
      {
        title: 'A',
        author: [
          {family: 'Moss', given: 'Ann'},
          {family: 'Otter', given: 'Bo'},
        ],
      },
      [],
    ],
    [
      'BOOK',
      ['TI  - A', 'TA  - Moss, Ann', 'L1  - a.pdf', 'AN  - 7', 'DB  - Cat'],
      {title: 'A'},
      ['TA', 'L1', 'AN', 'DB'],
    ],
  ])('%s %j', async (type, lines, fields, dropped) => {
    const found = await read(type, ...lines);
    expect([found.fields, found.dropped]).toEqual([fields, dropped]);
  });

  test.each([
    ['JOURN', 'article-journal', []],
    ['jour', 'article-journal', []],
    ['WEB', 'webpage', []],
    ['MPCT', 'motion_picture', []],
    ['QUILT', 'pamphlet', ['type `QUILT` became `pamphlet`']],
    ['', 'pamphlet', ['it had no type and became `pamphlet`']],
  ])('TY %s is %s', async (type, kind, changed) => {
    const found = await read(type, 'ID  - k', 'TI  - A');
    expect([found.id, found.kind, found.changed]).toEqual(['k', kind, changed]);
  });
});

describe('lines', () => {
  test.each([
    [
      'a hyphen in the text, and a tag with nothing behind it',
      ['TI  - A - B  - C', 'KW  -', 'PB  - P'],
      {title: 'A - B - C', publisher: 'P'},
    ],
    [
      'space before the tag, and one space before the hyphen',
      ['  TI - A', ' PB  - P '],
      {title: 'A', publisher: 'P'},
    ],
    [
      'lines that go on, and empty ones',
      ['TI  - A', '', '  and B ', '   ', 'and C', 'PB  - P'],
      {title: 'A and B and C', publisher: 'P'},
    ],
    [
      'what only looks like a tag goes on',
      ['TI  - A', 'X  - B', 'see PB  - P', 'Ti  - C'],
      {title: 'A X - B see PB - P Ti - C'},
    ],
    ['a line before the first tag is passed over', ['lost', 'TI  - A'], {title: 'A'}],
  ])('%s', async (_, lines, fields) => {
    expect((await read('BOOK', ...lines)).fields).toEqual(fields);
  });

  test('what stands outside of records is told once, empty lines are not', async () => {
    const text = '\n  \nlost\nlost again\nTY  - BOOK\nTI  - A\nER  - \n \nTI  - B\n';
    const {problems, sources} = await importText(text, 'ris');
    expect(problems).toEqual([{message: 'this line stands outside of every record', line: 3}]);
    expect(sources.map(({title}) => title)).toEqual(['A']);
  });
});
