import fc from 'fast-check';
import {expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {nameSlips} from '../../../src/knitting/rows/name-slips.ts';
import {proveForEveryMultiple} from '../../../src/knitting/rows/prove-for-every-multiple.ts';
import {usedAbbreviations} from '../../../src/knitting/rows/used-abbreviations.ts';
import {writeRows} from '../../../src/knitting/rows/write-rows.ts';
import {prove} from './prove.ts';

// Lines made of the trade's own pieces, of noise, and of both; with SWATCHLEAF_LONG set a hundred thousand of them.
const lines = process.env.SWATCHLEAF_LONG ? 100_000 : 1_000;
const linesInText = 10;
const timeout = process.env.SWATCHLEAF_LONG ? 900_000 : 60_000;

const piece = fc.constantFrom(
  ...'k p k2 p3 k2tog ssk yo sl1 psso tbl wyif K1 *; ; , . ( ) [ ] { } ** † * - – — 3 (4, 5) 84 (92, 100) rep from * to end to last 3 sts'.split(
    ' ',
  ),
  'rep from * to last 3 sts',
  'rep from * 4 more times',
  'Row 1 (RS):',
  'Row 2 and all WS rows:',
  'Rows 3–8:',
  'Rnd 4:',
  'Rep rows 1–4 three more times',
  'cast on: 29',
  'multiple: 6 + 5',
  'in the round',
  'MB: uses 1, makes 5, "bobble"',
  'bind off 3 sts',
  'cast on 4 sts',
  'pm A',
  'k to marker A',
  'w&t',
  'turn',
  '2/2 RC',
  'C6F',
  '(k1, yo, k1) in next st',
  'ending last rep k2 instead of k3',
  'omitting last 2 sts of last rep',
  'sl 2 sts to cn and hold in front, k2, k2 from cn',
  'Break yarn and draw through remaining 8 sts',
  'inc 6 sts evenly across row',
  'sl. 1, k. 1, p.s.s.o.',
  'work in pattern as set',
  '20 sts',
  'then make 1 and knit 2 together 4 times',
  ', three times',
  'alternately',
  'slip 1, narrow, and bind',
  'bring the wool forward',
  'and so on to the end',
  'repeat five times more from *',
  'work from * to *',
  'ending last rep with k1',
  'With MC,',
  'k3 A, 2B',
  'With drab,',
  'Knit 4 rows.',
  'Two plain rows.',
  'Cast on any number of stitches divisible by 6, and 5 over.',
  'These 8 rows form the pattern.',
  'Commence again at the first row.',
  'Work four other rows, similar to the two last.',
  'T2: uses x, makes 1',
  'XB: (k1, yo, k1) in next st, turn, p3, turn, k3tog',
  'k to 1 st before gap',
  'p to beg of rnd',
  'bind off until 5 sts remain',
);
const word = fc.oneof(
  {weight: 8, arbitrary: piece},
  {weight: 1, arbitrary: fc.string({maxLength: 6})},
  {weight: 1, arbitrary: fc.string({unit: 'binary', maxLength: 4})},
  {weight: 1, arbitrary: fc.nat(1_000_000_000).map(String)},
);
const line = fc.array(word, {maxLength: 12}).map((words) => words.join(' '));

test(
  'whatever is written, reading, proving, writing and charting never throw, and every problem lies in the text',
  () => {
    fc.assert(
      fc.property(fc.array(line, {minLength: linesInText, maxLength: linesInText}), (written) => {
        const text = written.join('\n');
        const {pattern, problems, proved} = prove(text);
        for (const {span} of [...problems, ...nameSlips(pattern, proved.problems)]) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeLessThanOrEqual(text.length);
          expect(span.end).toBeGreaterThanOrEqual(span.start);
        }
        proveForEveryMultiple(pattern);
        writeRows(pattern);
        usedAbbreviations(pattern, 'british');
        chartOfRows(text);
      }),
      {numRuns: lines / linesInText},
    );
  },
  timeout,
);
