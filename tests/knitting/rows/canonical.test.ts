import {describe, expect, test} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {writeRows} from '../../../src/knitting/rows/write-rows.ts';

// The one way in which this program writes each thing. Read again it must be the same, or what is printed from a chart
// would say something else than the chart.

const again = (text: string, dialect: 'american' | 'british' = 'american') => {
  const {pattern, problems} = readRows(text);
  return {text: writeRows(pattern, dialect), problems: problems.map(({message}) => message)};
};

describe('steps', () => {
  test.each([
    'k8',
    'k3 tbl, p5',
    'k2tog 3 times, k2',
    'k to last 3 sts, k3',
    'k to last st, k1',
    'p to end',
    'sl1 wyif, k7',
    'sl2 wyib, k6',
    'k2 with MC, k6 with CC',
    'St st 4 sts, g st 4 sts',
    'patt 4 sts, k4',
    'patt to last 3 sts, k3',
    '(k1, yo, k1) in next st, k7',
    '(k1, yo, k1) in next 2 sts, k6',
    'sl1, k2, psso, k5',
    'sl2, k3, p2sso, k3',
    'BO 4, k to end',
    'BO all sts',
    'k2, BO to last 2 sts, k2',
    'k4, CO 4, k4',
    'k8, pick up and k 4',
    'k4, pm, k4',
    'k4, pm A, k4',
    'k to marker, sm, k4',
    'k to marker A, rm, k4',
    'k to 2 sts before marker, k2tog, k4',
    'k to 1 st before marker A, k5',
    'k to 2 sts past marker, k2',
    'k to gap, k1',
    'k to turn, k1',
    'k to ds, k1',
    'k to beg of rnd, k1',
    'k4, turn',
    'k4, w&t',
    'yb, sl1, k7',
    'inc 4 sts evenly across row',
    'dec 4 sts evenly across row',
    '*k2, p2; rep from *',
    '*k2, p2; rep from * to last 3 sts, k3',
    '*k2; rep from * 3 times',
    '*k2; rep from * 3 more times',
    '[k2, p2] 3 times, k1',
    '[k2, p2] to end',
    '*k1, **p1, k1; rep from ** 2 more times; rep from *',
    '*k1, [p1, k1] 2 times; rep from *',
    'yf, p2, k6',
    '2/2 LC, 2/1 RPC, k1',
    'kfb 3 times, k5',
  ])('%s', (steps) => {
    const block = `stitches: 8\nRow 1: ${steps}.\n`;
    expect(again(block)).toEqual({text: block, problems: []});
  });

  test.each([
    ['2/2 LC, 3/3 RC, BO 2, yo', 'C4F, C6B, cast off 2, yo'],
    ['skp, 2/1 LPC', 'skpo, T3F'],
  ])('%s in British is %s', (american, british) => {
    const block = (steps: string) => `stitches: 8\nRow 1: ${steps}.\n`;
    expect(again(block(american), 'british').text).toBe(block(british));
    expect(again(block(british)).text).toBe(block(american));
  });

  test('a passage worked again up to a second mark is written out', () => {
    expect(again('stitches: 20\nRow 1: K1, *yo, k1**, p2, rep from * to ** 3 times, k to end.\n').text).toBe(
      'stitches: 20\nRow 1: k1, yo, k1, p2, [yo, k1] 3 times, k to end.\n',
    );
  });
});

describe('rows', () => {
  test.each([
    'Row 1 (RS): k8.',
    'Row 2 (WS): k8. 8 sts.',
    'Rows 1–3: k8.',
    'Rows 1 and 3: k8.',
    'Rows 1, 3 and 5–7: k8.',
    'Rnd 1: k8.',
    'Rnds 1–3: k8.',
    'Row 2 and all WS rows: k8.',
    'Row 2 and all alternate rows: k8.',
    'Rnd 2 and all even rnds: k8.',
    'Row 2 and all rows: k8.',
    'Row 1 (increase row): kfb, k7.',
    'Row 1 (RS, decrease row, paired): k2tog, k4, ssk.',
    'Next row: k8.',
    'All WS rows: k8.',
    'BO 8.',
    'Row 1: kfb, k7. 1 sts increased.',
    'Row 1: k2tog, k6. 1 sts decreased.',
    'Row 1: k8.\nRow 2: p8.\nRep rows 1–2.',
    'Row 1: k8.\nRow 2: p8.\nRep rows 1–2 for pattern.',
    'Row 1: k8.\nRow 2: p8.\nRep rows 1 and 2 3 more times.',
    'Row 1: k8.\nRow 2: p8.\nRep the last 2 rows 3 more times. 8 sts.',
    'Row 1: k8.\nRow 2: p8.\nRep the last 2 rows until 4 sts remain.',
    'Row 1: k8.\nRow 2: p8.\nRep from row 2.',
    'Row 1: k8.\nRow 2: p8.\nRep these rows.',
    'Row 1: k8.\nRow 2: p8.\nRows 3–6: Rep rows 1–2.',
    'Row 1: k8.\nRow 2: p8.\nRow 3: Rep the last 1 rows.',
  ])('%s', (rows) => {
    const block = `stitches: 8\n${rows}\n`;
    expect(again(block)).toEqual({text: block, problems: []});
  });

  test('a bind-off that is a row of its own, in British', () => {
    expect(again('stitches: 8\nRow 1: k8.\nBO 8.\n', 'british').text).toBe(
      'stitches: 8\nRow 1: k8.\nCast off 8.\n',
    );
  });
});

test.each([
  'multiple: 6 + 5\ncast on: 17',
  'sizes: S (M, L)\ncast on: 62 (66, 70)',
  'stitches: 8\ncolours: drab, white',
  'stitches: 8\nin the round',
  'stitches: 8\nreading: bind-off loop counted',
  'stitches: 8\nreading: bind-off loop separate',
  'stitches: 8\nreading: yarn forward makes a stitch',
  'stitches: 8\nreading: yarn forward makes no stitch',
  'stitches: 8\nreading: repeat times in all',
  'stitches: 8\nreading: repeat times more',
  'stitches: 8\nreading: times of the passage',
  'stitches: 8\nreading: times of the last stitch',
  'stitches: 8\nreading: last repeat replaced',
  'stitches: 8\nreading: last repeat cut short',
  'stitches: 8\nreading: make 1 yarn over',
  'stitches: 8\nMB: uses 1, makes 1, "make bobble"\nmx: uses 2, makes 3, "cross and make one"',
])('%j', (header) => {
  const block = `${header}\nRow 1: k to end.\n`;
  expect(again(block)).toEqual({text: block, problems: []});
});

test('make 1 is an over where the block says so', () => {
  expect(again('stitches: 8\nreading: make 1 yarn over\nRow 1: Make 1, k8.\n').text).toContain(
    'Row 1: yo, k8.',
  );
  expect(again('stitches: 8\nRow 1: Make 1, k8.\n').text).toContain('Row 1: M1, k8.');
});

/** What is read from a row, as it is written here. */
function writtenAs(row: string): string {
  const {text, problems} = again(`stitches: 30\nRow 1: ${row}.\n`);
  expect(problems).toEqual([]);
  // It says the same when the text breaks off behind its last word.
  expect(again(`stitches: 30\nRow 1: ${row}`).text).toBe(text);
  return text.slice('stitches: 30\nRow 1: '.length, -2);
}

// How far a stitch is worked, and how often a passage is: the wordings of two centuries for the same thing.
const wordings: Readonly<Record<string, readonly string[]>> = {
  'to end': [
    ...[
      'to the end of this row',
      'to end of needle',
      'across',
      'across to end of row',
      'all stitches across',
    ],
    ...['all round', 'all along', 'around', 'along the row', 'every st', 'each stitch across', 'in every st'],
    ...['remaining sts', 'all remaining sts', 'the remainder of the row plain', 'those left at end'],
    ...['sts remaining', 'all the way across', 'right across', 'all through the row', 'throughout the row'],
    ...['until the row is finished', 'the whole row', 'one row', 'a row', 'back', 'back to the beginning'],
    ...['as far as the end', 'as often as required'],
  ],
  'to last 3 sts': [
    ...['until last 3 sts remain', 'across to last 3 sts', 'till within 3 of the end', 'to the 3 last sts'],
    ...['to within 3 sts from end of row', 'to 3 sts before end of row', 'until 3 remain', 'all but 3'],
    ...['until there are only 3 sts left on needle', 'until only 3 sts are left', 'all but the last 3 sts'],
    ...['to 3 before the end'],
  ],
  'to last st': ['to last st', 'till last st', 'to last 1 st'],
  'to marker': ['to first marker', 'to m', 'up to marker', 'until marker', 'before the marker'],
  'to 2 sts before marker': ['until 2 sts before marker', 'to within 2 sts of marker'],
  'to 2 sts past marker': ['to 2 sts after marker', 'to 2 sts beyond marker', 'until 2 sts past next marker'],
  'to 1 st past marker': ['to 1 st past m'],
  'to marker A': ['to A', 'to marker (A)', 'until marker A'],
  'to 2 sts before marker B': ['to 2 sts before B', 'until 2 sts before marker B'],
  'to marker 2': ['to marker 2'],
  'to beg of rnd': ['to bor', 'to bor marker', 'until beginning of round'],
  'to gap': ['to bound-off sts', 'to buttonhole', 'to cast-off sts'],
  'to turn': ['to wrapped st', 'to last turn', 'to turning point', 'to last wrapped st'],
  'to ds': ['to double st', 'to last double st', 'to previous ds'],
};

describe.each(Object.entries(wordings))('k %s', (extent, all) => {
  test.each(all)('is also k %s', (words) => {
    expect(writtenAs(`K ${words}`)).toBe(`k ${extent}`);
  });
});

const times: Readonly<Record<string, readonly string[]>> = {
  '3 times': [
    ...[
      '3 times in succession',
      '3 times in all',
      '3 times over',
      '3 times altogether',
      'x 3',
      '3x',
      'thrice',
    ],
    ...['a total of 3 times', 'rep 3 times', 'rep from these sts 3 times'],
  ],
  '2 times': ['twice'],
  '1 times': ['once'],
  '3 more times': [
    '3 times more',
    '3 additional times',
    'another 3 times',
    'a further 3 times',
    '3 times again',
    '3 more',
  ],
  '2 more times': ['twice more'],
  '1 more times': ['once again', 'once more'],
};

describe.each(Object.entries(times))('[ssk, p1] %s', (extent, all) => {
  test.each(all)('is also [ssk, p1] %s', (words) => {
    expect(writtenAs(`[Ssk, p1] ${words}`)).toBe(`[ssk, p1] ${extent}`);
  });
});

// How a stitch is worked, said behind it.
const manners: Readonly<Record<string, readonly string[]>> = {
  'k1 tbl': [
    'k1 through the back loop',
    'k1 in back of st',
    'k1 behind',
    'k1 taken from the back',
    'k 1 crossed',
  ],
  'k3 tbl': ['k3 through their backs', 'k3, taking them off at the back'],
  'p2 tbl': ['p2 tbl', 'p2 through the back'],
  'k2tog tbl': ['k2tog inserting needle at the back', 'k2tog through back loops'],
  'p2tog tbl': ['p2tog tbl', 'p2tog through back loops'],
  ssk: ['ssk tbl'],
  'sl1 kwise': ['sl 1 kwise', 'sl 1 as if to knit', 'sl 1 knitways', 'sl 1k', 'sl 1 as for knitting'],
  'sl1 pwise': ['sl 1 purlwise', 'sl 1 as if about to purl', 'sl 1p', 'sl 1 as to purl'],
  'sl1 wyif': [
    'sl 1 with yarn held in front',
    'sl 1 keeping yarn in front',
    'sl 1 (yarn in front)',
    'sl 1 wyf',
  ],
  'sl5 wyif': ['slip 5 (yarn in front)'],
  'sl1 wyib': ['sl 1 with yarn in back of work', 'sl 1 wyb', 'sl 1 with yarn at back'],
  'sl1 pwise wyib': ['sl 1 pwise wyib', 'sl 1 wyib purlwise'],
  k5: [
    'k5 loosely',
    'k5 in seed st',
    'k5, dropping extra loops',
    'k5, wrapping yarn twice',
    'k5 as usual',
    'k5 plain',
  ],
  kfb: ['kfb in next st', 'kfb in last st'],
  yo: ['yo in front'],
  'k2 with MC': ['k2 MC', 'k2 (MC)', 'k2 with MC', 'k2 in MC'],
  'sl1 wyif with CC': ['sl 1 wyif with CC', 'sl 1 with CC wyif'],
};

describe.each(Object.entries(manners))('%s', (stitch, all) => {
  test.each(all)('is also %s', (words) => {
    expect(writtenAs(`${words}, p to end`)).toBe(`${stitch}, p to end`);
  });
});
