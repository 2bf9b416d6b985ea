import {readFileSync} from 'node:fs';
import {expect, it} from 'vitest';
import {showForm} from '../../../src/knitting/rows/linear-form.ts';
import {proveForEveryMultiple} from '../../../src/knitting/rows/prove-for-every-multiple.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';

const leaf = `Row 1: P5, *yo, k1, yo, p5; rep from * to end.
Row 2: K5, *p3, k5; rep from * to end.
Row 3: P5, *s2kp, p5; rep from * to end.`;
const edging = `Row 1: Slip 1, * narrow, knit 4, over, knit 1, over, knit 4, narrow, repeat from * to end of needle, and knit the edge stitch plain.
Row 2: All purl.
Row 3: Slip 1 *, over, narrow, repeat from * to end of needle.`;

interface Law {
  readonly multiple: string | null;
  readonly isFound: boolean;
  readonly holds: string | null;
  readonly fails: string | null;
}

/** Worked out by hand: the multiple, for which n it holds, and the first n (with its row) for which it does not. */
const cases: readonly (readonly [string, string, Law])[] = [
  [
    'a lace with a count that varies',
    `multiple: 6 + 5\n${leaf}`,
    {multiple: '6 + 5', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  ['the same, its multiple found', leaf, {multiple: '6 + 5', isFound: true, holds: 'n ≥ 1', fails: null}],
  // Published about 1886 as “any number divisible by 13, and 2 for the edge”; 13 n + 2 must be odd.
  [
    'an edging that needs an odd n',
    `multiple: 13 + 2\n${edging}`,
    {multiple: '13 + 2', isFound: false, holds: 'n = 2 t + 1, n ≥ 1', fails: 'n = 2 (28 stitches): Row 3'},
  ],
  ['the same, its multiple found', edging, {multiple: '26 + 15', isFound: true, holds: 'n ≥ 0', fails: null}],
  [
    'two repeats that share no multiple',
    'multiple: 4 + 0\nRow 1: *K4; rep from *.\nRow 2: *P6; rep from *.',
    {multiple: '4 + 0', isFound: false, holds: 'n = 3 t + 0, n ≥ 3', fails: 'n = 1 (4 stitches): Row 2'},
  ],
  [
    'repeats that never agree',
    'multiple: 4 + 1\nRow 1: *K4; rep from * to last st, k1.\nRow 2: *P2; rep from *.',
    {multiple: '4 + 1', isFound: false, holds: null, fails: 'n = 1 (5 stitches): Row 2'},
  ],
  [
    'a row for one count only',
    'multiple: 4 + 1\nRow 1: K9.',
    {multiple: '4 + 1', isFound: false, holds: null, fails: 'n = 1 (5 stitches): Row 1'},
  ],
  [
    'a count that halves',
    'multiple: 2 + 2\nRow 1: K1, *k2tog; rep from * to last st, k1.\nRow 2: K1, *m1, k1; rep from * to last st, k1.',
    {multiple: '2 + 2', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  [
    'a count that grows past its edge',
    'multiple: 2 + 0\nRow 1: K to last 11 sts, k2tog, k9.',
    {multiple: '2 + 0', isFound: false, holds: 'n ≥ 6', fails: null},
  ],
  [
    'any number',
    'Row 1: Knit.\nRow 2: Purl.',
    {multiple: '1 + 0', isFound: true, holds: 'n ≥ 1', fails: null},
  ],
  [
    'a repeat as often as it goes, and the rest',
    'multiple: 4 + 2\nRow 1: *K2, p2; rep from *, k to end.\nRow 2: P to end.',
    {multiple: '4 + 2', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  [
    'a repeat that goes another number of times for each n, and keeps its count',
    'multiple: 6 + 0\nRow 1: *K2, p2; rep from *, k to end.',
    {multiple: '6 + 0', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  [
    'a repeat whose count for every n cannot be told',
    'multiple: 6 + 0\nRow 1: *K2, k2tog; rep from *, k to end.',
    {multiple: '6 + 0', isFound: false, holds: null, fails: null},
  ],
  [
    'a passage with markers in it, of which how often it goes for every n cannot be told',
    'multiple: 4 + 0\nRow 1: *K4, pm; rep from * to end.',
    {multiple: '4 + 0', isFound: false, holds: null, fails: null},
  ],
  // Yarn forward before a purl makes no stitch unless the rows need it: here every fifth n would do without.
  [
    'the reading that holds for the most n',
    'multiple: 4 + 0\nRow 1: *K1, yf, p1, k2; rep from *.\nRow 2: *P5; rep from *.',
    {multiple: '4 + 0', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  [
    'the reading that holds for any n at all',
    'multiple: 4 + 1\nRow 1: *K1, yf, p1, k2; rep from *, k1.\nRow 2: *P5; rep from *, k1.\nRow 3: *K5, p5; rep from *, k1.',
    {multiple: '4 + 1', isFound: false, holds: 'n = 2 t + 0, n ≥ 2', fails: 'n = 1 (5 stitches): Row 3'},
  ],
  [
    'a bind-off whose loop is counted',
    'multiple: 4 + 3\nRow 1: BO 3, k to end.\nRow 2: *P4; rep from *.',
    {multiple: '4 + 3', isFound: false, holds: 'n ≥ 1', fails: null},
  ],
  [
    'a cut repeat',
    'Row 1: *K3, p8; rep from * to last 9 sts, k9.',
    {multiple: '11 + 9', isFound: true, holds: 'n ≥ 1', fails: null},
  ],
];

it.each(cases)('%s', (_, block, expected) => {
  const {multiple, isFound, holds, firstFailure} = proveForEveryMultiple(readRows(block).pattern);
  const every = holds && holds.every > 1 ? `n = ${holds.every} t + ${holds.rest}, ` : '';
  expect({
    multiple: multiple && `${multiple.of} + ${multiple.plus}`,
    isFound,
    holds: holds && `${every}n ≥ ${holds.from}`,
    fails:
      firstFailure &&
      `n = ${firstFailure.n} (${firstFailure.stitches} stitches): ${/Row \d+/.exec(firstFailure.problem.message)}`,
  }).toEqual(expected);
});

it('gives the count of every row as a law', () => {
  const {rows} = proveForEveryMultiple(readRows(`multiple: 6 + 5\n${leaf}`).pattern);
  expect(rows.map(({label, in: before, out}) => [label, showForm(before), showForm(out)])).toEqual([
    ['Row 1', '6 · n + 5', '8 · n + 5'],
    ['Row 2', '8 · n + 5', '8 · n + 5'],
    ['Row 3', '8 · n + 5', '6 · n + 5'],
  ]);
});

// The law is solved, the single counts are worked: on every published pattern with a multiple they must agree.
interface Published {
  readonly id: string;
  readonly multiple: number | null;
  readonly edge: number | string | null;
  readonly rows: readonly {
    readonly row: number | string;
    readonly text: string;
    readonly lead: string;
    readonly repeat: string;
    readonly tail: string;
  }[];
}
// The shape is that of the file itself.
const {patterns} = JSON.parse(
  readFileSync(new URL('../../published/data/stitch-patterns.json', import.meta.url), 'utf8'),
) as {readonly patterns: readonly Published[]};
const withMultiple = patterns.filter(({multiple, edge}) => multiple !== null && typeof edge === 'number');

it.each(withMultiple.map((pattern) => [pattern.id, pattern] as const))(
  '%s: the law agrees with the counts of n = 1 to 12',
  (_, pattern) => {
    const rows = pattern.rows.map(({text, lead, repeat, tail}, index) => {
      const isPlain = repeat === '' && tail === '';
      const whole = lead.includes(',') ? text : lead.replace(/^([kp])\d+$/, '$1');
      const parts = [lead, repeat && `*${repeat}; rep from *`, tail].filter((part) => part !== '');
      const steps = isPlain ? whole : parts.join(', ');
      return `Row ${index + 1}: ${steps}`;
    });
    const header = `multiple: ${pattern.multiple} + ${pattern.edge}`;
    const read = readRows([header, ...rows].join('\n')).pattern;
    const {holds} = proveForEveryMultiple(read);
    for (let n = 1; n <= 12; n++) {
      const stitches = n * (pattern.multiple ?? 0) + Number(pattern.edge);
      const single = readRows([`stitches: ${stitches}`, ...rows].join('\n')).pattern;
      const isSound = proveRows(single).problems.length === 0;
      const isPromised = holds !== null && n >= holds.from && n % holds.every === holds.rest;
      expect([n, isPromised]).toEqual([n, isSound]);
    }
  },
);
