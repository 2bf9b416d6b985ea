import type {Generator} from './generator.ts';

export interface Material {
  /** What is broken, one of them at a time; parts of the others are set into it. */
  readonly texts: readonly string[];
  /** Words and marks that mean something to the parser. */
  readonly pieces: readonly string[];
}

/** No input is longer; what length alone does is measured in `scaling.test.ts`. */
const longest = 6000;

/** A real text with up to eight things done to it that slips, editors, other programs and ill will do to texts. */
export function mutated({texts, pieces}: Material, by: Generator): string {
  let text = excerpt(by.pick(texts) ?? '', by);
  for (let left = 1 + by.whole(8); left > 0; left--) {
    text = (by.pick(operations) ?? same)({text, pieces, other: by.pick(texts) ?? '', by}).slice(0, longest);
  }
  return text;
}

interface Work {
  readonly text: string;
  readonly other: string;
  readonly pieces: readonly string[];
  readonly by: Generator;
}

type Operation = (work: Work) => string;

const same: Operation = ({text}) => text;

/** Most texts whole, long ones often only a run of their lines. */
function excerpt(text: string, by: Generator): string {
  if (text.length <= 1500 || (text.length < longest && by.whole(4) === 0)) return text;
  const lines = text.split('\n');
  const start = by.whole(3) === 0 ? by.whole(lines.length) : 0;
  return lines.slice(start, start + 5 + by.whole(60)).join('\n');
}

const onTokens =
  (change: (tokens: string[], work: Work) => void): Operation =>
  (work) => {
    const tokens = work.text.match(/[\p{L}_]+|\d+|\r?\n|[ \t]+|[^\s]|\s/gu) ?? [];
    change(tokens, work);
    return tokens.join('');
  };

const onLines =
  (change: (lines: string[], work: Work) => void): Operation =>
  (work) => {
    const lines = work.text.split('\n');
    change(lines, work);
    return lines.join('\n');
  };

const few = (by: Generator) => 1 + by.whole(by.pick([2, 2, 6, 30]));

function swap(list: string[], by: Generator): void {
  const [a, b] = [by.whole(list.length), by.whole(list.length)];
  [list[a], list[b]] = [list[b] ?? '', list[a] ?? ''];
}

const operations: readonly Operation[] = [
  onTokens((tokens, {by}) => tokens.splice(by.whole(tokens.length), few(by))),
  onTokens((tokens, {by}) => {
    const start = by.whole(tokens.length);
    const run = tokens.slice(start, start + few(by));
    for (let copies = by.pick([1, 1, 2, 20]); copies > 0; copies--) tokens.splice(start, 0, ...run);
  }),
  onTokens((tokens, {by}) => swap(tokens, by)),
  onTokens((tokens, {by, other}) => {
    const from = by.whole(other.length);
    tokens.splice(by.whole(tokens.length + 1), by.whole(3), other.slice(from, from + by.whole(120)));
  }),
  onTokens((tokens, {by, pieces}) => {
    tokens.splice(by.whole(tokens.length + 1), by.whole(2), by.pick(pieces) ?? ' ');
  }),
  onTokens((tokens, {by, pieces}) => {
    for (let left = few(by); left > 0; left--)
      tokens.splice(by.whole(tokens.length + 1), 0, by.pick(pieces) ?? '');
  }),
  onTokens((tokens, {by}) => {
    tokens.splice(by.whole(tokens.length + 1), by.whole(2), by.pick(oddities));
  }),
  onTokens((tokens, {by}) => {
    const numbers = tokens.flatMap((token, index) => (/^\d/.test(token) ? [index] : []));
    tokens.splice(by.pick(numbers) ?? by.whole(tokens.length), 1, by.pick(numberLike));
  }),
  onTokens((tokens, {by}) => {
    const mark = by.pick(marks);
    tokens.splice(by.whole(tokens.length + 1), 0, mark.repeat(by.pick([1, 2, 3, 40, 400])));
  }),
  onLines((lines, {by}) => lines.splice(by.whole(lines.length), few(by))),
  onLines((lines, {by}) => swap(lines, by)),
  onLines((lines, {by}) => lines.splice(by.whole(lines.length), 0, lines[by.whole(lines.length)] ?? '')),
  onLines((lines, {by, other}) => {
    const others = other.split('\n');
    const start = by.whole(others.length);
    lines.splice(by.whole(lines.length + 1), by.whole(3), ...others.slice(start, start + few(by)));
  }),
  onLines((lines, {by}) => {
    const at = by.whole(lines.length);
    lines[at] = by.pick([' ', '  ', '\t', '> ', '- ', '    ', '1. ', '| ']) + (lines[at] ?? '');
  }),
  ({text, by}) => text.slice(0, by.whole(text.length + 1)),
  ({text, by}) => text.slice(by.whole(text.length + 1)),
  ({text, by}) => text.replaceAll('\n', by.pick(['\r\n', '\r\n', '\r', '\n\n', '\u2028', ' '])),
  ({text, by}) => text.replace('\n', by.pick(['\r\n', '\r', '\r\r\n', '\u0085', ''])),
  ({text}) => `\uFEFF${text}`,
  ({text, by}) => (by.whole(2) === 0 ? text.toUpperCase() : text.toLowerCase()),
  ({text, by}) => text.normalize(by.pick(['NFD', 'NFKD'])),
];

/** Control characters, marks that turn or hide text, letters of two units, halves of them, things that only look like others. */
const oddities = [
  '\u0000',
  '\u0007',
  '\u001b[31m',
  '\u007f',
  '\u0085',
  '\u00a0',
  '\u00ad',
  '\u200b',
  '\u200d',
  '\u200e',
  '\u202e',
  '\u202f',
  '\u2028',
  '\u2029',
  '\u2066',
  '\u2069',
  '\ufeff',
  '\ufffe',
  '\ud800',
  '\udc00',
  '\u{1f9f6}',
  '\u{e0041}',
  'e\u0301\u0301',
  'ß',
  'ﬁ',
  'İ',
  'ı',
  'Ǆ',
  '\u0661\u0662',
  '½',
  '⅓',
  '²',
  '−',
  '–',
  '“',
  '’',
  '…',
  '×',
  '／',
  '：',
  'שלום',
  '手',
  '\t',
  '\v',
  '\f',
] as const;

const numberLike = [
  '0',
  '-1',
  '1',
  '2',
  '3',
  '7',
  '12',
  '00',
  '99',
  '100',
  '1000',
  '99999',
  '100000',
  '2147483648',
  '9007199254740993',
  '9'.repeat(40),
  '9'.repeat(400),
  '1e9',
  '1e999',
  '0x10',
  '1_000',
  '1,000',
  '0.1',
  '.5',
  '5.',
  '1/0',
  '1/3',
  '22/7',
  '½',
  'NaN',
  'Infinity',
  '2026-02-30',
  '0000-00-00',
] as const;

const marks = [
  ...'()[]{}<>*_`~\'"|:;,.-+=#@!&%$^?/\\',
  '\n',
  ' ',
  '\t',
  '---\n',
  '~~~\n',
  '- ',
  '> ',
  '{{',
  ': ',
] as unknown as readonly [string, ...string[]];
