import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {readCslJson} from '../../../src/references/import/read-csl-json.ts';
import {readNames, withParticle} from '../../../src/references/import/read-names.ts';
import {toSource} from '../../../src/references/import/to-source.ts';

// The names of the fields and the form of each: CSL 1.0.2, appendix IV, and the CSL data schema (csl-data.json, 1.0.2).

describe('a field of a record', () => {
  test.each([
    // What was written, what the library has, what was dropped, what was changed.
    [{title: 'Plain'}, {title: 'Plain'}, [], []],
    [{title: ['Plain', null, ' ', 7]}, {title: 'Plain; 7'}, [], []],
    [{title: null, author: null, issued: null}, {}, [], []],
    [{title: ''}, {}, ['title'], []],
    [{title: {text: 'T'}}, {}, ['title'], []],
    [{title: 'T'.repeat(5000)}, {title: 'T'.repeat(5000)}, [], []],
    [
      {note: 'N'.repeat(5001)},
      {},
      ['note'],
      ['note is 5001 characters long, of which the library takes 5000'],
    ],
    [
      {title: '<i>Lace</i>', publisher: 'A &amp; B', note: 'x < y'},
      {title: 'Lace', publisher: 'A & B', note: 'x < y'},
      [],
      ['marks were taken out of title, publisher'],
    ],
    [
      {title: 'a <span class="nocase">b</span> <span>c</span>'},
      {title: 'a b c'},
      [],
      ['marks were taken out of title'],
    ],
    [{id: 'k', 'citation-key': 'k', citekey: 'k', abstract: 'A', custom: {}}, {}, ['abstract', 'custom'], []],
    [{shelf: 'own'}, {shelf: 'own'}, [], []],
    [{shelf: 'attic'}, {}, ['shelf'], []],
    [{URL: 'https://a.example/x'}, {URL: 'https://a.example/x'}, [], []],
    [{URL: 'HTTP://a.example'}, {URL: 'HTTP://a.example'}, [], []],
    [{URL: 'see https://a.example/x'}, {}, ['URL `see https://a.example/x`'], []],
    [{URL: 'https://a.example/x y'}, {}, ['URL `https://a.example/x y`'], []],
    [{URL: `ftp://${'x'.repeat(90)}`}, {}, [`URL \`ftp://${'x'.repeat(74)}\``], []],
    [{DOI: 'https://doi.org/10.1234/a'}, {DOI: '10.1234/a'}, [], []],
    [{DOI: 'no number'}, {DOI: 'no number'}, [], []],
    // ISO 2108 and ISO 3297 own examples: 0-306-40615-2 and 978-0-306-40615-7 are right, 0317-8471 is.
    [{ISBN: '978-0-306-40615-7'}, {ISBN: '978-0-306-40615-7'}, [], []],
    [{ISBN: '978-0-306-40615-8'}, {ISBN: '978-0-306-40615-8'}, [], []],
    [
      {ISBN: '978-0-306-40615-8, 0-306-40615-2'},
      {ISBN: '0-306-40615-2'},
      [],
      ['of ISBN `978-0-306-40615-8, 0-306-40615-2` the first was taken'],
    ],
    [
      {ISBN: '0-306-40615-2(cloth, sewn)978-0-306-40615-7'},
      {ISBN: '0-306-40615-2'},
      [],
      ['of ISBN `0-306-40615-2(cloth, sewn)978-0-306-40615-7` the first was taken'],
    ],
    [{ISBN: '1 2 3'}, {ISBN: '1 2 3'}, [], []],
    [
      {ISSN: '0317-8471; 1050-124X'},
      {ISSN: '0317-8471'},
      [],
      ['of ISSN `0317-8471; 1050-124X` the first was taken'],
    ],
    [{author: []}, {}, ['author'], []],
    [{author: [{family: ''}]}, {}, ['author'], []],
    [
      {author: [{family: '<b>Moss</b>', given: 'Ann', ORCID: '0', 'comma-suffix': true}]},
      {author: [{family: 'Moss', given: 'Ann'}]},
      ['author.ORCID'],
      ['marks were taken out of author'],
    ],
    [{issued: 'soon'}, {}, ['issued `soon`'], []],
    [{issued: {raw: 'soon'}}, {}, ['issued `soon`'], []],
    [{issued: {literal: 'next year'}}, {}, ['issued `next year`'], []],
    [{issued: {'date-parts': [[]]}}, {}, ['issued `{"date-parts":[[]]}`'], []],
    [{issued: {raw: 'x'.repeat(90)}}, {}, [`issued \`${'x'.repeat(80)}\``], []],
    [{issued: {raw: '2011-05'}}, {issued: {'date-parts': [[2011, 5]]}}, [], []],
    [
      {accessed: '17 May 2011', issued: '2011-05-07 to 2012'},
      {accessed: {'date-parts': [[2011, 5, 17]]}},
      ['issued `2011-05-07 to 2012`'],
      ['accessed `17 May 2011` was read as 2011-05-17'],
    ],
    [
      {issued: 'c. 1910', accessed: '2010--2012'},
      {issued: {'date-parts': [[1910]], circa: true}, accessed: {'date-parts': [[2010], [2012]]}},
      [],
      ['accessed `2010--2012` was read as 2010 to 2012'],
    ],
    [
      {issued: {literal: '2011/05/17/'.padEnd(95, 'x')}},
      {issued: {'date-parts': [[2011, 5, 17]]}},
      [],
      [`issued \`${'2011/05/17/'.padEnd(80, 'x')}\` was read as 2011-05-17`],
    ],
  ])('%j', (record, source, dropped, changed) => {
    expect(toSource({type: 'book', ...record})).toEqual({
      source: {...source, type: 'book'},
      dropped,
      changed,
    });
  });

  test.each([
    [{type: 'book'}, 'book', []],
    [{}, 'pamphlet', ['it had no type and became `pamphlet`']],
    [{type: 'quilt'}, 'pamphlet', ['type `quilt` became `pamphlet`']],
    [{type: 'toString'}, 'pamphlet', ['type `toString` became `pamphlet`']],
    [{type: ['book']}, 'pamphlet', ['type `book` became `pamphlet`']],
    [{type: 'quilt', URL: 'https://a.example'}, 'webpage', ['type `quilt` became `webpage`']],
    [{type: 'quilt', URL: 'nowhere'}, 'pamphlet', ['type `quilt` became `pamphlet`']],
    [{type: 'article'}, 'article-journal', ['type `article` became `article-journal`']],
    [{type: 'q'.repeat(50)}, 'pamphlet', [`type \`${'q'.repeat(40)}\` became \`pamphlet\``]],
  ])('the type of %j', (record, type, changed) => {
    const read = toSource(record);
    expect([read.source.type, read.changed]).toEqual([type, changed]);
  });
});

describe('names', () => {
  const most = (letter: string) => letter.repeat(500);
  test.each([
    ['Moss, Ann', [{family: 'Moss', given: 'Ann'}], []],
    ['The Guild', [{literal: 'The Guild'}], []],
    ['Moss,', [{family: 'Moss'}], ['given']],
    ['Moss, Ann, Jr.', [{family: 'Moss', given: 'Ann, Jr.'}], []],
    [['Moss, Ann', {literal: 'Guild'}], [{family: 'Moss', given: 'Ann'}, {literal: 'Guild'}], []],
    [{family: 'Moss'}, [{family: 'Moss'}], []],
    [
      [{family: 'Moss', nick: 'Mo'}, {}, {nick: 'X'}, 7, ''],
      [{family: 'Moss'}, {literal: '7'}],
      ['nick', 'literal'],
    ],
    [[{family: most('M')}, {family: `${most('M')}m`}], [{family: most('M')}], ['family']],
    [
      [{'non-dropping-particle': 'van der', 'dropping-particle': 'd\u2019', family: 'Berg', suffix: 'Jr.'}],
      [{'non-dropping-particle': 'van der', 'dropping-particle': 'd\u2019', family: 'Berg', suffix: 'Jr.'}],
      [],
    ],
  ])('%j', (written, names, dropped) => {
    expect(readNames(written)).toEqual({names, dropped, hadMarks: false});
  });

  test('marks in one name of several are told', () => {
    expect(readNames([{family: '<i>Moss</i>'}, {family: 'Otter'}]).hadMarks).toBe(true);
    expect(readNames([{family: 'Moss'}, {family: '<i>Otter</i>'}]).hadMarks).toBe(true);
  });

  test('two hundred names are read, and how many more there are is told', () => {
    const names = Array.from({length: 203}, (_, index) => `Moss${index}, Ann`);
    const read = (count: number) => {
      const {names: kept, dropped} = readNames(names.slice(0, count));
      return [kept.length, dropped];
    };
    expect(read(200)).toEqual([200, []]);
    expect(read(201)).toEqual([200, ['1 more']]);
    expect(read(203)).toEqual([200, ['3 more']]);
  });

  // Patashnik, BibTeXing (1988), section 4: the words in small letters before the first that begins with a capital.
  test.each([
    [{family: 'van der Berg'}, {'non-dropping-particle': 'van der', family: 'Berg'}],
    [{family: "d'  Este Moss"}, {'non-dropping-particle': "d'", family: 'Este Moss'}],
    [{family: 'Berg'}, {family: 'Berg'}],
    [{family: 'Le van Berg'}, {family: 'Le van Berg'}],
    [{family: 'van'}, {family: 'van'}],
    [
      {family: 'van Berg', 'non-dropping-particle': 'de'},
      {family: 'van Berg', 'non-dropping-particle': 'de'},
    ],
    [{literal: 'van Berg'}, {literal: 'van Berg'}],
  ])('%j taken apart is %j', (name, apart) => {
    expect(withParticle(name)).toEqual(apart);
  });
});

describe('CSL-JSON', () => {
  const space = fc.stringMatching(/^[ \t\n]{0,3}$/);
  const list = fc.array(fc.tuple(fc.jsonValue({maxDepth: 3}), space), {minLength: 1, maxLength: 6});

  test('each entry of a list has the place where it begins, whatever stands in it', () => {
    fc.assert(
      fc.property(
        list,
        space,
        fc.boolean(),
        fc.constantFrom('items', 'references'),
        (values, gap, isFramed, name) => {
          let text = isFramed
            ? `${gap}{"about": "[1] \\"${name}\\": [", "n": [[2]], "${name}"${gap}:${gap}[`
            : `${gap}[`;
          const starts: number[] = [];
          values.forEach(([value, before], index) => {
            text += `${index > 0 ? ',' : ''}${before}`;
            starts.push(text.length);
            text += `${JSON.stringify(value, null, gap.length)}${gap}`;
          });
          text += isFramed ? `],${gap}"more": [{"id": 1}]}` : `]${gap}`;
          const read = readCslJson(text);
          if (!read.ok) throw new Error(JSON.stringify(read.problems));
          const {items, problems} = read.value;
          const spans = [...items, ...problems].map(({span}) => span).sort((a, b) => a.start - b.start);
          expect(spans).toEqual(starts.map((start) => ({start, end: start + 1})));
          // As it is written: JSON has no zero below zero.
          const written: unknown[] = values.map(([value]) => JSON.parse(JSON.stringify(value)));
          expect(items.map(({record}) => record)).toEqual(written.filter(isObject));
        },
      ),
    );
  });

  const isObject = (value: unknown) => typeof value === 'object' && value !== null && !Array.isArray(value);

  test.each([
    ['{"type": "book"}', [[0, 1]]],
    [' {"title": "A", "author": [{"family": "B"}]}', [[0, 1]]],
    ['[]', []],
  ])('%s is %j', (text, spans) => {
    const read = readCslJson(text);
    expect(read.ok && read.value.items.map(({span}) => [span.start, span.end])).toEqual(spans);
  });

  test.each([
    ['', 'nothing stands in this file', 0, 0],
    [' \n', 'nothing stands in this file', 0, 1],
    ['[1 2]', 'this is no JSON from here on', 3, 4],
    ['[{"a": 1}', 'this is no JSON from here on', 9, 9],
    ['[{"a": 1} \n', 'this is no JSON from here on', null, null],
    ['"words"', 'no list of references stands in this file', 0, 0],
    ['7', 'no list of references stands in this file', 0, 0],
    ['null', 'no list of references stands in this file', 0, 0],
    ['{"words": []}', 'no list of references stands in this file', 0, 0],
    ['{"items": 7}', 'no list of references stands in this file', 0, 0],
  ])('%j is refused', (text, message, start, end) => {
    const read = readCslJson(text);
    expect(read.ok).toBe(false);
    const [problem] = read.ok ? [] : read.problems;
    expect(problem?.message).toBe(message);
    if (start !== null) expect(problem?.span).toEqual({start, end});
    expect(problem?.span.start).toBeLessThanOrEqual(text.length);
  });

  test('what is no reference in a list is told by its number', () => {
    const read = readCslJson('[{"id": "a"}, 7, "x"]');
    expect(read.ok && read.value.problems.map(({message}) => message)).toEqual([
      'entry 2 of the list is no reference',
      'entry 3 of the list is no reference',
    ]);
  });
});
