import {describe, expect, it} from 'vitest';
import {expandRow} from '../../../src/knitting/rows/expand-row.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {usedAbbreviations} from '../../../src/knitting/rows/used-abbreviations.ts';
import {writeRows} from '../../../src/knitting/rows/write-rows.ts';
import {countsOf, prove} from './prove.ts';

describe('the proof', () => {
  it('counts every row in every size', () => {
    const {proved} = prove(
      'sizes: S (M, L)\ncast on: 62 (66, 70)\nRow 1: K1, ssk, k to last 3 sts, k2tog, k1.',
    );
    expect(
      proved.sizes.map(({name, start, rows}) => [
        name,
        start,
        rows.map((row) => [row.in, row.used, row.made, row.out]),
      ]),
    ).toEqual([
      ['S', 62, [[62, 62, 60, 60]]],
      ['M', 66, [[66, 66, 64, 64]]],
      ['L', 70, [[70, 70, 68, 68]]],
    ]);
  });

  it('follows short rows to and fro', () => {
    const proof = prove(`stitches: 32
Row 1: K24, w&t.
Row 2: P16, w&t.
Row 3: K to 2 sts before turn, w&t.
Row 4: P to end.
Row 5: Knit.`);
    expect(proof.found).toEqual([]);
    expect(proof.proved.sizes[0]?.rows.map((row) => [row.used, row.unworked])).toEqual([
      [24, 8],
      [16, 8],
      [14, 10],
      [22, 0],
      [32, 0],
    ]);
  });

  it('alternates sides when flat, keeps to the right side in the round', () => {
    const sides = (text: string) => prove(text).proved.sizes[0]?.rows.map(({side}) => side);
    expect(sides('stitches: 4\nRow 1 (WS): P4.\nRow 2: K4.\nRow 3: P4.')).toEqual(['WS', 'RS', 'WS']);
    expect(sides('stitches: 4\nRnds 1–3: K4.')).toEqual(['RS', 'RS', 'RS']);
    expect(sides('stitches: 4\nin the round\nRows 1–2: K4.')).toEqual(['RS', 'RS']);
  });

  it('works rows in the order of their numbers', () => {
    const proof = prove(
      'stitches: 4\nRows 1 and 3: K1, yo, k to end.\nRow 2 and all WS rows: Purl.\nRow 5: K1, k2tog, k to end.',
    );
    expect(proof.found).toEqual([]);
    expect(countsOf(proof)).toEqual([5, 5, 6, 6, 5, 5]);
  });

  it('reads a bind-off either way, whichever comes out, and says so', () => {
    const separate = prove('stitches: 10\nRow 1: BO 3, k6.');
    expect([separate.found, separate.proved.notes]).toEqual([[], []]);
    const counted = prove('stitches: 10\nRow 1: BO 3, k7.');
    expect(counted.found).toEqual([]);
    expect(counted.proved.notes).toEqual([
      'Read so that the rows come out: the loop left by binding off is the first of the stitches counted after it.',
    ]);
    expect(prove('stitches: 10\nreading: bind-off loop separate\nRow 1: BO 3, k7.').found).toHaveLength(1);
    expect(prove('stitches: 10\nreading: bind-off loop counted\nRow 1: BO 3, k7.').proved.notes).toEqual([]);
  });

  it('takes yarn forward before a purl for a move unless the rows need the stitch', () => {
    expect(countsOf(prove('stitches: 4\nRow 1: K1, yf, p2, k1.'))).toEqual([4]);
    const needed = prove('stitches: 4\nRow 1: K1, yf, p2, k1.\nRow 2: K5.');
    expect([countsOf(needed), needed.found]).toEqual([[5, 5], []]);
    expect(needed.proved.notes).toHaveLength(1);
  });
});

it('expands a row one stitch at a time', () => {
  const {pattern} = readRows('stitches: 7\nRow 1 (WS): P1, *k2tog, yo; rep from * to end.');
  const row = proveRows(pattern, {isPlanned: true}).sizes[0]?.rows[0];
  const operations = row ? [...expandRow(row)].map(({stitch, side}) => `${stitch?.id} ${side}`) : [];
  expect(operations).toEqual(['p WS', 'k2tog WS', 'yo WS', 'k2tog WS', 'yo WS', 'k2tog WS', 'yo WS']);
});

it('lists exactly the abbreviations that are used', () => {
  const {pattern} = readRows(`stitches: 12
MB: uses 1, makes 1, "make bobble: (k1, yo, k1) in next st, turn, p3, turn, k3tog"
Row 1 (RS): K2, 2/2 RC, MB, *p1, yo, p2tog; rep from * to last 2 sts, ssk.`);
  const key = (dialect: 'american' | 'british') =>
    usedAbbreviations(pattern, dialect).map(({abbreviation}) => abbreviation);
  expect(key('american')).toEqual(['2/2 RC', 'k', 'MB', 'p', 'p2tog', 'rep', 'RS', 'ssk', 'st(s)', 'yo']);
  expect(key('british')).toEqual(['C4B', 'k', 'MB', 'p', 'p2tog', 'rep', 'RS', 'ssk', 'st(s)', 'yo']);
  expect(usedAbbreviations(pattern, 'british').find(({id}) => id === 'MB')?.words).toMatch(
    /^make bobble: \(k1/,
  );
});

it('writes what it has read', () => {
  const text = `multiple: 6 + 5
cast on: 29
Row 1 (RS): p5, *yo, k1, yo, p5; rep from * to end.
Rows 2 and 4 (WS): k to last 3 sts, k3. 37 sts.
Row 3 and all RS rows: [k2tog, yo] 2 times, BO 3, sl1 wyif, k to end.
Rep rows 1–4 for pattern.
`;
  expect(writeRows(readRows(text).pattern)).toBe(text);
});

it('takes words and abbreviations, British and American, for the same steps', () => {
  const steps = (row: string) => {
    const entry = readRows(`stitches: 20\nRow 1: ${row}`).pattern.entries[0];
    return JSON.stringify(entry, (key, part) => (key === 'span' ? undefined : part));
  };
  expect(steps('Knit two, purl two together, cast off three stitches, knit to the end')).toBe(
    steps('K2, p2tog, BO 3, k to end'),
  );
  expect(steps('sl1, k1, psso, C4F, sk2po')).toBe(steps('skp, 2/2 LC, sk2p'));
});

it('a bind-off on a line of its own is a row, and is written as one again', () => {
  const text = 'cast on: 24\nRow 1 (RS): Knit.\nBind off 24 sts.\n';
  const {pattern, problems} = readRows(text);
  expect(problems).toEqual([]);
  expect(proveRows(pattern).sizes[0]?.rows.map((row) => [row.in, row.out])).toEqual([
    [24, 24],
    [24, 0],
  ]);
  expect(proveRows(readRows(writeRows(pattern)).pattern).problems).toEqual([]);
  expect(
    proveRows(readRows('cast on: 24\nRow 1 (RS): Knit.\nBind off 25 sts.\n').pattern).problems,
  ).toHaveLength(1);
});
