import {describe, expect, test} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {usedAbbreviations} from '../../../src/knitting/rows/used-abbreviations.ts';
import {writeSteps} from '../../../src/knitting/rows/write-rows.ts';

/** The row is read as it stands, without a stop behind its last word. */
function read(row: string) {
  const block = `stitches: 30\nRow 1: ${row}`;
  const {pattern, problems} = readRows(block);
  const [entry] = pattern.entries;
  return {
    words: writeSteps(entry?.kind === 'row' ? entry.steps : []),
    found: problems.map(({message, span}) => [message, block.slice(span.start, span.end)]),
  };
}

// What lies on the cable needle in front crosses to the left, at the back to the right; the strand on top is named first
// (the standards of a yarn council, as in the published abbreviation lists). Tried with needles.
describe('crossings told in words', () => {
  test.each([
    ['sl 2 to cn and hold in front, k2, k2 from cn', '2/2 LC'],
    ['sl 2 to cn and hold in back, k2, k2 from cn', '2/2 RC'],
    ['sl 3 sts onto cable needle and hold at back of work, k3, then k3 from cable needle', '3/3 RC'],
    ['sl 2 to cn, hold to front, p1, k2 from cn', '2/1 LPC'],
    ['sl 1 to cn, hold to back, k2, p1 from cn', '2/1 RPC'],
    ['sl 1 to cn, hold to back, k2, k1 from cn', '2/1 RC'],
    ['sl 1 to cn and hold in front; k1; k1 off cn', '1/1 LC'],
    ['sl 2 to cn and hold in front, k1, k1, k2 from cn', '2/2 LC'],
    [
      'slip three on a third needle, keeping it in front; knit the next three; knit the three that were slipped on the third needle',
      '3/3 LC',
    ],
    ['sl 2 to cn and hold in front, k1 tbl, k2 tbl from cn', '2/1 LC'],
  ])('%s', (words, name) => {
    expect(read(`K2, ${words}, k to end`)).toEqual({words: `k2, ${name}, k to end`, found: []});
  });

  test.each([
    ['sl 2 to cn and hold in back, p2, p2 from cn', 4],
    ['sl 2 to cn and hold in back, k1, p1, k2 from cn', 4],
    ['sl 2 to cn and hold in front, k1, p2, p2 from cn', 5],
    ['sl 2 to cn and hold in front, p1, p2 from cn', 3],
  ])('%s crosses %i stitches that no name tells', (words, width) => {
    const {pattern, problems} = readRows(`stitches: 30\nRow 1: ${words}, k to end.`);
    const [row] = pattern.entries;
    const [step] = row?.kind === 'row' ? row.steps : [];
    expect(problems).toEqual([]);
    expect(step?.kind === 'work' && [step.stitch.uses, step.stitch.makes]).toEqual([width, width]);
  });

  const noSide = 'does not say whether the cable needle is held at the front or the back';
  const noRest = 'does not say what is worked from the cable needle';
  test.each([
    ['sl 2 to cn, k2, k2 from cn', noSide],
    ['sl 2 to cn and hold in front, k2, k2', noRest],
    ['sl 2 to cn and hold in front, k2, k1 from cn', noRest],
    ['sl 2 to cn and hold in front, k2 from cn', noRest],
    ['sl 2 to cn and hold in front, k2, k2 from left needle', noRest],
    ['sl 2 to cn and hold in front, k2tog, k2 from cn', noRest],
  ])('%s is not told', (words, why) => {
    const {found} = read(`K2, ${words}`);
    expect(found[0]?.[0]).toContain(why);
  });
});

describe('twists told in words', () => {
  test.each([
    ['k2tog but leave sts on needle, knit first st again, slip both sts off needle', 'RT'],
    ['k2tog, leaving them on the needle, then knit the first again, slip both off together', 'RT'],
    ['knit the second st, then the first, slip both off', 'RT'],
    ['skip first st and knit the second st, then knit the first st, slipping both off together', 'RT'],
    ['knit the second st through the back loop, then the first, slip both off', 'LT'],
    [
      'knit into the back of the second st on left needle, then knit into front of first st, slip both off',
      'LT',
    ],
  ])('%s', (words, name) => {
    expect(read(`K2, [${words}], k to end`)).toEqual({words: `k2, ${name}, k to end`, found: []});
  });

  test.each(['k2tog, k1', 'k2tog but k1', 'k in next st, k1'])('%s is none', (words) => {
    expect(read(`K2, ${words}, k to end`).words).not.toContain('T,');
  });
});

/** Exactly what a row uses, in the order of the alphabet. */
test.each([
  ['Row 1: K8.', 'k'],
  ['Row 1 (RS): K to last 2 sts, k2tog.', 'k, k2tog, RS, st(s)'],
  ['Rnd 1: K8.', 'k, rnd'],
  ['Row 2 and all WS rows: P8.', 'p, WS'],
  ['Row 1: *K1, p1; rep from *.', 'k, p, rep'],
  ['Row 1: [K1, p1] 4 times.', 'k, p'],
  ['Row 1: K8.\nRep row 1.', 'k, rep'],
  ['Row 1: BO 2, k to end.', 'BO, k, st(s)'],
  ['Row 1: CO 2, k8.', 'CO, k'],
  ['Row 1: Pick up and k 2, k8.', 'k'],
  ['Row 1: Pm, k4, sm, k2, rm, k2.', 'k, pm, rm, sm'],
  ['Row 1: K4, turn, p4, w&t.', 'k, p, w&t'],
  ['Row 1: Sl1 wyif, k2, sl1 wyib, k to end.', 'k, sl, wyib, wyif'],
  ['Row 1: Sl 1, k2, psso, k5.', 'k, psso, sl'],
  ['Row 1: (K1, yo) in next st, k7.', 'k, yo'],
  ['Row 1: K1, *yo, k1**, p1, rep from * to **, k to end.', 'k, p, rep, yo'],
  ['Row 1: *K1, p1, k1; rep from *, ending last rep k2.', 'k, p, rep'],
])('%j uses %s', (rows, keys) => {
  const {pattern} = readRows(`stitches: 8\n${rows}`);
  const ids = usedAbbreviations(pattern, 'american').map(({id}) => id);
  expect(ids.join(', ')).toBe(keys);
  for (const {words} of usedAbbreviations(pattern, 'british')) expect(words).not.toBe('');
});
