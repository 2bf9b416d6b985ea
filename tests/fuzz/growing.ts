import {formatText} from '../../src/diagnostics/format-text.ts';
import {readChart} from '../../src/knitting/chart/read-chart.ts';
import {parseNeedleSize} from '../../src/knitting/needle-size.ts';
import {readPiece} from '../../src/knitting/pieces/read-piece.ts';
import {parseGaugeCount, parseLength, parsePutUp} from '../../src/knitting/quantity.ts';
import {nameSlips} from '../../src/knitting/rows/name-slips.ts';
import {proveRows} from '../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';
import {splitFrontMatter} from '../../src/markdown/front-matter.ts';
import {readClippings} from '../../src/model/clippings.ts';
import {parseFile} from '../../src/pipeline.ts';
import {parseCitations} from '../../src/references/citation.ts';
import {chooseNew} from '../../src/references/import/choose-new.ts';
import type {ImportFormat} from '../../src/references/import/csl-record.ts';
import {readReferences} from '../../src/references/import/read-references.ts';
import {readOwnStyle} from '../../src/references/own-style.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';
import {composeText} from '../markdown/compose-text.ts';
import {askTable, binderWith} from './binder-with.ts';

/** A text that grows, and what reads it. */
export interface Growing {
  readonly name: string;
  /** A text of so many parts. */
  text(parts: number): string;
  /** Parts of the longest text that is read; twice as many are never asked for. */
  readonly most: number;
  run(text: string): unknown;
}

const repeated = (part: string) => (parts: number) => part.repeat(parts);
const numbered = (part: (number: number) => string) => (parts: number) =>
  Array.from({length: parts}, (_, index) => part(index)).join('');
/** As many parts as fit into so many characters. */
const within = (characters: number, part: string) => Math.floor(characters / part.length);

function growing(
  name: string,
  part: string | ((number: number) => string),
  most: number,
  run: Growing['run'],
): Growing {
  return {name, text: typeof part === 'string' ? repeated(part) : numbered(part), most, run};
}

const yaml = (name: string, part: string | ((number: number) => string), around = ['', '']): Growing => {
  const [before = '', after = ''] = around;
  const length = typeof part === 'string' ? part.length : part(10_000).length;
  return growing(`YAML, ${name}`, part, Math.floor(250_000 / length), (text) =>
    readYaml(`${before}${text}${after}`),
  );
};

/** Paragraphs, lists and lines of an item; a block may have 50,000 characters and 2,000 lines, a file 10,000 lines. */
const item = (name: string, part: string | ((number: number) => string), most: number): Growing =>
  growing(`item, ${name}`, part, most, (text) => composeText(text));

const binder = (
  name: string,
  file: string,
  before: string,
  part: (number: number) => string,
  most: number,
): Growing => growing(`binder, ${name}`, part, most, (text) => binderWith(file, `${before}${text}`));

const rows = (
  name: string,
  part: string | ((number: number) => string),
  most: number,
  before = '',
): Growing =>
  growing(`rows, ${name}`, part, most, (text) => {
    const {pattern} = readRows(`${before}${text}`);
    return nameSlips(pattern, proveRows(pattern).problems);
  });

const chart = (name: string, before: string, part: string, most: number, after = ''): Growing =>
  growing(`chart, ${name}`, part, most, (text) => readChart(`${before}${text}${after}`));

const quantity = (name: string, before: string, part: string, after = ''): Growing =>
  growing(`quantity, ${name}`, part, within(250_000, part), (text) => {
    for (const parse of [parseLength, parseGaugeCount, parsePutUp, parseNeedleSize])
      parse(`${before}${text}${after}`);
  });

const citation = (name: string, before: string, part: string, after = ''): Growing =>
  growing(`citations, ${name}`, part, within(250_000, part), (text) =>
    parseCitations(`${before}${text}${after}`),
  );

const clipping = (name: string, before: string, part: string, after = ''): Growing =>
  growing(`clippings, ${name}`, part, within(250_000, part), (text) =>
    readClippings(`${before}${text}${after}`),
  );

const style = (name: string, before: string, part: string, after = ''): Growing =>
  growing(`style, ${name}`, part, within(390_000, part), (text) => readOwnStyle(`${before}${text}${after}`));

const attributes = (name: string, before: string, part: string, after: string): Growing =>
  growing(`attributes, ${name}`, part, within(18_000, part), (text) => askTable(`${before}${text}${after}`));

const imported = (
  format: ImportFormat,
  name: string,
  part: string | ((number: number) => string),
  most: number,
  around = ['', ''],
): Growing =>
  growing(`${format}, ${name}`, part, most, async (text) => {
    const [before = '', after = ''] = around;
    chooseNew((await readReferences(`${before}${text}${after}`, format)).entries, []);
  });

const csl = '<style xmlns="http://purl.org/net/xbiblio/csl">';

export const growths: readonly Growing[] = [
  yaml('fields', (number) => `field${number}: some words\n`),
  yaml('one field again and again', 'a: 1\n'),
  yaml('a list of groups', '- {a: 1, b: [2, 3]}\n'),
  yaml('faults', 'a: b: c\n'),
  yaml('aliases', '- *x\n'),
  yaml('anchors', '- &x y\n'),
  yaml('tags', '- !t y\n'),
  yaml('an open quotation', 'word ', ['a: "', '']),
  yaml('an open bracket', 'a, ', ['a: [', '']),
  yaml('brackets in each other', '['),
  yaml('indentation', (number) => `${' '.repeat(number % 40)}a:\n`),
  yaml('comments', '# word\n'),
  yaml('blanks', ' ', ['a: b', '#c']),
  yaml('escapes', '\\u0041', ['a: "', '"']),
  growing('front matter, fields', 'a: b\n', 950, (text) => splitFrontMatter(`---\n${text}---\nText`)),
  growing('front matter, blank lines', '\n', 1900, (text) => splitFrontMatter(`---\n${text}---\nText`)),
  growing('front matter that does not end', 'word: word\n', 20_000, (text) =>
    splitFrontMatter(`---\n${text}`),
  ),
  item('paragraphs', 'A few words of a paragraph.\n\n', 4_900),
  item('one paragraph', 'word word word word word word word word\n', 1_200),
  item('citations', 'Words [@ashdown2011, p. 57].\n\n', 4_900),
  item('citations in one paragraph', 'Words [@ashdown2011, p. 57].\n', 450),
  item('links that lead nowhere', '[a](b/c)\n\n', 4_900),
  item('headings', '## A heading\n\n', 4_900),
  item('a list', '- word word\n', 1_900),
  item('lists in lists', '- a\n  - b\n    - c\n\n', 2_400),
  item('quotations', '> “Words that stand so” [@ashdown2011, p. 57]\n\n', 4_900),
  item('footnotes', (number) => `a[^${number}]\n\n[^${number}]: b\n\n`, 2_000),
  item('definitions', (number) => `[a${number}]: https://a.example\n\n[a${number}]\n\n`, 2_000),
  item('backticks', '` a `` b\n\n', 4_900),
  item('stars', '*a **b\n\n', 4_900),
  item('HTML', '<b>a</b>\n\n', 4_900),
  item('tables', '|a|b|\n|-|-|\n|c|d|\n\n', 2_400),
  item('a table', '|a|b|c|\n', 1_900),
  item('blocks of rows', '~~~rows\nRow 1: K1.\n~~~\n\n', 2_400),
  item('a fence', 'word\n', 9_900),
  item('directives', '::gauge{of=S-07}\n\n', 4_900),
  item('pictures', '![words](a.jpg)\n\n', 4_900),
  item('fractions and dashes', '1/2 in - 3 x 4 -- "a" ...\n\n', 4_900),
  item('blanks', ' '.repeat(500), 35),
  growing('item, unknown directives', '::gauje\n\n', 4_900, (text) => parseFile({path: 'a.md', text})),
  binder(
    'dead links of an item',
    'content/swatches/s-01.md',
    '---\nrequirement: S-01\n---\n',
    () => '[a](b/c)\n\n',
    4_900,
  ),
  binder(
    'unknown sources of an item',
    'content/swatches/s-01.md',
    '---\nrequirement: S-01\nstatus: finished\n---\n',
    (number) => `a [@b${number}].\n\n`,
    4_900,
  ),
  binder(
    'techniques of an item',
    'content/swatches/s-01.md',
    '---\nrequirement: S-01\ntechniques:\n',
    (number) => `  - {name: t${number}, cite: "@ashdown2011, p. ${number + 1}"}\n`,
    1_000,
  ),
  binder(
    'faulty fields of an item',
    'content/swatches/s-01.md',
    '---\nrequirement: S-01\nmeasured:\n',
    (number) => `  - {when: ${number}, x: 1}\n`,
    1_900,
  ),
  binder(
    'sources',
    'content/library.yaml',
    '',
    (number) =>
      `- {id: a${number}, type: book, title: Title ${number * 7919}, author: [{family: F${number}}], issued: 2011}\n`,
    1_400,
  ),
  binder(
    'faulty sources',
    'content/library.yaml',
    '',
    (number) => `- {id: a${number}, type: bok, titel: T}\n`,
    3_000,
  ),
  binder(
    'one source again and again',
    'content/library.yaml',
    '',
    () => '- {id: a, type: book, title: T}\n',
    4_000,
  ),
  binder(
    'requirements',
    'content/syllabus.yaml',
    'title: T\nsections:\n  - title: S\n    requirements:\n',
    (number) => `      - {id: S-${number}, kind: swatch, title: T}\n`,
    5_000,
  ),
  binder(
    'leaves',
    'content/print-ledger.yaml',
    'leaves:\n',
    (number) => `  - {leaf: S-01 · ${number} of 3, done: printed, on: 2026-01-02}\n`,
    4_000,
  ),
  binder(
    'faulty leaves',
    'content/print-ledger.yaml',
    'leaves:\n',
    () => '  - {leaf: S-01 · 1 of 3, done: prnted, on: 2026-1-2}\n',
    4_000,
  ),
  binder(
    'answers',
    'content/assessments/round-0.yaml',
    'round: 0\nreceived: 2026-01-02\nresults:\n',
    (number) => `  X-${number}: {result: passed}\n`,
    8_000,
  ),
  binder(
    'items of a round',
    'content/rounds/0/sent.yaml',
    'round: 0\nsent: 2026-01-02\nitems:\n',
    (number) => `  X-${number}: a.md\n`,
    12_000,
  ),
  binder(
    'blanks of a title',
    'content/syllabus.yaml',
    'sections: []\ntitle: "a',
    () => ' '.repeat(100),
    2_400,
  ),
  growing('findings in words', '[a](b/c)\n\n', 5_000, (text) =>
    formatText(
      Array.from({length: text.length / 10}, (_, index) => ({
        rule: 'dead-link',
        severity: 'warning',
        file: 'a.md',
        place: {line: 2 * index + 1, column: 1, endLine: 2 * index + 1, endColumn: 9},
        message: 'a',
        hint: 'b',
      })),
      () => text,
    ),
  ),
  growing('clippings', (number) => `- 2026-03-14 S-07 [@a${number}, p. 1] words\n`, 6_000, readClippings),
  clipping('words that go on', '- 2026-03-14 S-07 a\n', '  more words\n'),
  clipping('open brackets', '- 2026-03-14 S-07 ', '['),
  clipping('signs of a citation', '- 2026-03-14 S-07 [', '@'),
  clipping('blanks', '- 2026-03-14 S-07', ' ', 'x'),
  clipping('ids', '- 2026-03-14 S-07', ', S-07', ' x'),
  rows('rows', (number) => `Row ${number + 1}: K10.\n`, 4_000, 'cast on: 10\n'),
  rows('rows that fail', (number) => `Row ${number + 1}: K11.\n`, 2_000, 'cast on: 10\n'),
  rows('rows in words that nobody knows', (number) => `Row ${number + 1}: frobnicate the wool.\n`, 2_000),
  rows('one long row', 'k1, ', 20_000, 'Row 1: '),
  rows('a row of repeats', '*k1, yo; rep from * twice, ', 4_000, 'Row 1: '),
  rows('open brackets', '(', 20_000, 'Row 1: '),
  rows('groups', '(k1, yo, k1) in next st, ', 4_000, 'Row 1: '),
  rows('labels without rows', (number) => `Row ${number + 1}:\n`, 4_000),
  rows('repeats of rows', 'Rep rows 1-2 twice.\n', 2_000, 'cast on: 10\nRow 1: K.\nRow 2: P.\n'),
  rows('no rows at all', 'words ', 20_000),
  rows('abbreviations of its own', (number) => `X${number}: uses 1, makes 1, "a"\n`, 1_500),
  rows('sizes', '4 (', 20_000, 'cast on: '),
  chart('rows', '. = k\n/ = p\n\n', '. / . / . / . /\n', 4_000),
  chart('wide rows', '. = k\n\n', '. ', 20_000),
  chart('unknown signs', '. = k\n\n', 'q ', 20_000),
  chart('signs of the key', '', 'x = k2tog (RS), p2tog (WS)\n', 4_000, '\nx'),
  chart('colours', '. = colour chalk #f2ede0\nX = colour rust\n\n', '. X . X . X . X\n', 4_000),
  growing('piece, steps', 'work 2 rows\n', 280, (text) => readPiece(`cast on 9\n${text}`)),
  growing('piece, a long line', 'work ', 40_000, readPiece),
  quantity('digits', '', '1'),
  quantity('blanks', '1', ' ', 'cm'),
  quantity('blanks that lead nowhere', '20', ' ', 'x'),
  quantity('words', '4 ', 'cm '),
  quantity('slashes', '4', '/1'),
  quantity('brackets', '4 mm', ' ('),
  citation('many', '', '@a, p. 5; '),
  citation('a key', '@a', '.b'),
  citation('pages', '@a, pp. 1', ', 1'),
  citation('blanks', '@a', ' ', 'x'),
  citation('dashes', '@a, p. 1', '-'),
  citation('letters', '@a, ', 'x'),
  citation('signs', '', '@'),
  citation('brackets', '@a [', ']'),
  citation('words', '@a, p. 5', ' word'),
  style('comments', '', '<!-- a -->', `${csl}</style>`),
  style('comments and no style', '', '<!-- a -->'),
  style('open comments', csl, '<!--', '</style>'),
  style('open citations', csl, '<citation>', '</style>'),
  style('blanks', '', ' ', 'x'),
  attributes('names', '::cast-on{', 'a=b ', '}'),
  attributes('blanks of a value', '::cast-on{gauge="20', ' ', 'x"}'),
  attributes('blanks behind a slash', '::cast-on{gauge="20 /', ' ', '1"}'),
  attributes('counts', '::cast-on{width="48 cm" gauge="', '20, ', '20 over 10 cm"}'),
  imported(
    'bib',
    'entries',
    (number) => `@book{a${number}, title={T ${number}}, author={A, B and C, D}}\n`,
    900,
  ),
  imported('bib', 'a title', 'word {Word} ', 15_000, ['@book{a, title={', '}}']),
  imported('bib', 'open braces', '{', 1_000_000, ['@book{a, title={', '']),
  imported('bib', 'strings', (number) => `@string{a${number} = "b"}\n`, 20_000),
  imported('bib', 'fields', (number) => `a${number} = {b}, `, 10_000, ['@book{a, ', '}']),
  imported('ris', 'records', (number) => `TY  - BOOK\nTI  - T ${number}\nAU  - A, B\nER  - \n`, 900),
  imported('ris', 'authors', 'AU  - A, B\n', 20_000, ['TY  - BOOK\n', 'ER  - \n']),
  imported('ris', 'lines that go on', ' more words\n', 50_000, ['TY  - BOOK\nTI  - a\n', 'ER  - \n']),
  imported(
    'csl-json',
    'entries',
    (number) => `{"id":"a${number}","type":"book","title":"T ${number}"},`,
    900,
    ['[', '{}]'],
  ),
  imported('csl-json', 'brackets', '[', 1_000_000),
  imported('csl-json', 'a title', 'word <i>word</i> ', 15_000, ['[{"title":"', '"}]']),
];
