import {describe, expect, test} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {orderRows} from '../../../src/knitting/rows/row-order.ts';

// What stands before a row, in the wordings of the needlework books and of patterns of today, and in which order the rows
// are worked: the trade's custom is that right-side rows are the odd ones unless a label says otherwise.

const plain = {
  ranges: [],
  every: null,
  side: null,
  says: null,
  isPaired: false,
  isRound: false,
  colour: null,
};
const numbered = (...ranges: readonly (readonly [number, number] | number)[]) => ({
  ranges: ranges.map((each) =>
    typeof each === 'number' ? {first: each, last: each} : {first: each[0], last: each[1]},
  ),
});

describe('a label', () => {
  test.each([
    ['Row 1:', 'Row 1', numbered(1)],
    ['Row 1.', 'Row 1', numbered(1)],
    ['Row 1 -', 'Row 1', numbered(1)],
    ['Row 1 —', 'Row 1', numbered(1)],
    ['Row 1 =', 'Row 1', numbered(1)],
    ['Row 1)', 'Row 1', numbered(1)],
    ['Row 1', 'Row 1', numbered(1)],
    ['Row no. 7:', 'Row no. 7', numbered(7)],
    ['R1:', 'R1', numbered(1)],
    ['Pattern row 3:', 'Pattern row 3', numbered(3)],
    ['Main rnd 3:', 'Main rnd 3', {...numbered(3), isRound: true}],
    ['1st row:', '1st row', numbered(1)],
    ['Second round.—', 'Second round', {...numbered(2), isRound: true}],
    ['3:', '3', numbered(3)],
    ['3.', '3', numbered(3)],
    ['3)', '3', numbered(3)],
    ['Rows 3–8:', 'Rows 3–8', numbered([3, 8])],
    ['Rows 3 to 8:', 'Rows 3 to 8', numbered([3, 8])],
    ['Rows 3 thru 8:', 'Rows 3 thru 8', numbered([3, 8])],
    ['Rows 3/4:', 'Rows 3/4', numbered([3, 4])],
    ['Rows 8-3:', 'Rows 8-3', numbered([8, 8])],
    ['Rows 1 & 3:', 'Rows 1 & 3', numbered(1, 3)],
    ['Rows 1, 3, and 5:', 'Rows 1, 3, and 5', numbered(1, 3, 5)],
    ['Rows 1, 3–5, 9:', 'Rows 1, 3–5, 9', numbered(1, [3, 5], 9)],
    ['1st, 2nd and 3rd rows:', '1st, 2nd and 3rd rows', numbered(1, 2, 3)],
    ['Row 1 (RS):', 'Row 1 (RS)', {...numbered(1), side: 'RS'}],
    ['Row 2 (WS facing):', 'Row 2 (WS facing)', {...numbered(2), side: 'WS'}],
    ['Row 2 [wrong side]:', 'Row 2 [wrong side]', {...numbered(2), side: 'WS'}],
    ['Row 1 right side:', 'Row 1 right side', {...numbered(1), side: 'RS'}],
    ['Row 1 RS:', 'Row 1 RS', {...numbered(1), side: 'RS'}],
    ['Row 1: (RS)', 'Row 1', {...numbered(1), side: 'RS'}],
    ['Row 1 (RS) (inc row):', 'Row 1 (RS) (inc row)', {...numbered(1), side: 'RS', says: 'increase'}],
    ['Row 4 (paired dec):', 'Row 4 (paired dec)', {...numbered(4), says: 'decrease', isPaired: true}],
    ['Row 4 (B):', 'Row 4 (B)', {...numbered(4), colour: 'B'}],
    ['Next row:', 'Next row', {}],
    ['Next rnd (dec):', 'Next rnd (dec)', {isRound: true, says: 'decrease'}],
    ['Inc row (RS):', 'Inc row (RS)', {says: 'increase', side: 'RS'}],
    ['Dec rnd:', 'Dec rnd', {says: 'decrease', isRound: true}],
    ['Set-up row:', 'Set-up row', {}],
    ['Foundation row:', 'Foundation row', {}],
    ['All WS rows:', 'All WS rows', {every: 'WS', side: 'WS'}],
    ['Every wrong side row:', 'Every wrong side row', {every: 'WS', side: 'WS'}],
    ['RS rows:', 'RS rows', {every: 'RS', side: 'RS'}],
    ['All rows:', 'All rows', {every: 'row'}],
    ['Every row.', 'Every row', {every: 'row'}],
    ['Alternate rows:', 'Alternate rows', {every: 'alternate'}],
    ['Every other row:', 'Every other row', {every: 'alternate'}],
    ['Intermediate rows:', 'Intermediate rows', {every: 'alternate'}],
    ['Every following alternate row:', 'Every following alternate row', {every: 'alternate'}],
    ['All even-numbered rows:', 'All even-numbered rows', {every: 'even'}],
    ['Odd rounds:', 'Odd rounds', {every: 'odd', isRound: true}],
    ['Row 2 and all WS rows:', 'Row 2 and all WS rows', {...numbered(2), every: 'WS', side: 'WS'}],
    ['Row 2 (and all WS rows):', 'Row 2 (and all WS rows)', {...numbered(2), every: 'WS', side: 'WS'}],
    [
      'Row 2, and every alternate row:',
      'Row 2, and every alternate row',
      {...numbered(2), every: 'alternate'},
    ],
    [
      '2nd row and every foll alt row:',
      '2nd row and every foll alt row',
      {...numbered(2), every: 'alternate'},
    ],
    ['2nd and all even rounds:', '2nd and all even rounds', {...numbered(2), every: 'even', isRound: true}],
  ])('%s', (text, label, expected) => {
    const block = `stitches: 8\n${text} K8`;
    const {pattern, problems} = readRows(block);
    expect(problems).toEqual([]);
    expect(pattern.entries).toHaveLength(1);
    const [entry] = pattern.entries;
    expect(entry?.label).toMatchObject({...plain, ...expected, text: label});
    expect(block.slice(entry?.label?.span.start, entry?.label?.span.end)).toBe(label);
    expect(entry?.kind === 'row' && entry.steps.length).toBe(1);
  });

  test.each([
    ['Row 1: K8. Row 2: P8.', 2],
    ['Row 1: K8; Row 2: P8', 2],
    ['Row 1: K8 — 2nd row: P8.', 2],
    ['Row 1: K8.\nRow 2\nP8.', 2],
    ['Row 1: K8. 2. P8.', 1],
    ['Row 1: K4,\n k4.', 1],
    ['Row 1: K4,\n4. K4.', 2],
    ['Row 1: (K4, row 2) k4.', 1],
    ['Row 1: K8. All rows are alike. Row 9: P8.', 3],
    ['Row 1: K8.\nAll rows are alike.\nRow 9: P8.', 3],
    ['Row 1: K8.\nEvery row is the same as row 1.\nRow 9: P8.', 3],
  ])('%j are %i rows', (rows, count) => {
    expect(readRows(`stitches: 8\n${rows}`).pattern.entries).toHaveLength(count);
  });

  test('what says nothing to work, and what belongs to no row, are told where they stand', () => {
    const found = (rows: string) => {
      const text = `stitches: 8\n${rows}`;
      return readRows(text).problems.map(({message, span}) => [message, text.slice(span.start, span.end)]);
    };
    expect(found('Row 1:\nRow 2: K.')).toEqual([['`Row 1` says nothing to work', 'Row 1']]);
    expect(found('Row 1: K.\nRow 2:')).toEqual([['`Row 2` says nothing to work', 'Row 2']]);
    expect(found('Row 1:\nK8.\nRow 2\nP8.')).toEqual([]);
    const long = `This is ${'very '.repeat(12)}nice.`;
    expect(found(`${long}\nRow 1: K.`)).toEqual([[`\`${long.slice(0, 60)}…\` belongs to no row`, long]]);
    const sixty = `${'nice '.repeat(11)}words`;
    expect(found(`${sixty}\nRow 1: K.`)).toEqual([[`\`${sixty}\` belongs to no row`, sixty]]);
    expect(found('Nice rows.  \nNice too.\nRow 1: K.').map(([, text]) => text)).toEqual(['Nice rows.']);
  });
});

/** The rows in the order of working: the number, and the label where it is another row's; loops in brackets. */
function orderOf(rows: string) {
  const {pattern, problems: unread} = readRows(`stitches: 8\n${rows}`);
  expect(unread).toEqual([]);
  const {rows: ordered, problems} = orderRows(pattern);
  const named = ({number, row}: {number: number | null; row: {label: {text: string}}}) =>
    `${number ?? '-'} ${row.label.text}`;
  return {
    order: ordered.map((each) =>
      each.kind === 'row' ? named(each) : `(${each.turns.map(named).join(', ')})`,
    ),
    found: problems.map(({message}) => message),
  };
}

describe('the order of rows', () => {
  test.each([
    ['numbers in any order', 'Row 2: P.\nRow 1: K.', ['1 Row 1', '2 Row 2']],
    ['a range', 'Rows 1–2: K.\nRow 3: P.', ['1 Rows 1–2', '2 Rows 1–2', '3 Row 3']],
    ['counting from 1 again', 'Row 1: K.\nRow 2: P.\nRow 1: P.', ['1 Row 1', '2 Row 2', '1 Row 1']],
    ['every row alone', 'Every row: K.', ['1 Every row']],
    [
      'every row between two',
      'Row 1: K.\nRow 4: P.\nEvery row: K.',
      ['1 Row 1', '2 Every row', '3 Every row', '4 Row 4'],
    ],
    [
      'row 2 and every row',
      'Row 1: K.\nRow 2 and every row: P.\nRow 4: K.',
      ['1 Row 1', '2 Row 2 and every row', '3 Row 2 and every row', '4 Row 4'],
    ],
    [
      'wrong-side rows by the way',
      'Row 1: K.\nRow 2 and all WS rows: P.\nRow 3: K.\nRow 5: K.',
      [
        '1 Row 1',
        '2 Row 2 and all WS rows',
        '3 Row 3',
        '4 Row 2 and all WS rows',
        '5 Row 5',
        '6 Row 2 and all WS rows',
      ],
    ],
    [
      'wrong-side rows that are odd',
      'Row 2 (RS): K.\nRow 4 (RS): K.\nAll WS rows: P.',
      ['1 All WS rows', '2 Row 2 (RS)', '3 All WS rows', '4 Row 4 (RS)', '5 All WS rows'],
    ],
    [
      'the sides as a first row says',
      'Row 1 (WS): P.\nRow 3 (WS): P.\nAll RS rows: K.',
      ['1 Row 1 (WS)', '2 All RS rows', '3 Row 3 (WS)', '4 All RS rows'],
    ],
    [
      'sides without a word',
      'Row 2: P.\nRow 4: P.\nAll RS rows: K.',
      ['1 All RS rows', '2 Row 2', '3 All RS rows', '4 Row 4', '5 All RS rows'],
    ],
    [
      'odd rows',
      'Row 2: P.\nRow 4: P.\nOdd rows: K.',
      ['1 Odd rows', '2 Row 2', '3 Odd rows', '4 Row 4', '5 Odd rows'],
    ],
    [
      'even rows',
      'Row 1: K.\nRow 3: K.\nEven rows: P.',
      ['1 Row 1', '2 Even rows', '3 Row 3', '4 Even rows'],
    ],
    [
      'alternate rows',
      'Row 1: K.\nRow 3: K.\nAlternate rows: P.',
      ['1 Row 1', '2 Alternate rows', '3 Row 3', '4 Alternate rows'],
    ],
    [
      'the first and every alternate row',
      'Row 1 and every alternate row: K.\nRow 2: P.\nRow 4: P.',
      [
        '1 Row 1 and every alternate row',
        '2 Row 2',
        '3 Row 1 and every alternate row',
        '4 Row 4',
        '5 Row 1 and every alternate row',
      ],
    ],
    [
      'rows without numbers',
      'Setup row: K.\nRow 1: P.\nNext row: K.\nRow 2: P.',
      ['- Setup row', '1 Row 1', '- Next row', '2 Row 2'],
    ],
    [
      'rows as others',
      'Row 1: K.\nRow 2: P.\nRows 3–6: Rep rows 1 and 2.\nRow 7: As row 2.',
      ['1 Row 1', '2 Row 2', '3 Row 1', '4 Row 2', '5 Row 1', '6 Row 2', '7 Row 2'],
    ],
    [
      'rows without numbers as others',
      'Row 1: K.\nRow 2: P.\nNext row: Rep rows 1 and 2.\nRow 3: K.',
      ['1 Row 1', '2 Row 2', '- Row 1', '- Row 2', '3 Row 3'],
    ],
    [
      'a loop between rows',
      'Row 1: K.\nRow 2: P.\nRep rows 1 and 2 3 more times.\nRow 9: K.',
      ['1 Row 1', '2 Row 2', '(1 Row 1, 2 Row 2)', '9 Row 9'],
    ],
    [
      'from row 2',
      'Row 1: K.\nRow 2: P.\nRow 3: K.\nRep from row 2.',
      ['1 Row 1', '2 Row 2', '3 Row 3', '(2 Row 2, 3 Row 3)'],
    ],
    [
      'all rows',
      'Setup row: K.\nRow 1: P.\nNext row: K.\nRep these rows.',
      ['- Setup row', '1 Row 1', '- Next row', '(- Setup row, 1 Row 1, - Next row)'],
    ],
    [
      'from row 1, rows without numbers left out',
      'Setup row: K.\nRow 1: P.\nNext row: K.\nRep from row 1.',
      ['- Setup row', '1 Row 1', '- Next row', '(1 Row 1)'],
    ],
    [
      'the last two',
      'Row 1: P.\nNext row: K.\nNext row: P.\nRep last 2 rows.',
      ['1 Row 1', '- Next row', '- Next row', '(- Next row, - Next row)'],
    ],
    [
      'the last three',
      'Row 1: P.\nNext row: K.\nRow 2: P.\nRow 3: K.\nRep last 3 rows.',
      ['1 Row 1', '- Next row', '2 Row 2', '3 Row 3', '(- Next row, 2 Row 2, 3 Row 3)'],
    ],
    [
      'the last two, with one by the way',
      'Row 1: K.\nRow 2 and all WS rows: P.\nRow 3: K.\nRep last 2 rows.',
      [
        '1 Row 1',
        '2 Row 2 and all WS rows',
        '3 Row 3',
        '(2 Row 2 and all WS rows, 3 Row 3)',
        '4 Row 2 and all WS rows',
      ],
    ],
    [
      'more than there are',
      'Row 1: K.\nRow 2: P.\nRep last 5 rows.',
      ['1 Row 1', '2 Row 2', '(1 Row 1, 2 Row 2)'],
    ],
  ])('%s', (_, rows, order) => {
    expect(orderOf(rows)).toEqual({order, found: []});
  });

  test.each([
    ['Row 1: K.\nRow 3: K.', ['`Row 3` follows row 1: row 2 is not written']],
    ['Row 1: K.\nRow 4: K.', ['`Row 4` follows row 1: rows 2–3 are not written']],
    [
      'Row 1: K.\nRep rows 1 2 more times.\nRow 4: K.\nRow 6: K.',
      ['`Row 6` follows row 4: row 5 is not written'],
    ],
    ['Row 1: K.\nRep rows 5 and 6.', ['the rows to repeat are not written before this']],
    ['Rep last 2 rows.', ['the rows to repeat are not written before this']],
    [
      'Row 1: K.\nRow 2: P.\nRows 3–7: Rep rows 1 and 2.',
      ['`Rows 3–7` is 5 rows, which repeats of 2 rows do not fill'],
    ],
    ['Row 5001: K.', ['the row numbers run to `5001`']],
    ['Row 5000: K.', []],
    ['Rows 1–5000: K.', []],
    ['Rows 1–5001: K.', ['the row numbers run to `5001`']],
    ['Rows 1–3000: K.\nRows 3001–5000: P.', []],
    ['Rows 1–3000: K.\nRows 3001–5001: P.', ['the row numbers run to `5001`']],
    ['Row 1: K.\nRow 1001: K.\nAll rows: P.', []],
    ['Row 1: K.\nRow 1002: K.\nAll rows: P.', ['`Row 1002` follows row 1: rows 2–1001 are not written']],
  ])('%j', (rows, found) => {
    expect(orderOf(rows).found).toEqual(found);
  });
});
