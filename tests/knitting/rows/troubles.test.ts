import {describe, expect, test} from 'vitest';
import {expandRow} from '../../../src/knitting/rows/expand-row.ts';
import {firstTrouble} from '../../../src/knitting/rows/first-trouble.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {countsOf, prove} from './prove.ts';

const needed = (row: number, short: string, need: string, left: string) =>
  `\`Row ${row}\` is ${short} short: ${need} needed here and ${left} left`;

/** Rows on 8 stitches that do not come out, and all that is said of them: counted on needles. */
test.each([
  ['Row 1: K7.', '`Row 1` uses 7 stitches and 1 stitch is left over'],
  ['Row 1: K6.', '`Row 1` uses 6 stitches and 2 stitches are left over'],
  ['Row 1: K7, k2tog.', needed(1, '1 stitch', '2 stitches are', '1 is')],
  ['Row 1: K8, k1.', needed(1, '1 stitch', '1 stitch is', '0 are')],
  [
    'Row 1: K to last 9 sts, k9.',
    'the repeat of `Row 1` needs 1 stitch and is 1 stitch short even of what comes after it',
  ],
  [
    'Row 1: *K3; rep from * to last 10 sts, k10.',
    'the repeat of `Row 1` needs 3 stitches and is 2 stitches short even of what comes after it',
  ],
  [
    'Row 1: *K3; rep from *, k7.',
    '1 stitch is left over inside the repeat of `Row 1`: 1 stitch for repeats of 3',
  ],
  [
    'Row 1: *K3; rep from *, k6.',
    '2 stitches are left over inside the repeat of `Row 1`: 2 stitches for repeats of 3',
  ],
  [
    'Row 1: [K3] to end.',
    '2 stitches are left over inside the repeat of `Row 1`: 8 stitches for repeats of 3',
  ],
  ['Row 1: *K3; rep from *, k8.', 'the repeat of `Row 1` needs 3 stitches and finds 0'],
  ['Row 1: [K3] to last 8 sts, k8.', null],
  ['Row 1: *Yo; rep from * to end.', 'the repeat of `Row 1` uses no stitches, so it has no end'],
  ['Row 1: [Yo] to last 2 sts, k2.', 'the repeat of `Row 1` uses no stitches, so it has no end'],
  ['Row 1: *Pm, yo; rep from * to end.', 'the repeat of `Row 1` uses no stitches, so it has no end'],
  ['Row 1: *K3, pm; rep from * to end.', needed(1, '1 stitch', '3 stitches are', '2 are')],
  ['Row 1: *K4, pm; rep from * to end.', null],
  ['Row 1: *K2, pm; rep from * to last 2 sts, k2.', null],
  ['Row 1: *K2, pm; rep from *, k2.', null],
  ['Row 1: [K2, pm] 4 times.', null],
  ['Row 1: [K2, pm] 5 times.', needed(1, '2 stitches', '2 stitches are', '0 are')],
  [
    'Row 1: K4, pm, k4.\nRow 2: *P2, pm; rep from *, p to marker, p4.',
    'how often the repeat of `Row 2` is worked cannot be told',
  ],
  [
    'Row 1: K4, pm, k4.\nRow 2: *P2; rep from *, p to marker, p4.',
    'how often the repeat of `Row 2` is worked cannot be told',
  ],
  ['Row 1: *K2; rep from *, pm, k to end.', 'how often the repeat of `Row 1` is worked cannot be told'],
  ['Row 1: K to marker, k4.', '`Row 1` goes to a marker, and none lies ahead'],
  ['Row 1: K to marker B, k4.', '`Row 1` goes to marker B, which was not placed or lies behind'],
  ['Row 1: K to gap, k4.', '`Row 1` goes to a bound-off gap, and none lies ahead'],
  ['Row 1: K to turn, k4.', '`Row 1` goes to a turning place, and none lies ahead'],
  ['Row 1: K to ds, k4.', '`Row 1` goes to a double stitch, and none lies ahead'],
  [
    'Row 1: K4, pm A, k4.\nRow 2: P5, p to marker A, p3.',
    '`Row 2` goes to marker A, which was not placed or lies behind',
  ],
  [
    'Row 1: K4, pm, k4.\nRow 2: P3, p to 2 sts before marker, p5.',
    '`Row 2` has already come closer to the marker than it says',
  ],
  ['Row 1: K4, pm, k4.\nRow 2: P2, p to 2 sts before marker, p6.', null],
  ['Row 1: [K2, pm] 3 times, k2.\nRow 2: P to marker, p to marker, p4.', null],
  ['Row 1: [K2, pm] 3 times, k2.\nRow 2: P to marker, sm, p to marker, sm, p4.', null],
  ['Row 1: [K2, pm] 3 times, k2.\nRow 2: P to 1 st before marker, p1, p to marker, p6.', null],
  ['Row 1: [K2, pm] 3 times, k2.\nRow 2: P to marker, p to 1 st before marker, p5.', null],
  ['Row 1: K3, sm, k5.', '`Row 1` has no marker at this place'],
  [
    'Row 1: K3, pm, k5.\nRow 2: P3, rm, p5.',
    '`Row 2` has no marker at this place; the next lies 2 stitches further on',
  ],
  ['Row 1: Sm, k8, sm.', null],
  [
    'Row 1: K3, pm A, k1, pm B, k4.\nRow 2: P4, sm, p1, sm, p3.\nRow 3: K to marker A, rm, k to B, k4.\nRow 4: P4, sm, p4.\nRow 5: K to marker A, k5.',
    '`Row 5` goes to marker A, which was not placed or lies behind',
  ],
  ['Row 1: [Pm] 200 times, k8.', null],
  ['Row 1: [Pm] 201 times, k8.', '`Row 1` places more markers than can be followed'],
  [
    'Row 1: [[[Yo] 1000000 times] 1000000 times] 1000000 times, k8.',
    'the counts of `Row 1` grow beyond any knitting',
  ],
  ['Row 1: Dec 5 sts evenly across row.', needed(1, '2 stitches', '10 stitches are', '8 are')],
  ['Row 1: Dec 4 sts evenly across row. 4 sts.', null],
  ['Row 1: Inc 4 sts evenly across row. 12 sts.', null],
  ['Row 1: BO 9.', needed(1, '1 stitch', '9 stitches are', '8 are')],
  ['Row 1: BO 8.', null],
  ['Row 1: K8. 9 sts.', '`Row 1` makes 8 stitches, 1 stitch short of the `9` it states'],
  ['Row 1: Kfb, k7. 7 sts.', '`Row 1` makes 9 stitches, 2 stitches more than the `7` it states'],
  ['Row 1: Kfb, k7. 2 sts increased.', '`Row 1` changes the count by 1, 1 stitch short of the `2` it states'],
  [
    'Row 1: K2tog, k6. 2 sts decreased.',
    '`Row 1` changes the count by -1, 1 stitch short of the `2` it states',
  ],
  ['Row 1 (dec): Kfb, k7.', '`Row 1` is called a decrease row and gains 1 stitch'],
  ['Row 1 (dec): K8.', '`Row 1` is called a decrease row and keeps its count'],
  ['Row 1 (inc): [K2tog] twice, k4.', '`Row 1` is called an increase row and loses 2 stitches'],
  ['Row 1 (paired dec): Ssk, k4, k2tog.', null],
  ['Row 1 (paired dec): [Ssk] twice, k2tog twice.', null],
  [
    'Row 1 (paired dec): Ssk, k2, [k2tog] twice.',
    '`Row 1` says it is paired and leans 1 times to the left, 2 times to the right',
  ],
  ['Row 1: K2tog, k to end.\nRep row 1 until 5 sts remain.', null],
  [
    'Row 1: [K2tog] twice, k to end.\nRep row 1 until 5 sts remain.',
    'repeating the rows never leads to 5 stitches',
  ],
  ['Row 1: K8.\nRep row 1 until 5 sts remain.', 'repeating the rows never leads to 5 stitches'],
  ['Row 1: Kfb, k to end.\nRep row 1 until 5 sts remain.', 'repeating the rows never leads to 5 stitches'],
  ['Row 1: K8.\nRep row 1 until 8 sts remain.', null],
  ['Row 1: Kfb, k to end.\nRep row 1 2 more times. 11 sts.', null],
  [
    'Row 1: Kfb, k to end.\nRep row 1 2 more times. 12 sts.',
    '`the repeat of the rows` makes 11 stitches, 1 stitch short of the `12` it states',
  ],
  ['Row 1: Kfb, k to end.\nRep row 1.', null],
  [
    'Row 1: Kfb, k to end.\nRep row 1 for pattern.',
    '`Row 1` first finds 8 stitches and, after the rows to be repeated, 9',
  ],
  ['Row 1: Kfb, k7.\nRep row 1.', '`Row 1` first finds 8 stitches and, after the rows to be repeated, 9'],
  ['Row 1: K8.\nRep row 1 for pattern.', null],
  ['Row 1 (RS): K8.\nRow 2 (RS): P8.', '`Row 2 (RS)` is worked on the WS, not the RS'],
  ['Row 1 (RS): K8.\nRows 2–3 (RS): P8.', null],
  ['Row 1 (WS): K8.\nRow 2 (RS): P8.', null],
  ['Row 2: K8.\nRow 3 (RS): P8.', null],
  ['Row 1 (RS): K8.\nRow 2 and all WS rows: P8.\nRow 3 (RS): K8.', null],
  ['Rnd 1: K8.\nRnd 2 (WS): P8.', '`Rnd 2 (WS)` is worked on the RS, not the WS'],
])('%j', (rows, message) => {
  const {found} = prove(`stitches: 8\n${rows}`);
  expect(found.map((each) => each.message)).toEqual(message === null ? [] : [message]);
});

describe('one mistake is told once', () => {
  test.each([
    // The count that the next rows want is the one that was meant.
    ['Row 1: K7.\nRow 2: P8.\nRow 3: K8.', ['Row 1']],
    ['Row 1: K2tog, k7.\nRow 2: P7.\nRow 3: K7.', ['Row 1']],
    ['Row 1: K8. 9 sts.\nRow 2: P9.\nRow 3: K9.', ['Row 1']],
    ['Row 1: K7.\nRow 2: P9.\nRow 3: K9.', ['Row 1']],
    ['Row 1: K7.\nRow 2: P8.\nRow 3: K7.', ['Row 1', 'Row 3']],
    ['Row 1: K7.\nRep row 1 3 more times.', ['Row 1']],
    // A row that cannot be read may have placed the marker and turned.
    ['Row 1: K4, zzz, pm, k4.\nRow 2: P to marker, sm, p4.', ['zzz']],
    ['Row 1: K4, zzz, turn.\nRow 2: P3.\nRow 3: K8.', ['zzz']],
    ['Row 1: K4, turn.\nRow 2: P3.', ['Row 2']],
    ['Row 1: K3, pm, k4.\nRow 2: P to marker, sm, p4.', ['Row 1']],
  ])('%j', (rows, places) => {
    const {found} = prove(`stitches: 8\n${rows}`);
    expect(found).toHaveLength(places.length);
    for (const [index, {message}] of found.entries()) expect(message).toContain(`\`${places[index]}\``);
  });

  test.each([
    // In the second size the row fails at another stitch of it.
    ['stitches: 8 (9)\nRow 1: K9, p1.', 1],
    ['sizes: S (M)\nstitches: 8 (12)\nRow 1: *K5; rep from *.\nRow 2: P to end.', 1],
    ['stitches: 8 (9)\nRow 1: K8 (9).\nRow 2: P8.', 1],
    ['stitches: 8 (9)\nRow 1: K7 (9).\nRow 2: P8.', 2],
    ['stitches: 8 (9)\nRow 1: K8 (9).\nRow 2: P8 (9).', 0],
  ])('%j has %i', (text, count) => {
    const {found} = prove(text);
    expect(found).toHaveLength(count);
  });

  test('the size is named, by its name or its stitches', () => {
    expect(prove('sizes: S (M)\nstitches: 8 (9)\nRow 1: K8.').found[0]?.message).toMatch(/^in size `M`, /);
    expect(prove('stitches: 8 (9)\nRow 1: K8.').found[0]?.message).toMatch(/^in size `9 stitches`, /);
    expect(prove('stitches: 8\nRow 1: K9.').found[0]?.message).toMatch(/^`Row 1`/);
  });

  test('what is wrong is told in the order of the text', () => {
    const {found} = prove('stitches: 8\nRow 1: K7.\nRow 3: P8.\nRow 3 (RS): K9.');
    const places = prove('stitches: 8\nRow 1: K7.\nRow 3: P8.\nRow 3 (RS): K9.').proved.problems.map(
      ({span}) => span.start,
    );
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(found.length).toBeGreaterThan(2);
  });
});

test.each([
  ['multiple: 6 + 5\ncast on: 18', 'Begin with 17 or 23 stitches, or check the multiple.'],
  ['multiple: 6 + 5\ncast on: 3', 'Begin with 5 or 11 stitches, or check the multiple.'],
  ['multiple: 6 + 5\ncast on: 10', 'Begin with 5 or 11 stitches, or check the multiple.'],
  ['multiple: 6 + 5\ncast on: 17 (22)', 'Begin with 17 or 23 stitches, or check the multiple.'],
  ['multiple: 6 + 5\ncast on: 5', undefined],
  ['multiple: 6 + 5', undefined],
])('%j', (header, hint) => {
  const {problems} = proveRows(readRows(`${header}\nRow 1: K.`).pattern);
  expect(problems[0]?.hint).toBe(hint);
});

test.each([
  ['', [[], []]],
  ['Row 1: K.', [[], ['the rows do not say on how many stitches they are worked']]],
  ['multiple: 6 + 5\nRow 1: K.', [[17], []]],
  ['multiple: 6 + 5\ncast on: 11\nRow 1: K.', [[11], []]],
])('%j begins with %j', (block, expected) => {
  const {sizes, problems} = proveRows(readRows(block).pattern);
  expect([sizes.map(({start}) => start), problems.map(({message}) => message)]).toEqual(expected);
});

/** What is done, stitch by stitch, on 8 stitches. Unless it says so a knit or purl row goes to its end. */
test.each([
  ['K3, p to end.', 'k k k p p p p p'],
  ['K2tog, yo, k6.', 'k2tog yo k k k k k k'],
  ['*K1, p1; rep from *.', 'k p k p k p k p'],
  ['*K2, pm; rep from * to end.', 'k k marker k k marker k k marker k k marker'],
  ['[K1, p1] twice, k to end.', 'k p k p k k k k'],
  ['K4, CO 2, k4.', 'k k k k cast on cast on k k k k'],
  // Binding off two works a third, whose loop stays.
  ['BO 2, k5.', 'bind off bind off bind off k k k k k'],
  ['BO 8.', 'bind off bind off bind off bind off bind off bind off bind off bind off'],
  ['K3, turn, p3, turn, k8.', 'k k k turn p p p turn k k k k k k k k'],
  ['(K1, yo, k1) in next st, k7.', 'into k k k k k k k'],
  ['Sl 1, k2, psso, k5.', 'pass over k k k k k'],
  ['Yb, k8.', 'yarn k k k k k k k k'],
  ['Inc 2 sts evenly across row.', 'evenly'],
  ['*K1, p1, k1; rep from *, ending last rep k2.', 'k p k k p k k k'],
  ['K1, *yo, k1**, p1, rep from * to ** twice, k to end.', 'k yo k p yo k yo k k k k'],
])('%s', (row, operations) => {
  const {pattern} = readRows(`stitches: 8\nRow 1: ${row}`);
  const proved = proveRows(pattern, {isPlanned: true}).sizes[0]?.rows[0];
  const done = proved ? [...expandRow(proved)] : [];
  expect(done.map(({stitch, step}) => stitch?.id ?? step.kind).join(' ')).toBe(operations);
});

test.each([
  ['Row 1: K8.', []],
  ['Row 1: K7.\nRow 2: P9.\nRow 3: K2.', ['`Row 1` uses 7 stitches and 1 stitch is left over']],
  ['Row 1: BO 3, k5.\nRow 2: P5.', []],
])('%j: only the first trouble is looked for', (rows, found) => {
  const {problems, visited} = firstTrouble(readRows(`stitches: 8\n${rows}`).pattern);
  expect(problems.map(({message}) => message)).toEqual(found);
  expect(visited).toBeGreaterThan(0);
});

test('in each size that does not come out', () => {
  const {problems} = firstTrouble(readRows('stitches: 8 (9, 10)\nRow 1: K8.\nRow 2: P9.').pattern);
  expect(problems).toHaveLength(3);
  expect(firstTrouble(readRows('Row 1: K8.').pattern)).toEqual({problems: [], visited: 0});
});

test.each([
  ['*K2, p2; rep from *, k to end.', 18, 18],
  ['*K2, p2; rep from *, k1, p to end.', 18, 18],
  ['*K2, k2tog; rep from *, k to end.', 18, 14],
  ['*K2, k2tog; rep from *, k3, p to end.', 6, 6],
])('%s on %i stitches leaves %i', (row, stitches, after) => {
  const proof = prove(`stitches: ${stitches}\nRow 1: ${row}`);
  expect([proof.found, countsOf(proof)]).toEqual([[], [after]]);
});
