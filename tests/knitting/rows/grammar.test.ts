import {describe, expect, test} from 'vitest';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {writeSteps} from '../../../src/knitting/rows/write-rows.ts';

// How the words of a row hang together: marks, repeats, brackets, clauses. On the left as the books and patterns of two
// centuries write it, on the right what a knitter does, in the one way in which it is written here; where a row can be
// read in two ways, both, between braces.

function readBlock(block: string) {
  const {pattern, problems} = readRows(block);
  const [entry] = pattern.entries;
  const steps = entry?.kind === 'row' ? entry.steps : [];
  const words = steps.map((step) =>
    step.kind === 'either' ? `{${step.ways.map((way) => writeSteps(way)).join(' | ')}}` : writeSteps([step]),
  );
  return {
    words: words.join(', '),
    found: problems.map(({message, span}) => [message, block.slice(span.start, span.end)]),
  };
}

/** What the row says, which is the same when the text breaks off behind its last word. */
function read(row: string) {
  const said = readBlock(`stitches: 30\nRow 1: ${row}.\n`);
  expect(readBlock(`stitches: 30\nRow 1: ${row}`)).toEqual(said);
  return said;
}

describe('marks and repeats', () => {
  test.each([
    ['(a) K1, p1; rep from (a) to end', '*k1, p1; rep from * to end'],
    ['K1, (a) k1, p1; rep from (a) to last 2 sts, k2', 'k1, *k1, p1; rep from * to last 2 sts, k2'],
    ['K2, [b] p1, k1; rep from [b]', 'k2, *p1, k1; rep from *'],
    ['*K1, p1* 3 times, k1', '*k1, p1; rep from * 3 times, k1'],
    ['*K1, p1* around', '*k1, p1; rep from * to end'],
    ['*K1, p1', '*k1, p1; rep from *'],
    ['K1, *p1, k1*, p2; rep between *s 3 times, k1', 'k1, p1, k1, p2, [p1, k1] 3 times, k1'],
    ['K1, *p1, k1*, p2; rep between * and * 3 times, k1', 'k1, p1, k1, p2, [p1, k1] 3 times, k1'],
    ['K1, *p1, k1*, rep between *s to last st, p1', 'k1, *p1, k1; rep from * to last st, p1'],
    ['K1, *p1, k1**, p2; rep from * to **, k1', 'k1, p1, k1, p2, [p1, k1] 1 times, k1'],
    ['K1, *p1, k1**, p2; rep from * to ** 3 more times, k1', 'k1, p1, k1, p2, [p1, k1] 3 times, k1'],
    ['K1, * p1, k1 *, p3, work from * to * twice', 'k1, p1, k1, p3, [p1, k1] 2 times'],
    [
      'K1, *p1, k1**, p2; rep from * until **, to last 3 sts, k3',
      'k1, p1, k1, p2, [p1, k1] to last 3 sts, k3',
    ],
    ['K1, p1; rep to end', '*k1, p1; rep from * to end'],
    ['K1, p1; repeat 3 times', '*k1, p1; rep from * 3 times'],
    ['K1, p1; rep', '*k1, p1; rep from *'],
    [
      '*K1, **p1, rep from ** twice, k1; rep from * to end',
      '*k1, **p1; rep from ** 2 times, k1; rep from * to end',
    ],
    ['K1, p1 alternately', '*k1, p1; rep from *'],
    ['K1, p1 alternately to last 2 sts, k2', '*k1, p1; rep from * to last 2 sts, k2'],
    ['Alternately k1, p1', '*k1, p1; rep from *'],
    ['K1, p1; continue in the same way to the end', '*k1, p1; rep from * to end'],
    ['K1, p1; continue thus as before', '*k1, p1; rep from *'],
    ['K1, p1; and so on to the end', '*k1, p1; rep from * to end'],
    ['K3, *yo, k1, rep from *, to last 2 sts, k2', 'k3, *yo, k1; rep from * to last 2 sts, k2'],
    ['K3, * over, k1; repeat five times more from *; k6', 'k3, *yo, k1; rep from * 5 more times, k6'],
    ['K3, * over, k1; repeat from the star, k2', 'k3, *yo, k1; rep from *, k2'],
    ['K3, * over, k1; repeat between the stars twice, k2', 'k3, *yo, k1; rep from * 2 times, k2'],
    ['K1; continue to last 2 sts, k2', '*k1; rep from * to last 2 sts, k2'],
  ])('%s', (row, words) => {
    expect(read(row)).toEqual({words, found: []});
  });

  test.each([
    ['Work from * to *', '`Work from * to *` finds no `*` before it in the row', 'Work from * to *'],
    ['Rep to end', '`Rep to end` has nothing before it to repeat', 'Rep to end'],
    ['K1, *; rep from *', 'there is nothing between the mark and `rep from *`', 'rep from *'],
    ['K1, *p1; rep from **', '`rep from **` finds no `**` before it in the row', 'rep from **'],
    ['Twice', '`Twice` stands where nothing has been worked yet', 'Twice'],
    ['To end', '`To end` stands where nothing has been worked yet', 'To end'],
    ['3 times, k1', '`3 times` stands where nothing has been worked yet', '3 times'],
  ])('%s', (row, message, text) => {
    expect(read(row).found).toEqual([[message, text]]);
  });
});

describe('brackets', () => {
  test.each([
    ['Work (k1, p1) twice', '[k1, p1] 2 times'],
    ['[K1, p1] rep 3 times', '[k1, p1] 3 times'],
    ['[K1, p1]3, k1', '[k1, p1] 3 times, k1'],
    ['[K1, p1] rep from these to last st, k1', '[k1, p1] to last st, k1'],
    ['(K1, p1), k1', 'k1, p1, k1'],
    ['K1, () p1', 'k1, p1'],
    ['(K1, p1) in each st', '[(k1, p1) in next st] to end'],
    ['(K1, p1) in every st to last 2 sts, k2', '[(k1, p1) in next st] to last 2 sts, k2'],
    ['(K1, p1) into each st to marker, k2', '[(k1, p1) in next st] to marker, k2'],
    ['Kfb in each st to last 2 sts, k2', 'kfb to last 2 sts, k2'],
    [
      '(K1, yo, k1) in next st, k1, (k1, yo, k1), p1',
      '(k1, yo, k1) in next st, k1, (k1, yo, k1) in next st, p1',
    ],
    ['(K1, yo, k1) in next st, (k1, yo) twice', '(k1, yo, k1) in next st, [k1, yo] 2 times'],
    ['(K1, yo, k1) in next st, (k1, yo, k1) twice', '(k1, yo, k1) in next st, [k1, yo, k1] 2 times'],
    ['(K1, yo, k1) in next st, (k1, yo, p1), k1', '(k1, yo, k1) in next st, k1, yo, p1, k1'],
    ['K1, (p1, k1) twice in next st', 'k1, ([p1, k1] 2 times) in next st'],
    ['K2, (k1, p1) into next 2 sts', 'k2, (k1, p1) in next 2 sts'],
    ['K1, (see note below) p1', 'k1, p1'],
    ['K1 (RS), p1', 'k1, p1'],
    ['K3 (white), k2', 'k3 with white, k2'],
    ['(MC) k3, p2', 'k3 with MC, p2 with MC'],
    ['K3, (MC) k2', 'k3, k2 with MC'],
  ])('%s', (row, words) => {
    expect(read(row)).toEqual({words, found: []});
  });

  test.each([
    ['[K1', 'the bracket is not closed', '['],
    ['K1]', '`]` closes a bracket that was not opened', ']'],
    ['()', '`Row 1` says nothing to work', 'Row 1'],
  ])('%s', (row, message, text) => {
    expect(read(row).found).toEqual([[message, text]]);
  });

  test('twenty-four brackets in one another are read, more are not', () => {
    const nested = (depth: number) => read(`${'['.repeat(depth)}k1${']'.repeat(depth)}`);
    expect(nested(24)).toEqual({words: 'k1', found: []});
    expect(nested(25).found[0]).toEqual(['the brackets are nested too deeply', '[']);
  });
});

describe('clauses', () => {
  test.each([
    ['K1, yo, 3 times, k to end', '{[k1, yo] 3 times | k1, yo 3 times}, k to end'],
    ['K1, yo; k2tog, p1, twice', 'k1, yo, {[k2tog, p1] 2 times | k2tog, p2}'],
    ['K1, then yo, k1, twice, p1', 'k1, {[yo, k1] 2 times | yo, k2}, p1'],
    ['K1 and yo 3 times', '{[k1, yo] 3 times | k1, yo 3 times}'],
    ['K1, p1, 2 more times', '{[k1, p1] 2 more times | k1, p 2 more times}'],
    ['K1 3 times', 'k3'],
    ['K2tog 3 times, k1', 'k2tog 3 times, k1'],
    ['K3tog tbl twice', 'k3tog tbl 2 times'],
    ['Sl 1, k1, psso 3 times', 'skp 3 times'],
    ['Yo twice, k1', 'yo 2 times, k1'],
    ['2 overs, k1', 'yo 2 times, k1'],
    ['K1; p1: k1. p1', 'k1, p1, k1, p1'],
    ['K1 - p1! k1', 'k1, p1, k1'],
    ['K1, always p1, but k1', 'k1, p1, k1'],
    ['K1, leaving the rest, p1', 'k1, p1'],
    ['K1, p1 into next st', '(k1, p1) in next st'],
    ['K2tog, k1, p1, k1 into next st', 'k2tog, (k1, p1, k1) in next st'],
    ['K2; p1, yo, p1, all in next st', 'k2, (p1, yo, p1) in next st'],
    ['K2, p1, k1 into next st', 'k2, (p1, k1) in next st'],
    ['K2, inc 2 sts evenly across row', 'inc 2 sts evenly across row'],
    ['Patt, dec 2 sts evenly', 'dec 2 sts evenly across row'],
    ['Ssk, inc 2 sts evenly', 'ssk, inc 2 sts evenly across row'],
    ['Cast off 2 and knit to end', 'BO 2, k to end'],
    ['Bind off 2 sts loosely in rib and purl 3', 'BO 2, p3'],
    ['Bind off 2 sts in rib and loosely, k1', 'BO 2, k1'],
    ['Cast on 2 and turn', 'CO 2, turn'],
    ['K1; turn and p1', 'k1, turn, p1'],
    ['Sl 1, k1, pass slipped st over', 'skp'],
    ['Sl 1, k2tog, and bind', 'sk2p'],
    ['Sl 2, k1, p2sso', 's2kp'],
    ['Sl 3, k1, psso', 'sl2, skp'],
    ['Sl 1, p2tog, psso', 'sl1, p2tog, psso'],
    ['Yo, k3, pass yo over', 'yo, k3, psso'],
  ])('%s', (row, words) => {
    expect(read(row)).toEqual({words, found: []});
  });

  test.each([
    ['K5 MC, 3 CC, 2 MC', 'k5 with MC, k3 with CC, k2 with MC'],
    ['P2 MC, k2tog, 3 CC', 'p2 with MC, k2tog, p3 with CC'],
    ['3 MC, 2 CC', 'patt 3 sts with MC, patt 2 sts with CC'],
    ['With MC k2, with CC p2', 'k2 with MC, p2 with CC'],
    ['Drop A, k5', 'k5'],
    ['Break MC, k5', 'k5'],
    ['Join B, k3', 'k3 with B'],
    ['Pick up B, k5', 'k5 with B'],
    ['Pick up and k 3, k5', 'pick up and k 3, k5'],
    ['K1b, k1 B', 'k1b, k1 with B'],
    ['P1b, p1', 'p1b, p1'],
  ])('yarns: %s', (row, words) => {
    expect(read(row)).toEqual({words, found: []});
  });

  test.each([
    ['2/0 RC', '`2/0 RC` is not a stitch: its numbers cannot be worked', '2/0 RC'],
    ['MB, k1', '`MB` is worked differently in every pattern and is not defined here', 'MB'],
    ['K2tog 3', '`3` is not a stitch or an instruction that is known here', '3'],
    ['In next st, k1', '`In next st` does not say what is worked into it', 'In next st'],
    ['K1, psso', '`psso` finds no slipped stitch before it', 'psso'],
    ['Cast on, k1', '`Cast on` does not say how many stitches', 'Cast on'],
  ])('%s', (row, message, text) => {
    expect(read(row).found).toEqual([[message, text]]);
  });
});
