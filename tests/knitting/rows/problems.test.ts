import {expect, it} from 'vitest';
import {prove} from './prove.ts';

const lace = `multiple: 6 + 5
cast on: 17
Row 1 (RS): P5, *yo, k1, yo, p5; rep from * to end.
Row 2 (WS): K5, *p3, k5; rep from * to end.
Row 3 (RS): P5, *s2kp, p5; rep from * to end.
Row 4 (WS): K5, *p1, k5; rep from * to end.`;

/** What is wrong, the block, and for each finding what it says and the text that it points at. */
const cases: readonly (readonly [string, string, readonly (readonly [RegExp, string])[]])[] = [
  ['nothing', lace, []],
  ['a misspelt stitch', lace.replace('s2kp', 's2kpp'), [[/`s2kpp` is not a stitch.*/, 's2kpp']]],
  ['a misspelt word', lace.replace('P5, *yo', 'Prul, *yo'), [[/`Prul`/, 'Prul']]],
  [
    'a stitch too many in a repeat',
    lace.replace('*p3, k5', '*p4, k5'),
    [[/^7 stitches are left over inside the repeat of `Row 2`: 16 stitches for repeats of 9$/, 'p4, k5']],
  ],
  [
    'a stitch too few at the end',
    'stitches: 10\nRow 1: K4, p5.\nRow 2: K10.',
    [[/^`Row 1` uses 9 stitches and 1 stitch is left over$/, 'p5']],
  ],
  [
    'a stitch too many at the end',
    'stitches: 10\nRow 1: K4, p7.',
    [[/^`Row 1` is 1 stitch short: 7 stitches are needed here and 6 are left$/, 'p7']],
  ],
  [
    'a stated count that is not so',
    'stitches: 10\nRow 1: K1, yo, k to end. 12 sts.\nRow 2: P11.',
    [[/^`Row 1` makes 11 stitches, 1 stitch short of the `12` it states$/, '12 sts']],
  ],
  [
    'a size that does not come out',
    'cast on: 12 (16, 21)\nRow 1: *K2, p2; rep from * to end.',
    [[/^in size `21 stitches`, 1 stitch is left over inside the repeat of `Row 1`: 21 stitches/, 'K2, p2']],
  ],
  [
    'a list of sizes of the wrong length',
    'cast on: 12 (16, 20)\nRow 1: K2 (4), k to end.',
    [[/^`2 \(4\)` gives 2 sizes where the pattern has 3$/, '2 (4)']],
  ],
  [
    'sides that do not alternate',
    'stitches: 4\nRow 1 (RS): K4.\nRow 2 (RS): P4.\nRow 3 (RS): K4.',
    [
      [/^`Row 2 \(RS\)` is worked on the WS, not the RS$/, 'RS'],
      [/`Row 3 \(RS\)` is worked on the WS/, 'RS'],
    ],
  ],
  [
    'a wrong-side row in the round',
    'stitches: 4\nRnd 1: K4.\nRnd 2 (WS): P4.',
    [[/^`Rnd 2 \(WS\)` is worked on the RS, not the WS$/, 'WS']],
  ],
  [
    'a missing row',
    'stitches: 4\nRow 1: K4.\nRow 2: P4.\nRow 4: P4.',
    [[/^`Row 4` follows row 2: row 3 is not written$/, 'Row 4']],
  ],
  [
    'a vertical repeat that does not return to its count',
    'stitches: 9\nRow 1: K1, *yo, k2tog; rep from * to end.\nRow 2: K1, yo, k to end.\nRep rows 1 and 2 for pattern.',
    [
      [
        /^`Row 1` first finds 9 stitches and, after the rows to be repeated, 10$/,
        'Rep rows 1 and 2 for pattern',
      ],
    ],
  ],
  [
    'rows repeated that do not fill their label',
    'stitches: 4\nRow 1: K4.\nRow 2: P4.\nRows 3–7: Rep rows 1 and 2.',
    [[/^`Rows 3–7` is 5 rows, which repeats of 2 rows do not fill$/, 'Rows 3–7']],
  ],
  [
    'more bound off than there is',
    'stitches: 8\nRow 1: Bind off 9 sts.',
    [[/^`Row 1` is \d stitch(es)? short/, 'Bind off 9 sts']],
  ],
  [
    'a marker that is not there',
    'stitches: 8\nRow 1: K4, pm, k4.\nRow 2: P3, sm, p5.',
    [[/^`Row 2` has no marker at this place; the next lies 1 stitch further on$/, 'sm']],
  ],
  [
    'an increase row that keeps its count',
    'stitches: 8\nRow 1 (inc row): K8.',
    [[/^`Row 1` is called an increase row and keeps its count$/, 'Row 1 (inc row)']],
  ],
  [
    'increases that do not pair',
    'stitches: 8\nRow 1 (paired inc): K1, M1R, k6, M1R, k1.',
    [
      [
        /^`Row 1` says it is paired and leans 0 times to the left, 2 times to the right$/,
        'Row 1 (paired inc)',
      ],
    ],
  ],
  [
    'a cast on that is no multiple',
    lace.replace('cast on: 17', 'cast on: 18'),
    [[/^`18` stitches are not a multiple of 6 plus 5$/, 'cast on: 18']],
  ],
  [
    'a bobble without its definition',
    'stitches: 3\nRow 1: K1, MB, k1.',
    [[/^`MB` is worked differently in every pattern/, 'MB']],
  ],
  [
    'a slip that is missing',
    'stitches: 3\nRow 1: K1, yo, psso, k1.',
    [[/^`psso` finds no slipped stitch before it$/, 'psso']],
  ],
  ['a bracket that is not closed', 'stitches: 4\nRow 1: [k2, p2', [[/^the bracket is not closed$/, '[']]],
  [
    'a bracket that was not opened',
    'stitches: 4\nRow 1: k2, p2]',
    [[/closes a bracket that was not opened/, ']']],
  ],
  [
    'a repeat without its mark',
    'stitches: 4\nRow 1: k2, p2; rep from * to end.',
    [[/finds no `\*` before it/, 'rep from * to end']],
  ],
  [
    'an endless repeat',
    'stitches: 4\nRow 1: *yo; rep from * to end.',
    [[/uses no stitches, so it has no end$/, 'yo']],
  ],
  ['no stitches to begin with', 'Row 1: k4.', [[/^the rows do not say on how many stitches/, 'Row 1: k4.']]],
  [
    'text outside the rows',
    'stitches: 4\nThis is nice.\nRow 1: k4.',
    [[/belongs to no row$/, 'This is nice.']],
  ],
  [
    'an unknown reading',
    'stitches: 4\nreading: backwards\nRow 1: k4.',
    [[/^`backwards` is not a reading/, 'reading: backwards']],
  ],
];

it.each(cases)('%s', (_, block, expected) => {
  const {found} = prove(block);
  expect(found.map(({actual}) => actual)).toEqual(expected.map(([, actual]) => actual));
  found.forEach(({message}, index) => {
    expect(message).toMatch(expected[index]?.[0] ?? /never/);
  });
});

it('names the nearest known form', () => {
  const {problems} = prove('stitches: 4\nRow 1: k2, k2tgo.');
  expect(problems[0]?.hint).toContain('`k2tog`');
});

// Whatever a slip of the pen makes unreadable is found at that word, once, and the rest of the pattern stays proved.
const words = [...lace.matchAll(/\b(?:yo|s2kp|[kp]\d)\b/gi)];
it.each(words.map((match) => [match[0], match.index] as const))(
  'a broken `%s` at %i gives one finding there',
  (word, at) => {
    const broken = `${lace.slice(0, at)}zq${word}${lace.slice(at + word.length)}`;
    expect(prove(broken).found.map(({actual}) => actual)).toEqual([`zq${word}`]);
  },
);
