import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {lookUpTable, tables} from '../../src/tables/index.ts';
import {nearlyQuantity} from '../knitting/arbitraries.ts';
import {sampleBinder} from '../support/sample-binder.ts';
import {showHtml} from '../support/show-html.ts';

const binder = sampleBinder({
  items: [
    {
      kind: 'swatch',
      requirement: 'S-07',
      pieces: ['name: back\ngauge: 22 sts and 30 rows over 10 cm\ncast on 98\nwork 6 cm\nbind off'],
      blocks: [
        {
          language: 'rows',
          text: 'multiple: 2\nRow 1 (RS): *K2tog, yo; rep from * to end.\nRow 2 (WS): Purl.',
        },
        {language: 'chart', text: 'X = colour chalk #f2ede0\n. = colour rust\n\n. X . .\nX . . X'},
      ],
      yarn: {'put-up': '120 m / 50 g'},
      measured: [
        {when: 'before blocking', stitches: ['20 over 10 cm', '20.5 over 10 cm'], rows: ['28 over 10 cm']},
        {when: 'after blocking', stitches: ['19.5 over 10 cm', '20 over 10 cm'], rows: ['27 over 10 cm']},
      ],
    },
  ],
});
const [item] = binder.items;
const arithmetic = tables.flatMap(({id, attributes}) => (attributes ? [{id, ...attributes}] : []));

function ask(table: string, attributes: Readonly<Record<string, string>>) {
  const result = item && lookUpTable(binder, item)(table, attributes);
  if (!result) throw new Error(`no table ${table}`);
  return result;
}

/** What a knitter might write for any attribute, right or wrong. */
const written = fc.oneof(
  fc.integer({min: 0, max: 120}).map(String),
  fc.constantFrom(
    '0',
    '99999',
    '100000',
    '-4 cm',
    '10 %',
    '48 cm',
    '20 in',
    '6 + 5',
    '6 - 5',
    'S-07',
    'S-70',
  ),
  fc.constantFrom('20 over 10 cm', '20, 20.5 and 21 over 10 cm', '1 over 9000 m', '9000 over 1 mm', '5/ in'),
  fc.constantFrom(
    'decreases',
    'markers',
    'raised increases',
    'buttonholes',
    'neckline',
    'raglan',
    'half',
    'whole',
    'k2, p2',
  ),
  fc.constantFrom(
    'round',
    'one',
    'right-side rows',
    '45 sts',
    '60 rows',
    '2 of 50 cm x 56 cm',
    '15 cm x 15 cm',
    '9 g',
  ),
  fc.constantFrom(
    '100 sts from 1.9 m',
    'oatmeal 60 %, rust 40 %',
    '200 m / 100 g',
    '92 (106, 120)',
    'width',
    'length',
  ),
  nearlyQuantity,
);

describe.each(arithmetic)('::$id', ({id, names, example}) => {
  test('whatever is written, it gives a table or problems, never both, no number is missing, and every problem says what to do', () => {
    const attributes = fc
      .array(fc.tuple(fc.constantFrom(...names), written), {maxLength: names.length})
      .map((pairs) => Object.fromEntries(pairs));
    fc.assert(
      fc.property(attributes, (given) => {
        const {content, problems} = ask(id, given);
        expect(content.length).toBe(problems.length === 0 ? 1 : 0);
        expect(showHtml(content)).not.toMatch(/NaN|Infinity|undefined|null/);
        for (const {message, hint} of problems) {
          expect(message).not.toMatch(/NaN|undefined|invalid/);
          expect(hint).toMatch(/^[A-Z].*\.$/s);
        }
      }),
      {numRuns: 150},
    );
  });

  test('the example of its hints can be computed', () => {
    const [, inside = ''] = /\{(.*)\}/.exec(example) ?? [];
    const pairs = [...inside.matchAll(/([\w-]+)=(?:"([^"]*)"|(\S+))/g)];
    const given = Object.fromEntries(
      pairs.map(([, name = '', quoted, bare]) => [name, quoted ?? bare ?? '']),
    );
    expect(ask(id, given).problems).toEqual([]);
  });

  test('an attribute it does not know is named', () => {
    expect(ask(id, {colour: 'red'}).problems[0]?.message).toBe(`\`::${id}\` knows no \`colour\``);
  });
});
