import {describe, expect, test} from 'vitest';
import {bibDate, yearAndMonth} from '../../../src/references/import/bib-dates.ts';
import {loadCitationParsers} from '../../../src/references/import/citation-parsers.ts';
import {readBib} from '../../../src/references/import/read-bib.ts';
import {texText} from '../../../src/references/import/tex-text.ts';
import {importText} from './import-text.ts';

// The form of a file: Patashnik, BibTeXing (1988), section 2, and the BibLaTeX manual 3.20, section 2.2.

/** Names and values of the fields of the only entry. */
function fieldsOf(text: string) {
  const {entries, problems} = readBib(text);
  expect(problems).toEqual([]);
  expect(entries).toHaveLength(1);
  return Object.fromEntries((entries[0]?.fields ?? []).map(({name, text: value}) => [name, value]));
}

describe('an entry', () => {
  test.each([
    ['@book{k, Title = {A}}', {title: 'A'}],
    ['@book{k,title={A},year=1882,}', {title: 'A', year: '1882'}],
    ['@book{k, title = {A} year = 1882}', {title: 'A', year: '1882'}],
    ['@book{k, % a remark, with = {\n  title = {A} % another\n}', {title: 'A'}],
    ['@book{k, title = {A % no remark}}', {title: 'A % no remark'}],
    ['@book{k, title %\n=% \n{A}}', {title: 'A'}],
    ['@book{k, title = "A {"}B{"} C"}', {title: 'A {"}B{"} C'}],
    ['@book{k, title = "A {B {C}} D"}', {title: 'A {B {C}} D'}],
    ['@book{k, title = {A "B} }', {title: 'A "B'}],
    ['@book{k, month = jan # " " # 17}', {month: 'jan 17'}],
    ['@book{k, month = 17 #jan}', {month: '17jan'}],
    ['@string{a = "x" # {y}} @book{k, title = A # a}', {title: 'xyxy'}],
    ['@book{k, title = 17th}', {title: '17th'}],
    ['@book{k, note = v17}', {note: 'v17'}],
    ['@book(k, title = {A (B) C})', {title: 'A (B) C'}],
    ['@book { k , title = {A}}', {title: 'A'}],
    ['@preamble{"\\x{@book{"}\n@comment{no}\n@book{k}', {}],
    ['ann@example.org, the book @ home, 7 @book k\n@book{k}', {}],
  ])('%j', (text, fields) => {
    expect(fieldsOf(text)).toEqual(fields);
  });

  test('has its type in small letters, its key, its place, and what is written again or known to nobody', () => {
    const text = 'Words.\n  @ Book {k1, title = {A}, TITLE = {B}, note = one # jan # two, title = {C}}';
    expect(readBib(text).entries).toMatchObject([
      {
        type: 'book',
        key: 'k1',
        repeated: ['title', 'title'],
        unknownMacros: ['one', 'two'],
        span: {start: text.indexOf('@'), end: text.indexOf('Book') + 4},
      },
    ]);
  });

  test.each([
    ['@book{a b: c.d, title={A}}', 'a b: c.d'],
    ['@book{, title={A}}', null],
    ['@book{title={A}}', null],
    ['@book{k}', 'k'],
    ['@book{}', null],
  ])('%j has the key %s', (text, key) => {
    expect(readBib(text).entries.map((entry) => entry.key)).toEqual([key]);
  });
});

/** What is said, and the text that it points at. */
test.each([
  ['@book k, title = {A}', 'no brace follows `@book`', '@book k, title = {A}'],
  ['Words\n \t@ Book k', 'no brace follows `@ Book`', '@ Book k'],
  ['@book{k, title = {A', '`{` is opened and not closed before the entry ends', '{A'],
  ['@book{k, title = "A', '`"` is opened and not closed before the entry ends', '"A'],
  ['@book{k, title = {A},', '`{` is opened and not closed before the entry ends', '{k, title = {A},'],
  ['@book(k, title = {A},', '`(` is opened and not closed before the entry ends', '(k, title = {A},'],
  [
    '@book(k, title = {A}\n@book{l}',
    '`(` is opened and not closed before the entry ends',
    '(k, title = {A}\n@book{l}',
  ],
  [
    '@book{k, title = {A\n year = {1882}\n',
    '`{` is opened and not closed before the entry ends',
    '{A\n year = {1882}\n',
  ],
  [
    '@book{k, title = {A\n year={1882}}',
    '`{` is opened and not closed before the entry ends',
    '{A\n year={1882}}',
  ],
  [
    '@book{k, title = "A\n year = 1882"',
    '`"` is opened and not closed before the entry ends',
    '"A\n year = 1882"',
  ],
  [
    '@book{k, title = {A: b = c}',
    '`{` is opened and not closed before the entry ends',
    '{k, title = {A: b = c}',
  ],
  ['@book{k, title = , year = 1882}', 'a field has no value here', ', year = 1882}'],
  ['@book{k, title = "A" # }', 'a field has no value here', '}'],
  ['@book{k, title =', 'a field has no value here', '='],
  ['@book{k, title {A}}', '`title` is no field with a value', 'title {A}}'],
  ['@book{k, = {A}}', '`=` is no field with a value', '= {A}}'],
  ['@book{k, title = {A}} Stitch}, year = {B}}', null, null],
  ['@book{k, title = {A}, "B" = {C}}', '`"B"` is no field with a value', '"B" = {C}}'],
  [
    `@book{k, ${'t'.repeat(50)} {A}}`,
    `\`${'t'.repeat(40)}\` is no field with a value`,
    `${'t'.repeat(50)} {A}}`,
  ],
  ['@book{k, title = {A}, (}', '`(` is no field with a value', '(}'],
])('%j', (text, message, rest) => {
  const [problem, ...others] = readBib(text).problems;
  expect(others).toEqual([]);
  expect(problem?.message ?? null).toBe(message);
  if (rest === null) return;
  expect(text.slice(problem?.span.start)).toBe(rest);
  expect(problem && problem.span.end - problem.span.start).toBeGreaterThanOrEqual(1);
});

test.each([
  ['@book{k, title = {A', 'Write the `}` that is missing, and import the file again.'],
  ['@book{k, title = "A', 'Write the `"` that is missing, and import the file again.'],
  ['@book(k,', 'Write the `)` that is missing, and import the file again.'],
])('%j is told what to write', (text, hint) => {
  expect(readBib(text).problems[0]?.hint).toBe(hint);
});

test('words that stand for each other twice over do not fill the memory', () => {
  const lines = ['@string{s0 = "', 'x'.repeat(1000), '"}'];
  for (let index = 1; index <= 30; index++)
    lines.push(`\n@string{s${index} = s${index - 1} # s${index - 1}}`);
  const {entries} = readBib(
    [...lines.slice(0, 6), '\n@book{k, title = s3}', ...lines.slice(6), '\n@book{l, title = s30}'].join(''),
  );
  const [few = 0, many = 0] = entries.map(({fields}) => fields[0]?.text.length ?? 0);
  expect(few).toBe(8000);
  expect(many).toBeLessThan(1_100_000);
});

test.each([
  ['2011', 'may', undefined, '2011-05'],
  ['{2011}', '{Sept.}', undefined, '2011-09'],
  ['2011', '5', '7', '2011-05-07'],
  ['2011', '05', ' 17 ', '2011-05-17'],
  ['2011', '17~mar', undefined, '2011-03-17'],
  ['2011', 'mar, 7', undefined, '2011-03-07'],
  ['2011', 'may/jun', undefined, '2011'],
  ['2011', '117', undefined, '2011'],
  ['2011', '', '7', '2011'],
  ['2011', undefined, undefined, '2011'],
  ['c2011', 'may', undefined, 'c2011'],
  ['20110', 'may', undefined, '20110'],
  [undefined, 'may', '7', undefined],
])('year %s, month %s, day %s are %s', (year, month, day, date) => {
  expect(yearAndMonth(year, month, day)).toBe(date);
});

test.each([
  [' {2011}-05\\ ', {raw: '2011-05'}],
  [' ', undefined],
  [undefined, undefined],
])('the date %j', (written, date) => {
  expect(bibDate(written)).toEqual(date);
});

describe('TeX', () => {
  const italic = (length: number) => `\\emph{a}${'x'.repeat(length - 8)}`;

  test.each([
    [20_000, true],
    [20_001, false],
  ])('of %i letters is read: %s', async (length, isRead) => {
    const text = texText(italic(length), await loadCitationParsers());
    expect(text).toBe(`${isRead ? '<i>a</i>' : 'a'}${'x'.repeat(length - 8)}`);
  });

  test.each([
    [49, '<i>a</i>'],
    [50, 'a'],
  ])('in %i braces is %s', async (depth, text) => {
    const tex = `${'{'.repeat(depth)}\\emph{a}${'}'.repeat(depth)}`;
    expect(texText(tex, await loadCitationParsers())).toBe(text);
  });

  test.each([
    ['a\\^{ }b\\~{}c', 'a^b~c'],
    ['\\frac {12} {34}', '12/34'],
    ['\\tfrac{}{4}', '/4'],
    ['\\"{\\i}x and \\\' \\j', '\u00efx and j\u0301'],
    ['{}', ''],
    ['costs 5 $ and 6 $ \\emph{x', 'costs 5 $ and 6 $ x'],
    ['\\unknown word', 'unknown word'],
    ['\\unknown {word}', 'word'],
  ])('%s', async (tex, text) => {
    expect(texText(tex, await loadCitationParsers())).toBe(text);
  });
});

describe('a file', () => {
  test('of two million letters is read, of two thousand references too', async () => {
    const messages = async (text: string) =>
      (await importText(text, 'csl-json')).problems.map(({message}) => message);
    expect(await messages(' '.repeat(2_000_000))).toEqual(['nothing stands in this file']);
    expect(await messages(' '.repeat(2_000_001))).toEqual([
      'this file has 2000001 characters; 2000000 are read at once',
    ]);
    expect(await messages(`[${Array(2000).fill('{"type": "book"}')}]`)).toEqual([]);
    expect(await messages(`[${Array(2001).fill('{"type": "book"}')}]`)).toEqual([
      'this file has 2001 references; 2000 are read at once',
    ]);
  });

  test.each([
    ['bib', ' ', 'nothing stands in this file'],
    ['ris', '\n', 'nothing stands in this file'],
    ['ris', '\uFEFF', 'nothing stands in this file'],
    ['csl-json', '[]', 'the list of references in this file is empty'],
    ['bib', '@string{a = "b"}', 'no entry stands in this file'],
  ] as const)('%s: %j', async (format, text, message) => {
    expect((await importText(text, format)).problems).toEqual([{message, line: 1}]);
  });
});
