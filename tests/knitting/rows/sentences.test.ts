import {describe, expect, test} from 'vitest';
import {lexRow} from '../../../src/knitting/rows/lex-row.ts';
import {readMultiple, readStartCount} from '../../../src/knitting/rows/read-foundation.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import type {RowRepeat, Step} from '../../../src/knitting/rows/row-syntax.ts';
import {writeSteps} from '../../../src/knitting/rows/write-rows.ts';

// The sentences around the rows, as the trade writes them, and what each says. The wordings are those of the needlework
// books from the 1840s to the 1890s and of patterns of today; the numbers are made up for these tables.

describe('the multiple that a line gives', () => {
  test.each([
    ['multiple: 6 + 5', 6, 5],
    ['multiple of 6 sts plus 5', 6, 5],
    ['Multiple of six', 6, 0],
    ['a multiple of 6 (plus 2 edge sts)', 6, 2],
    ['multiple of 6 + 2 edge sts + 1', 6, 3],
    ['multiple of 6 with 3 extra', 6, 3],
    ['multiple of 10, and 1 more, and 2 for the edges', 10, 3],
    ['multiple of 6 minus 1', 6, 5],
    ['multiple of 6 - 2', 6, 4],
    ['multiple of 6, and 2 rows', 6, 0],
    ['multiple of 6 + 5 (25 sts shown)', 6, 5],
    ['any number of stitches divisible by 6, and 5 over', 6, 5],
    ['any number that can be divided by 8, and 3 additional', 8, 3],
    ['a number that divides by 8', 8, 0],
    ['an uneven number of stitches', 2, 1],
    ['any odd number', 2, 1],
    ['an even number of stitches', 2, 0],
    ['12 stitches for each pattern and 4 for the edge', 12, 4],
    ['16 stitches to every scallop', 16, 0],
    ['Cast on 9 stitches for a leaf, and 2 over', 9, 2],
  ])('%s', (text, of, plus) => {
    expect(readMultiple(lexRow(text))).toEqual({of, plus});
  });

  test.each([
    'a number of stitches',
    'cast on 24 stitches',
    'multiple of many',
    'divisible into 6',
    'an even number 6',
    '12 stitches for the back',
    '12 stitches for each sleeve',
    '12 rows for each pattern',
    'even',
  ])('%s gives none', (text) => {
    expect(readMultiple(lexRow(text))).toBeNull();
  });
});

describe('the stitches that a line begins with', () => {
  test.each([
    ['cast on: 84 (92, 100)', [84, 92, 100], true],
    ['With MC cast on 24 sts', [24], true],
    ['CO 24', [24], true],
    ['co a total of 24 sts', [24], true],
    ['Cast on, loosely, 24', [24], true],
    ['caston: 24', [24], true],
    ['stitches: 29', [29], false],
    ['sts 12', [12], false],
    ['panel of 12 sts', [12], false],
    ['stitches: cast on 7', [7], true],
  ])('%s', (text, values, isCastOn) => {
    expect(readStartCount(lexRow(text))).toEqual({values, isCastOn});
  });

  test.each([
    'cast off 24',
    'cast on some',
    'a row of 24',
    '24 sts',
    'needles: 24',
    'Worked over 12 sts',
    '',
  ])('%s says none', (text) => {
    expect(readStartCount(lexRow(text))).toBeNull();
  });
});

describe('rows that are worked again', () => {
  const rows = (...ranges: readonly (readonly [number, number])[]) => ({
    kind: 'rows',
    ranges: ranges.map(([first, last]) => ({first, last})),
  });
  const last = (count: number) => ({kind: 'last', count});
  const from = (first: number) => ({kind: 'from', first});
  const all = {kind: 'all'};
  const more = (...values: readonly number[]) => ({kind: 'more', count: {values}});
  const until = (...values: readonly number[]) => ({kind: 'until stitches', count: {values}});
  const open = {kind: 'open', isForPattern: false};
  const forPattern = {kind: 'open', isForPattern: true};

  test.each([
    ['Rep rows 1–8 for pattern.', rows([1, 8]), forPattern],
    ['Repeat rows 1 to 8.', rows([1, 8]), open],
    ['Rep rounds 1 and 2.', rows([1, 1], [2, 2]), open],
    ['Rep rows 1, 2, and 4.', rows([1, 1], [2, 2], [4, 4]), open],
    ['Rep rows 1-4 and 7 through 8.', rows([1, 4], [7, 8]), open],
    ['Rep rows 8–1.', rows([8, 8]), open],
    ['Repeat the second row.', rows([2, 2]), open],
    ['Repeat the 2nd and 3rd rows twice.', rows([2, 2], [3, 3]), more(2)],
    ['Repeat from the second row.', from(2), open],
    ['Repeat from row 2.', from(2), open],
    ['Repeat from rows 1 and 2.', rows([1, 1], [2, 2]), open],
    ['Repeat from the 2nd to the 5th row.', rows([2, 5]), open],
    ['Commence again at the 2nd row.', from(2), open],
    ['Begin again with the third row.', from(3), open],
    ['Rep first 4 rows.', rows([1, 4]), open],
    ['Rep the first four rows 2 more times.', rows([1, 4]), more(2)],
    ['Rep last row.', last(1), open],
    ['Rep last row 3 times.', last(1), more(3)],
    ['Repeat the last row 3 more times.', last(1), more(3)],
    ['Rep row 2 3 times.', rows([2, 2]), more(3)],
    ['Rep rows 2 more times.', all, more(2)],
    ['Rep rows 1 and 2, and 3 additional times.', rows([1, 1], [2, 2]), more(3)],
    ['Rep previous round once.', last(1), more(1)],
    ['Rep the last 2 rows 3 (4) more times.', last(2), more(3, 4)],
    ['Rep these 2 rows 3 additional times.', last(2), more(3)],
    ['Rep these rows.', all, open],
    ['Repeat from the beginning.', all, open],
    ['Rep the last 2 rows until 8 sts remain.', last(2), until(8)],
    ['Rep the last 2 rows until 8 sts are left.', last(2), open],
    ['Rep the last 2 rows until 8 (10) sts left.', last(2), until(8, 10)],
    ['Rep the last 2 rows until there are 20 sts on the needle.', last(2), until(20)],
    ['Rep rows 1 and 2 3 more times.', rows([1, 1], [2, 2]), more(3)],
    ['Rep rows 1 and 2, 3 times.', rows([1, 1], [2, 2]), more(3)],
    ['Rep rows 1 and 2 until piece measures 10 cm.', rows([1, 1], [2, 2]), open],
    ['These 8 rows form the pattern.', last(8), forPattern],
    ['The last 4 rows are repeated throughout.', last(4), open],
    ['Last 4 rounds complete one pattern.', last(4), forPattern],
    ['Repeat these two rows until it is long enough.', last(2), open],
    ['Continue to repeat the last 4 rows.', last(4), open],
    ['Keep repeating rows 1–4.', rows([1, 4]), open],
    ['Work four other rows similar to the two last.', last(2), more(2)],
    ['Knit 6 more rows, like the last 3.', last(3), more(2)],
    ['Every succeeding row is the same.', last(1), open],
    ['All the rows alike.', last(1), open],
    ['Every row is alike', last(1), open],
  ])('%s', (sentence, what, often) => {
    const {pattern, problems} = readRows(`stitches: 8 (9)\nRow 1: K.\nRow 2: P.\n${sentence}\nRow 9: K.`);
    const entries = pattern.entries.slice(2);
    expect([problems, entries.map(({kind}) => kind)]).toEqual([[], ['repeat rows', 'row']]);
    const [repeat] = entries as readonly RowRepeat[];
    expect(repeat).toMatchObject({what, often, label: null, stated: null});
    // It says the same when the text breaks off behind its last word.
    const cut = readRows(`stitches: 8 (9)\nRow 1: K.\nRow 2: P.\n${sentence.replace(/\.$/, '')}`);
    expect(cut.pattern.entries.at(-1)).toMatchObject({what, often});
  });

  test.each([
    ['Row 3: As row 1.', rows([1, 1])],
    ['Row 3: Like the first.', rows([1, 1])],
    ['Row 3: Same as rows 1 and 2.', rows([1, 1], [2, 2])],
    ['Row 3: Work as for row 1.', rows([1, 1])],
    ['Rows 3–8: Rep rows 1 and 2.', rows([1, 1], [2, 2])],
    ['Row 3 is like the first.', rows([1, 1])],
    ['Next row: As last row.', last(1)],
  ])('%s fills its label', (sentence, what) => {
    const {pattern, problems} = readRows(`stitches: 8\nRow 1: K.\nRow 2: P.\n${sentence}`);
    expect(problems).toEqual([]);
    expect(pattern.entries[2]).toMatchObject({kind: 'repeat rows', what, often: {kind: 'to fill the label'}});
  });

  test('the wrong number of sizes is told once', () => {
    const block = 'stitches: 8\nRow 1: K.\nRep the last row 3 (4) more times.\nRow 2: K.';
    const {problems} = readRows(block);
    expect(problems.map(({span}) => block.slice(span.start, span.end))).toEqual(['3 (4)']);
  });

  test.each([
    ['Rep rows 1 and 2 four more times. 22 sts.', {kind: 'total', count: {values: [22]}}],
    ['Rep rows 1 and 2 until 8 sts remain; 8 (10) sts.', {kind: 'total', count: {values: [8, 10]}}],
  ])('%s states a count', (sentence, stated) => {
    const {pattern, problems} = readRows(`stitches: 8 (9)\nRow 1: K.\nRow 2: P.\n${sentence}`);
    expect(problems).toEqual([]);
    expect(pattern.entries[2]).toMatchObject({kind: 'repeat rows', stated});
  });
});

describe('what is said of the last repeat', () => {
  /** What stands behind the repeat, in either way of reading it where there are two. */
  function lastTime(text: string): readonly string[] {
    const {pattern, problems} = readRows(`stitches: 20\nRow 1: ${text}`);
    expect(problems.map(({message}) => message)).toEqual([]);
    const [entry] = pattern.entries;
    const [repeat, ...behind] = entry?.kind === 'row' ? entry.steps : [];
    expect(repeat).toMatchObject({kind: 'repeat', style: 'star', extent: {kind: 'as fits'}});
    const [first] = behind;
    const ways: readonly (readonly Step[])[] = first?.kind === 'either' ? first.ways : [behind];
    return ways.map((steps) => writeSteps(steps));
  }

  test.each([
    ['*K3, p2; rep from *, ending last rep k3', ['k3']],
    ['*K3, p2; rep from * to end, ending last rep with p1', ['k3, p1']],
    ['*K1, p2, k1; rep from *, ending last rep k2', ['k1, p2, k2', 'k2']],
    ['*P1, k1, p1, k2; rep from *, ending last rep with k1', ['p1, k1, p1, k1', 'p1, k1']],
    ['*K1, p1, k1, p2; rep from *, ending last rep p2', ['k1, p2']],
    ['*K1, p2; rep from *, ending last rep yo', ['yo']],
    ['*K1, p2; rep from *, ending last rep at k1 only', ['k1']],
    ['*K3, p2; rep from *, ends last rep p1 instead of p2', ['k3, p1']],
    ['*K3, p2; rep from *, end last rep k1, p1 instead of p2 at end', ['k3, k1, p1']],
    ['*K3, p2; rep from *, ending k1 instead of k3, p2', ['k1']],
    ['*K3, p2; rep from *, omitting last 2 sts of last rep', ['k3']],
    ['*K3, p2; rep from *, omitting last st', ['k3, p1']],
    ['*K3, p2; rep from *, omit last 4 sts in last rep', ['k1']],
    ['*K3, p2; rep from *, omitting last 5 sts', ['']],
    ['*K1, k2tog; rep from *, omitting last 2 sts', ['k1']],
    ['*K3, yo; rep from *, omitting last 1 st', ['k2']],
    ['*K3, p2; rep from *, omit the last p2', ['k3']],
    ['*K3, p2; rep from *, omitting the p2 at end of last rep', ['k3']],
    ['*K3, p2; rep from *, leaving off p2', ['k3']],
    ['*K1, p2, yo; rep from *, leave out last p2, yo', ['k1']],
  ])('%s', (text, ways) => {
    expect(lastTime(text)).toEqual(ways);
  });

  test.each([
    ['*K3, p2; rep from *, ending last rep k1 instead of k3', 'ending last rep k1 instead of k3'],
    ['*K3, p2; rep from *, ending p1 instead of p3', 'ending p1 instead of p3'],
    ['*K3, p2; rep from *, ending p1 instead of k1, k3, p2', 'ending p1 instead of k1, k3, p2'],
    ['*K3, p2; rep from *, omitting last 6 sts', 'omitting last 6 sts'],
    ['*K1, k2tog; rep from *, omitting last st', 'omitting last st'],
    ['*K3, p2; rep from *, omit p3', 'omit p3'],
    ['*K3, [p1, k1] twice; rep from *, omit last 2 sts', 'omit last 2 sts'],
    ['*K3, p to end; rep from *, omit last 2 sts', 'omit last 2 sts'],
    ['*K3, p2 (3); rep from *, omit last st', 'omit last st'],
  ])('%s does not fit', (text, written) => {
    const block = `stitches: 20 (25)\nRow 1: ${text}.`;
    const {problems} = readRows(block);
    expect(problems.map(({message, span}) => [message, block.slice(span.start, span.end)])).toEqual([
      [`\`${written}\` does not fit the repeat before it`, written],
    ]);
  });

  test('it is said of a repeat in stars alone', () => {
    expect(readRows('stitches: 20\nRow 1: [K3, p2] to end, omit last p2.').problems).not.toEqual([]);
    expect(readRows('stitches: 20\nRow 1: K3, p2, omit last p2.').problems).not.toEqual([]);
  });
});

describe('what a row states of its count', () => {
  test.each([
    ['K8. 8 sts', 'total', [8]],
    ['K8 (8 sts)', 'total', [8]],
    ['K8 (= 8 sts)', 'total', [8]],
    ['K8 — 8 sts', 'total', [8]],
    ['K8, 8 sts', 'total', [8]],
    ['K8. 8 sts rem', 'total', [8]],
    ['K8. 8 sts on needle', 'total', [8]],
    ['K8; 8 (9) sts in all', 'total', [8, 9]],
    ['(8 sts) k8', 'total', [8]],
    ['K8 (8 sts), p1', 'total', [8]],
    ['K to end [8]', 'total', [8]],
    ['Kfb, k7. 1 st increased', 'increase', [1]],
    ['Kfb, k7 (+1 st)', 'increase', [1]],
    ['K2tog, k6. 1 st dec’d', 'decrease', [1]],
    ['K2tog, k6 (−1 st)', 'decrease', [1]],
    ['K2tog, k6 (-1 st)', 'decrease', [1]],
    ['Break yarn and draw through remaining 8 sts', 'total', [8]],
    ['Cut yarn, thread through rem 8 sts, pull tight and fasten off', 'total', [8]],
    ['Draw yarn through 8 loops and secure', 'total', [8]],
  ])('%s', (row, kind, values) => {
    for (const end of ['', '.', '; p1.']) {
      if (end === '; p1.' && kind !== 'total') continue;
      const {pattern, problems} = readRows(`stitches: 8 (9)\nRow 1: ${row}${end}`);
      expect(problems).toEqual([]);
      const [entry] = pattern.entries;
      expect(entry?.kind === 'row' && entry.stated).toMatchObject([{kind, count: {values}}]);
    }
  });

  test.each([
    'K8. Fasten off',
    'K8, cut yarn and k1',
    'K8. Weave in ends',
    'K1 through back loop',
    'K8. Cut 8 cm tail',
  ])('%s states none', (row) => {
    const {pattern} = readRows(`stitches: 8\nRow 1: ${row}`);
    const [entry] = pattern.entries;
    expect(entry?.kind === 'row' && entry.stated).toEqual([]);
  });
});

describe('sentences that are rows', () => {
  test.each([
    ['Knit 4 rows.', 'k to end', 3],
    ['Purl one row.', 'p to end', 0],
    ['Two plain rows.', 'k to end', 1],
    ['Knit a row.', 'k to end', 0],
    ['A purl row.', 'p to end', 0],
    ['Knit row.', 'k to end', 0],
    ['4 rows plain.', 'k to end', 3],
    ['Knit 3 rounds.', 'k to end', 2],
    ['Work 1 row.', 'patt to end', 0],
    ['Work 2 rows even.', 'patt to end', 1],
    ['Work 6 rows in St st.', 'St st to end', 5],
    ['Work 3 rows in rib as set.', 'patt to end', 2],
  ])('%s', (sentence, steps, more) => {
    for (const text of [`${sentence}\nRow 9: K8`, sentence, sentence.replace(/\.$/, '')]) {
      const {pattern, problems} = readRows(`stitches: 8\n${text}`);
      expect(problems).toEqual([]);
      const [row, again] = pattern.entries;
      expect(row?.kind === 'row' && writeSteps(row.steps)).toBe(steps);
      const often =
        again?.kind === 'repeat rows' && again.often.kind === 'more' ? again.often.count.values : [0];
      expect(often).toEqual([more]);
      expect(row?.label?.text).toBe(sentence.includes('round') ? 'Next rnd' : 'Next row');
    }
  });

  test('for each size its own', () => {
    const {pattern} = readRows('stitches: 8 (9)\nWork 2 (3) rows.');
    expect(pattern.entries[1]).toMatchObject({often: {kind: 'more', count: {values: [1, 2]}}});
  });

  test.each([
    'Knit 2 more rows.',
    'Knit 2 rows in rib.',
    'Work 2 rows in zzz.',
    'Row.',
    '2 rows.',
    'Knit 2 rows and rest.',
  ])('%s is none', (sentence) => {
    const {problems} = readRows(`stitches: 8\n${sentence}\nRow 9: K8`);
    expect(problems.map(({message}) => message)).toEqual([`\`${sentence}\` belongs to no row`]);
  });
});
