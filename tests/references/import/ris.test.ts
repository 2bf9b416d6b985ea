import {describe, expect, test} from 'vitest';
import {importText} from './import-text.ts';

// Expected values: the meaning of each tag is taken from the RIS format specification (2011, with the older tags of
// 2001: T1, A1, Y1, JO, JF, N1); its name in the library from the CSL 1.0.2 specification, appendices III and IV.

const record = (lines: readonly string[]) => `${lines.join('\n')}\nER  - \n`;

async function only(lines: readonly string[]) {
  const {added, problems} = await importText(record(lines), 'ris');
  expect(problems).toEqual([]);
  return added[0];
}

describe('records', () => {
  test('a book', async () => {
    const added = await only([
      'TY  - BOOK',
      'ID  - caulfeild1882',
      'AU  - Caulfeild, Sophia Frances Anne',
      'AU  - Saward, Blanche C.',
      'TI  - The Dictionary of Needlework  - an Encyclopædia',
      'T2  - Needlework Library',
      'PY  - 1882///',
      'CY  - London',
      'PB  - L. Upcott Gill',
      'SP  - 528',
      'ET  - 2nd',
      'SN  - 978-0-306-40615-7',
      'KW  - lace',
      'KW  - embroidery',
      'L1  - file:///shelf/a.pdf',
      'UR  - javascript:alert(1)',
    ]);
    expect(added).toEqual({
      source: {
        id: 'caulfeild1882',
        type: 'book',
        title: 'The Dictionary of Needlework - an Encyclopædia',
        author: [
          {family: 'Caulfeild', given: 'Sophia Frances Anne'},
          {family: 'Saward', given: 'Blanche C.'},
        ],
        'collection-title': 'Needlework Library',
        issued: {'date-parts': [[1882]]},
        'publisher-place': 'London',
        publisher: 'L. Upcott Gill',
        'number-of-pages': '528',
        edition: '2nd',
        ISBN: '978-0-306-40615-7',
      },
      dropped: ['KW', 'L1', 'UR', 'URL `javascript:alert(1)`'],
      changed: [],
    });
  });

  test('an article with the older tags, its lines folded, the date to the day', async () => {
    const added = await only([
      'TY  - JOUR',
      'A1  - van der Berg, Jan',
      'T1  - Relaxation of hand-knitted wool',
      'on first wetting',
      'JO  - Journal of Domestic Textiles',
      'VL  - 7',
      'IS  - 2',
      'SP  - 101',
      'EP  - 118',
      'Y1  - 2012/05/17/',
      'SN  - 0317-8471',
      'DO  - 10.1234/jdt.7',
      'UR  - https://textiles.example.org/7',
    ]);
    expect(added?.source).toEqual({
      id: 'berg2012',
      type: 'article-journal',
      title: 'Relaxation of hand-knitted wool on first wetting',
      author: [{family: 'Berg', given: 'Jan', 'non-dropping-particle': 'van der'}],
      'container-title': 'Journal of Domestic Textiles',
      volume: '7',
      issue: '2',
      page: '101-118',
      issued: {'date-parts': [[2012, 5, 17]]},
      ISSN: '0317-8471',
      DOI: '10.1234/jdt.7',
      URL: 'https://textiles.example.org/7',
    });
    expect(added?.changed).toEqual(['it had no key']);
  });

  test('a chapter: T2 is the book, A2 its editor', async () => {
    const added = await only([
      'TY  - CHAP',
      'AU  - Kestrel, Josephine',
      'TI  - The buttonhole considered',
      'T2  - Fastenings for Knitwear',
      'A2  - Amory, Dinah',
      'PY  - 2015',
      'SP  - 61',
      'EP  - 84',
      'PB  - Pinfold Editions',
    ]);
    expect(added?.source).toMatchObject({
      type: 'chapter',
      'container-title': 'Fastenings for Knitwear',
      editor: [{family: 'Amory', given: 'Dinah'}],
      page: '61-84',
    });
  });

  test.each([
    ['MGZN', 'article-magazine'],
    ['NEWS', 'article-newspaper'],
    ['THES', 'thesis'],
    ['RPRT', 'report'],
    ['PAMP', 'pamphlet'],
    ['ELEC', 'webpage'],
    ['WEB', 'webpage'],
    ['BLOG', 'post-weblog'],
    ['VIDEO', 'motion_picture'],
    ['MPCT', 'motion_picture'],
    ['MANSCPT', 'manuscript'],
    ['ENCYC', 'entry-encyclopedia'],
  ])('%s is %s, with its title and author', async (type, expected) => {
    const added = await only([`TY  - ${type}`, 'TI  - Welts', 'AU  - Tolley, Nora', 'PY  - 1992']);
    const person = [{family: 'Tolley', given: 'Nora'}];
    expect(added?.source).toMatchObject({type: expected, title: 'Welts', issued: {'date-parts': [[1992]]}});
    expect(added?.source.author ?? added?.source.director).toEqual(person);
  });
});

test('a type that there is not is said', async () => {
  const added = await only(['TY  - QUILT', 'TI  - Welts', 'UR  - https://welts.example.org/']);
  expect(added?.source).toMatchObject({type: 'webpage', title: 'Welts'});
  expect(added?.changed).toContain('type `QUILT` became `webpage`');
});

describe('files that are not as they should be', () => {
  test('records without ER, with CRLF, without any author or date', async () => {
    const {sources, problems} = await importText(
      'TY  - BOOK\r\nTI  - Welts\r\nTY  - BOOK\r\nTI  - Ribs\r\n',
      'ris',
    );
    expect(problems).toEqual([]);
    expect(sources).toEqual([
      {id: 'welts', type: 'book', title: 'Welts'},
      {id: 'ribs', type: 'book', title: 'Ribs'},
    ]);
  });

  test('lines outside of records are told once, with their line', async () => {
    const {sources, problems} = await importText(
      `${record(['TY  - BOOK', 'TI  - Welts'])}\nAU  - Lost, One\nTI  - Lost\n`,
      'ris',
    );
    expect(problems).toEqual([{message: 'this line stands outside of every record', line: 5}]);
    expect(sources).toHaveLength(1);
  });

  test('a record that says nothing is left out', async () => {
    const {leftOut} = await importText(record(['TY  - BOOK', 'KW  - lace']), 'ris');
    expect(leftOut).toEqual([
      {name: 'an entry without key and title', reason: 'it has neither a title nor a name'},
    ]);
  });
});
