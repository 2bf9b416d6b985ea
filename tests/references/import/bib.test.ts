import {describe, expect, test} from 'vitest';
import {importText} from './import-text.ts';

// Expected values: what each field means is taken from the BibLaTeX manual 3.20 (sections 2.1 entry types, 2.2.2 data
// fields, 2.3.8 dates) and Patashnik's BibTeXing (1988); its name in the library from the CSL 1.0.2 specification,
// appendices III (types) and IV (variables). Victorian manuals are in the public domain; everything else is invented.

async function only(text: string) {
  const {added, problems} = await importText(text, 'bib');
  expect(problems).toEqual([]);
  expect(added).toHaveLength(1);
  return added[0];
}

describe('entries', () => {
  test('a book as BibTeX writes it', async () => {
    const added = await only(`
@book{caulfeild1882,
  author    = "Caulfeild, Sophia Frances Anne and Blanche C. Saward",
  title     = {The Dictionary of Needlework},
  publisher = {L. Upcott Gill},
  address   = {London},
  year      = 1882,
  edition   = {Second},
  series    = {Needlework Library},
  keywords  = {lace},
  isbn      = {978-0-306-40615-7},
}`);
    expect(added).toEqual({
      source: {
        id: 'caulfeild1882',
        type: 'book',
        title: 'The Dictionary of Needlework',
        author: [
          {family: 'Caulfeild', given: 'Sophia Frances Anne'},
          {family: 'Saward', given: 'Blanche C.'},
        ],
        issued: {'date-parts': [[1882]]},
        publisher: 'L. Upcott Gill',
        'publisher-place': 'London',
        edition: 'Second',
        'collection-title': 'Needlework Library',
        ISBN: '978-0-306-40615-7',
      },
      dropped: ['keywords'],
      changed: [],
    });
  });

  test('an article as BibLaTeX writes it', async () => {
    const added = await only(`
@article{achterberg2012,
  author       = {Achterberg, Lies and Moss, Peregrine},
  title        = {Relaxation of hand-knitted wool},
  subtitle     = {The first wetting},
  journaltitle = {Journal of Domestic Textiles},
  date         = {2012-05-17},
  volume       = {7},
  number       = {2},
  pages        = {101--118},
  issn         = {0317-8471},
  doi          = {10.1234/jdt\\_7},
  url          = {https://textiles.example.org/a\\_b?x=1\\&y=2},
  urldate      = {2026-04-18},
}`);
    expect(added?.source).toEqual({
      id: 'achterberg2012',
      type: 'article-journal',
      title: 'Relaxation of hand-knitted wool: The first wetting',
      author: [
        {family: 'Achterberg', given: 'Lies'},
        {family: 'Moss', given: 'Peregrine'},
      ],
      'container-title': 'Journal of Domestic Textiles',
      issued: {'date-parts': [[2012, 5, 17]]},
      accessed: {'date-parts': [[2026, 4, 18]]},
      volume: '7',
      issue: '2',
      page: '101-118',
      ISSN: '0317-8471',
      DOI: '10.1234/jdt_7',
      URL: 'https://textiles.example.org/a_b?x=1&y=2',
    });
  });

  test('a part takes what its crossref has: the title of the book becomes that of its container', async () => {
    const {sources} = await importText(
      `@incollection{kestrel, author={Kestrel, Josephine}, title={The buttonhole considered}, pages={61--84}, crossref={amory}}
@collection{amory, editor={Amory, Dinah}, title={Fastenings for Knitwear}, date={2015}, publisher={Pinfold Editions}, location={Fellgate}}`,
      'bib',
    );
    expect(sources[0]).toEqual({
      id: 'kestrel',
      type: 'chapter',
      title: 'The buttonhole considered',
      author: [{family: 'Kestrel', given: 'Josephine'}],
      editor: [{family: 'Amory', given: 'Dinah'}],
      'container-title': 'Fastenings for Knitwear',
      issued: {'date-parts': [[2015]]},
      page: '61-84',
      publisher: 'Pinfold Editions',
      'publisher-place': 'Fellgate',
    });
  });

  test.each([
    ['@book', 'book'],
    ['@inbook', 'chapter'],
    ['@booklet', 'pamphlet'],
    ['@phdthesis', 'thesis'],
    ['@techreport', 'report'],
    ['@unpublished', 'manuscript'],
    ['@online', 'webpage'],
    ['@movie', 'motion_picture'],
    ['@inreference', 'entry-encyclopedia'],
    ['@ARTICLE', 'article-journal'],
  ])('%s is %s', async (type, expected) => {
    expect((await only(`${type}{k, title = {T}}`))?.source.type).toBe(expected);
  });

  test('a magazine is told by entrysubtype, a director by editortype; a type that nobody knows is said', async () => {
    const magazine = await only(
      '@article{k, title={T}, entrysubtype={magazine}, journaltitle={The Quarterly}}',
    );
    expect(magazine?.source).toMatchObject({type: 'article-magazine', 'container-title': 'The Quarterly'});
    const film = await only('@video{k, title={T}, editor={Orme, Bettina}, editortype={director}}');
    expect(film?.source).toMatchObject({director: [{family: 'Orme', given: 'Bettina'}]});
    expect(film?.source).not.toHaveProperty('editor');
    const odd = await only('@quilt{k, title={T}}');
    expect(odd?.changed).toEqual(['type `quilt` became `pamphlet`']);
  });

  test('@string, joined values, months, remarks, @comment, @preamble and brackets', async () => {
    const {sources, problems} = await importText(
      `Saved for ann@example.org
@comment{nothing}
@preamble{"\\newcommand{\\noopsort}[1]{}"}
@string{tithe = {Tithe Press}}
@string(vale = "Vale " # tithe)
% a remark
@BOOK(ashdown2011, title = "The {"}Shaped{"} Stitch", publisher = vale # { and Sons}, year = 2011, month = may)`,
      'bib',
    );
    expect(problems).toEqual([]);
    expect(sources).toEqual([
      {
        id: 'ashdown2011',
        type: 'book',
        title: 'The "Shaped" Stitch',
        publisher: 'Vale Tithe Press and Sons',
        issued: {'date-parts': [[2011, 5]]},
      },
    ]);
  });
});

// BibTeXing, section 4: First von Last; von Last, First; von Last, Jr, First; a name in braces is one word.
test.each([
  ['van der Berg, Jan', {family: 'Berg', given: 'Jan', 'non-dropping-particle': 'van der'}],
  ['Ludwig van Beethoven', {family: 'Beethoven', given: 'Ludwig', 'non-dropping-particle': 'van'}],
  ['de la Cruz, Jr., Ana', {family: 'Cruz', given: 'Ana', suffix: 'Jr.', 'non-dropping-particle': 'de la'}],
  ['Jean-Paul {\\"O}zg{\\"u}r', {family: 'Özgür', given: 'Jean-Paul'}],
  ['{Fellgate Guild of Hand and Machine Knitters}', {literal: 'Fellgate Guild of Hand and Machine Knitters'}],
])('the name %s', async (written, expected) => {
  expect((await only(`@book{k, title={T}, author={${written}}}`))?.source.author).toEqual([expected]);
});

test('thirty authors all come; `and others` is left out and said', async () => {
  const names = Array.from({length: 30}, (_, index) => `Family${index}, Given${index}`);
  const added = await only(`@book{k, title={T}, author={${names.join('\n and ')} and others}}`);
  expect(added?.source.author).toEqual(
    names.map((name) => ({family: name.split(', ')[0], given: name.split(', ')[1]})),
  );
  expect(added?.changed).toEqual(['author ends in “and others”, which was left out']);
});

// LaTeX2e's accents and signs, as Unicode names them.
test.each([
  ['B{\\"u}cher f\\"{u}r \\\'Etoffes', 'Bücher für Étoffes'],
  ['na{\\"\\i}ve {\\ae}sthetic \\O rsted \\ss{} \\aa', 'naïve æsthetic Ørsted ß å'],
  ['\\emph{Knit} \\textit{and {\\bf Purl}}', 'Knit and Purl'],
  ['$\\frac{1}{2}$ inch, $x^2$, 4\\,mm, 100\\,\\% wool \\& silk', '1/2 inch, x², 4 mm, 100 % wool & silk'],
  ["``Ribs'' -- welts---hems~here", '“Ribs” – welts—hems\u00a0here'],
  ['\\toString{a} \\constructor \\unknown{word}', 'a constructor word'],
  ['costs $5 \\', 'costs $5'],
  ['\\begin{x} left open', 'x left open'],
  ['<script>alert(1)</script> <i>Lace</i>', '<script>alert(1)</script> Lace'],
  ['שזירה בשתי מסרגות', 'שזירה בשתי מסרגות'],
])('TeX as text: %s', async (tex, expected) => {
  expect((await only(`@book{k, title = {${tex}}}`))?.source.title).toBe(expected);
});

// BibLaTeX manual, section 2.3.8: ISO 8601-2; ~ and ? are uncertain dates, / a range.
test.each([
  ['date = {2011-05}', {'date-parts': [[2011, 5]]}],
  ['date = {1910~}', {'date-parts': [[1910]], circa: true}],
  ['date = {1910?}', {'date-parts': [[1910]], circa: true}],
  ['date = {2010/2012}', {'date-parts': [[2010], [2012]]}],
  [
    'date = {2010-03/2011-04}',
    {
      'date-parts': [
        [2010, 3],
        [2011, 4],
      ],
    },
  ],
  ['date = {2010/}', {'date-parts': [[2010]]}],
  ['date = {2011-21}', {'date-parts': [[2011]]}],
  ['year = {c1910}', {'date-parts': [[1910]], circa: true}],
  ['year = {[1843]}', {'date-parts': [[1843]], circa: true}],
  ['year = 1843, month = "17~" # mar', {'date-parts': [[1843, 3, 17]]}],
  ['year = 1843, month = {3}', {'date-parts': [[1843, 3]]}],
])('%s', async (field, expected) => {
  expect((await only(`@book{k, title={T}, ${field}}`))?.source.issued).toEqual(expected);
});

test('what is dropped is named: unknown and repeated fields, no date, an address that is none', async () => {
  const added = await only(
    '@book{k, title={T}, title={U}, file={a.pdf}, abstract={A}, year={n.d.}, url={javascript:alert(1)}, note={N}, annote={M}}',
  );
  expect(added?.source).toEqual({id: 'k', type: 'book', title: 'T', note: 'N'});
  expect(added?.dropped.toSorted()).toEqual(
    ['title', 'file', 'abstract', 'annote', 'issued `n.d.`', 'URL `javascript:alert(1)`'].toSorted(),
  );
});

describe('keys', () => {
  test('a legal key stays; another is made of family name and year, with a letter where it is taken', async () => {
    const {sources} = await importText(
      `@book{DBLP:conf/x, title={A}}
@book{two words, title={B}, author={O'Brien-Ångström, Eve}, year=2011}
@book{, title={C}, author={O'Brien-Ångström, Eve}, year=2011}
@book{title={D}, author={O'Brien-Ångström, Eve}, year=2011}
@book{dunmail, title={E}}
@book{dunmail, title={F}}
@book{dunmaila, title={G}}`,
      'bib',
    );
    expect(sources.map(({id, title}) => `${title} ${id}`)).toEqual([
      'A DBLP:conf/x',
      'B obrienangstrom2011',
      'C obrienangstrom2011a',
      'D obrienangstrom2011b',
      'E dunmail',
      'F dunmailb',
      'G dunmaila',
    ]);
  });
});

describe('what cannot be read has its line, and the entries around it come', () => {
  const good = (key: string) => `@book{${key},\n  title = {T ${key}},\n}\n`;
  test.each([
    ['an unclosed brace', '@book{x,\n  title = {The {Shaped} Stitch,\n  year = 2011\n}\n', 2],
    ['an unclosed brace that swallows the next field', '@book{x,\n  title = {The,\n  year = {2011}\n}\n', 2],
    ['an unclosed quotation mark', '@book{x,\n  year = 2011,\n  title = "The\n}\n', 3],
    ['an unclosed entry', '@book{x,\n  title = {The},\n', 1],
    ['a brace too many', '@book{x,\n  title = {The } Stitch},\n}\n', 2],
    ['a field without a value', '@book{x,\n  title = ,\n}\n', 2],
    ['a field without =', '@book{x,\n  title {The},\n}\n', 2],
    ['no brace at all', '@book x,\n', 1],
  ])('%s', async (_, broken, line) => {
    const {sources, problems} = await importText(`${good('a')}${broken}${good('b')}`, 'bib');
    expect(problems.map((problem) => problem.line)).toEqual([3 + line]);
    expect(sources.map(({id}) => id)).toEqual(['a', 'b']);
  });

  test.each([
    ['', 'nothing stands in this file'],
    ['only words', 'no entry stands in this file'],
    ['x'.repeat(5_000_000), 'this file has 5000000 characters; 2000000 are read at once'],
  ])('no entry: %#', async (text, message) => {
    expect((await importText(text, 'bib')).problems).toEqual([{message, line: 1}]);
  });
});
