import {describe, expect, test} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {writeSteps} from '../../../src/knitting/rows/write-rows.ts';

function read(row: string) {
  const block = `stitches: 80\nRow 1: ${row}`;
  const {pattern, problems} = readRows(block);
  const [entry] = pattern.entries;
  const steps = entry?.kind === 'row' ? entry.steps : [];
  return {
    steps,
    words: writeSteps(steps),
    found: problems.map(
      ({message, hint, span}) => [message, hint, block.slice(span.start, span.end)] as const,
    ),
  };
}

function stitchOf(row: string) {
  const [step] = read(row).steps;
  return step?.kind === 'work' ? step.stitch : null;
}

// American names as a yarn council lists them, British ones by width and where the cable needle is held; the words are
// those of both lists, and each strand as it lies on the right side from left to right (tried with needles).
describe('crossings', () => {
  test.each([
    [
      '2/2 RC',
      'C4B',
      ['2 knit', '2 knit'],
      1,
      'slip 2 to the cable needle and hold at the back, k2, k2 from the cable needle',
    ],
    [
      '2/2 LC',
      'C4F',
      ['2 knit', '2 knit'],
      0,
      'slip 2 to the cable needle and hold at the front, k2, k2 from the cable needle',
    ],
    [
      '2/1 RPC',
      'T3B',
      ['1 purl', '2 knit'],
      1,
      'slip 1 to the cable needle and hold at the back, k2, p1 from the cable needle',
    ],
    [
      '2/1 LPC',
      'T3F',
      ['2 knit', '1 purl'],
      0,
      'slip 2 to the cable needle and hold at the front, p1, k2 from the cable needle',
    ],
    [
      '3/1 LPC',
      'Cr4F',
      ['3 knit', '1 purl'],
      0,
      'slip 3 to the cable needle and hold at the front, p1, k3 from the cable needle',
    ],
    [
      '3/1 RC',
      '3/1 RC',
      ['1 knit', '3 knit'],
      1,
      'slip 1 to the cable needle and hold at the back, k3, k1 from the cable needle',
    ],
    [
      '3/2 RC',
      'C5B',
      ['2 knit', '3 knit'],
      1,
      'slip 2 to the cable needle and hold at the back, k3, k2 from the cable needle',
    ],
    [
      '1/3 RPC',
      '1/3 RPC',
      ['3 purl', '1 knit'],
      1,
      'slip 3 to the cable needle and hold at the back, k1, p3 from the cable needle',
    ],
    [
      '2/1/2 RC',
      '2/1/2 RC',
      ['2 knit', '1 knit', '2 knit'],
      2,
      'slip 3 to the cable needle and hold at the back, k2, slip the last 1 from the cable needle back to the left needle, k1, k2 from the cable needle',
    ],
    [
      '3/1/2 LPC',
      '3/1/2 LPC',
      ['3 knit', '1 purl', '2 knit'],
      0,
      'slip 4 to the cable needle and hold at the front, k2, slip the last 1 from the cable needle back to the left needle, p1, k3 from the cable needle',
    ],
    [
      '30/30 RC',
      'C60B',
      ['30 knit', '30 knit'],
      1,
      'slip 30 to the cable needle and hold at the back, k30, k30 from the cable needle',
    ],
  ])('%s', (american, british, strands, front, words) => {
    const stitch = stitchOf(american);
    const {face} = stitch ?? {};
    expect(stitch?.names).toEqual({
      american: {abbreviation: american, words},
      british: {abbreviation: british, words},
    });
    expect(
      face?.shape === 'crossing' && [
        face.strands.map((each) => `${each.stitches} ${each.surface}`),
        face.front,
      ],
    ).toEqual([strands, front]);
    const width = strands.reduce((sum, strand) => sum + Number.parseInt(strand, 10), 0);
    expect([stitch?.uses, stitch?.makes, stitch?.kind]).toEqual([width, width, 'crossing']);
  });

  test.each([
    ['C6F', '3/3 LC'],
    ['C5B', '3/2 RC'],
    ['T3B', '2/1 RPC'],
    ['T4F', '2/2 LPC'],
    ['Cr4F', '3/1 LPC'],
    ['Cr3B', '2/1 RPC'],
    ['RT', 'RT'],
    ['LT', 'LT'],
  ])('%s is %s', (british, american) => {
    expect(stitchOf(british)?.id).toBe(american);
  });

  test('twists cross one over one, to the right with the right stitch in front', () => {
    for (const [name, front] of [
      ['RT', 1],
      ['LT', 0],
    ] as const) {
      expect(stitchOf(name)).toMatchObject({uses: 2, makes: 2, face: {shape: 'crossing', front}});
    }
  });

  test.each(['31/30 RC', '2/0 RC', '0/2 LC', 'C61B', 'C1F'])('%s cannot be worked', (name) => {
    expect(read(name).found[0]?.[0]).toMatch(/^`.*` is not a stitch: its numbers cannot be worked$/);
  });
});

describe('how many can be worked as one', () => {
  test.each([
    ['k2tog', 2, 1],
    ['k60tog', 60, 1],
    ['p60tog tbl', 60, 1],
    ['k2 in next st', 1, 2],
    ['k3 in next st', 1, 3],
    ['k4 in next st', 1, 4],
    ['k20 in next st', 1, 20],
    ['cross 2', 2, 2],
    ['cross 60', 60, 60],
  ])('%s uses %i and makes %i', (row, uses, makes) => {
    const stitch = stitchOf(row);
    expect([read(row).found, stitch?.uses, stitch?.makes]).toEqual([[], uses, makes]);
  });

  test.each(['k61tog', 'k1tog', 'cross 61', 'cross 1'])('%s is refused', (row) => {
    expect(read(row).found).not.toEqual([]);
  });

  // Seen from the side on which it is worked: common knowledge of the trade.
  test.each([
    ['k2tog', 'right', false],
    ['k2tog tbl', 'left', true],
    ['p2tog', 'left', false],
    ['p2tog tbl', 'right', true],
  ])('%s leans %s', (row, lean, twisted) => {
    expect(stitchOf(row)).toMatchObject({lean, kind: 'decrease', face: {shape: 'decrease', lean, twisted}});
  });
});

// Shaping that is said of the whole row.
test.each([
  ['Knit, dec 1 st at each end', 'k2tog, k to last 2 sts, k2tog'],
  ['Purl, dec 1 st at each end', 'p2tog, p to last 2 sts, p2tog'],
  ['Knit, inc 1 st at each end', 'kfb, k to last st, kfb'],
  ['Purl, inc 1 st at each end', 'pfb, p to last st, pfb'],
  ['Dec 1 st at beg of row, k to end', 'k2tog, k to end'],
  ['K to end, dec 1 st at end of row', 'k to last 2 sts, k2tog'],
  ['Inc 1 st at each end of row', 'kfb, patt to last st, kfb'],
  ['Dec 1 st at each end of row', 'k2tog, patt to last 2 sts, k2tog'],
  ['K4, p to end, inc 1 st at end of row', 'k4, p to last st, pfb'],
])('%s', (row, words) => {
  const {words: read_, found} = read(row);
  expect([read_, found]).toEqual([words, []]);
});

// A word that is not known is told whole, with the nearest that is; the rest of the row stays.
test.each([
  ['K2, k2tgo, k1', 'k2, k1', 'k2tgo', /^`k2tgo` is not a stitch/, /^Perhaps `k2tog` is meant; /],
  ['K2zq, k1', 'k1', 'K2zq', /^`K2zq` is not a stitch/, /^Perhaps|^Write/],
  ['K2, zq7 k3, p1', 'k2, p1', 'zq7', /^`zq7` is not a stitch/, /^Perhaps|^Write/],
  [
    'K2, zzzzzz, p1',
    'k2, p1',
    'zzzzzz',
    /^`zzzzzz` is not a stitch/,
    /^Write it as the abbreviation lists do/,
  ],
  [`K2, ${'z'.repeat(40)}, p1`, 'k2, p1', 'z'.repeat(40), /^`z{40}` is not/, /^Write/],
  [`K2, ${'z'.repeat(41)}, p1`, 'k2, p1', 'z'.repeat(41), /^`z{40}…` is not/, /^Write/],
  ['K2, to, p1', 'k2, p1', 'to', /^`to` says nothing at this place$/, /^Check the words around `to`/],
  ['K2, purlwsie', 'k2', 'purlwsie', /^`purlwsie` is not/, /^Perhaps `purlwise` is meant/],
])('%s', (row, words, place, message, hint) => {
  const {words: left, found} = read(row);
  expect([left, found.map(([, , text]) => text)]).toEqual([words, [place]]);
  expect(found[0]?.[0]).toMatch(message);
  expect(found[0]?.[1]).toMatch(hint);
});

test.each([
  ['Sl 1, k1, psso', 'skp'],
  ['Sl 1, p1, psso', 'spp'],
  ['Sl 1, k2tog, psso', 'sk2p'],
  ['Sl 2, k1, p2sso', 's2kp'],
  ['Sl 2, p1, p2sso', 's2pp'],
  ['Sl 1, k2, psso', 'sl1, k2, psso'],
  ['Sl 1, k1, yo, k1, psso', 'sl1, k1, yo, k1, psso'],
  ['Sl 3, k1, psso', 'sl2, skp'],
  ['Sl 3, k1, p2sso', 'sl1, s2kp'],
  ['Sl 2, k1, pass the slipped sts over', 's2kp'],
  ['Sl 2, k1, pass both over', 's2kp'],
  ['Sl 1, k1, pass the slipped st over', 'skp'],
  ['K4, sl 1, k1, psso, k2', 'k4, skp, k2'],
  ['Yo, k3, pass yo over', 'yo, k3, psso'],
])('%s is %s', (row, words) => {
  const {words: written, found} = read(row);
  expect([written, found]).toEqual([words, []]);
});
