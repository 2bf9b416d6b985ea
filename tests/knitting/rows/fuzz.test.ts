import fc from 'fast-check';
import {expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {prove} from './prove.ts';

// Lines made of the trade's own pieces, of noise, and of both; `npm run test:long` tries a hundred thousand of them.
const lines = process.env.SWATCHLEAF_LONG ? 100_000 : 1_000;
const linesInText = 10;

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
);
const word = fc.oneof(
  {weight: 8, arbitrary: piece},
  {weight: 1, arbitrary: fc.string({maxLength: 6})},
  {weight: 1, arbitrary: fc.string({unit: 'binary', maxLength: 4})},
  {weight: 1, arbitrary: fc.nat(1_000_000_000).map(String)},
);
const line = fc.array(word, {maxLength: 12}).map((words) => words.join(' '));

test('whatever is written, reading, proving and charting never throw, and every problem lies in the text', () => {
  fc.assert(
    fc.property(fc.array(line, {minLength: linesInText, maxLength: linesInText}), (written) => {
      const text = written.join('\n');
      const {problems, proved} = prove(text);
      for (const {span} of [...problems, ...proved.problems]) {
        expect(span.start).toBeGreaterThanOrEqual(0);
        expect(span.end).toBeLessThanOrEqual(text.length);
        expect(span.end).toBeGreaterThanOrEqual(span.start);
      }
      chartOfRows(text);
    }),
    {numRuns: lines / linesInText},
  );
});
