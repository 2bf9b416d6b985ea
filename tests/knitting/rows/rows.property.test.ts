import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {expandRow} from '../../../src/knitting/rows/expand-row.ts';
import {proveForEveryMultiple} from '../../../src/knitting/rows/prove-for-every-multiple.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {usedAbbreviations} from '../../../src/knitting/rows/used-abbreviations.ts';
import {writeRows} from '../../../src/knitting/rows/write-rows.ts';
import {anySteps, laceRow, patternOf, withoutPlaces} from './arbitrary-steps.ts';

// With SWATCHLEAF_LONG set, a long run.
const lines = process.env.SWATCHLEAF_LONG ? 100_000 : 4_000;
const linesPerBlock = 20;
const timeout = process.env.SWATCHLEAF_LONG ? 900_000 : 60_000;
const numRuns = Math.min(400, Math.ceil(lines / 25));

describe('written rows', () => {
  it.each(['american', 'british'] as const)('read again from %s writing are the same steps', (dialect) => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        const text = writeRows(patternOf(steps, 40), dialect);
        const {pattern, problems} = readRows(text);
        expect(problems, text).toEqual([]);
        const row = pattern.entries[0];
        expect(withoutPlaces(row?.kind === 'row' && row.steps), text).toEqual(withoutPlaces(steps));
      }),
      {numRuns},
    );
  });

  it('counted stitch by stitch give the counts that multiplying gives', () => {
    fc.assert(
      fc.property(anySteps, fc.integer({min: 1, max: 90}), (steps, start) => {
        const pattern = patternOf(steps, start);
        const multiplied = proveRows(pattern).sizes[0]?.rows[0];
        const planned = proveRows(pattern, {isPlanned: true}).sizes[0]?.rows[0];
        let [uses, makes] = [0, 0];
        for (const operation of planned ? expandRow(planned) : []) {
          uses += operation.uses;
          makes += operation.makes;
        }
        if (planned?.isSound) expect([multiplied?.used, multiplied?.made]).toEqual([uses, makes]);
        expect(multiplied?.isSound).toBe(planned?.isSound);
        expect(multiplied && multiplied.in - multiplied.used + multiplied.made).toBe(multiplied?.out);
      }),
      {numRuns},
    );
  });

  it('come out on so many stitches just when the law for every number says so', () => {
    fc.assert(
      fc.property(laceRow, fc.integer({min: 1, max: 60}), (steps, start) => {
        const {multiple, holds} = proveForEveryMultiple({
          ...patternOf(steps, start),
          header: {...patternOf(steps, start).header, start: null},
        });
        const repeats = multiple && (start - multiple.plus) / multiple.of;
        const isPromised = holds !== null && Number.isInteger(repeats) && Number(repeats) >= holds.from;
        expect(isPromised).toBe(proveRows(patternOf(steps, start)).sizes[0]?.rows[0]?.isSound);
      }),
      {numRuns},
    );
  });
});

describe('any text', () => {
  const words = fc.constantFrom(
    ...'k p k2tog yo sl 1 2 3 * ** ( ) [ ] , ; . : rep from to end last sts st times more twice row rows rnd 1-4 and all WS RS psso turn pm sm marker cast on bind off in next tog tbl 84 (92, 100) w&t until cn hold front -- — x multiple: 6 + 5 reading: uses makes "'.split(
      ' ',
    ),
  );
  const line = fc.oneof(
    fc.string({unit: 'binary', maxLength: 60}),
    fc.array(words, {maxLength: 30}).map((parts) => `Row 1: ${parts.join(' ')}`),
    fc.array(words, {maxLength: 30}).map((parts) => parts.join(' ')),
  );

  it(
    'is read, proved and written without a throw, and every problem points into it',
    () => {
      fc.assert(
        fc.property(fc.array(line, {minLength: linesPerBlock, maxLength: linesPerBlock}), (parts) => {
          const text = `stitches: 12\n${parts.join('\n')}`;
          const {pattern, problems} = readRows(text);
          const proved = proveRows(pattern, {isPlanned: true});
          proveForEveryMultiple(pattern);
          writeRows(pattern);
          usedAbbreviations(pattern, 'british');
          for (const {span} of [...problems, ...proved.problems]) {
            expect(span.start).toBeGreaterThanOrEqual(0);
            expect(span.end).toBeGreaterThanOrEqual(span.start);
            expect(span.end).toBeLessThanOrEqual(text.length);
          }
        }),
        {numRuns: Math.ceil(lines / linesPerBlock)},
      );
    },
    timeout,
  );
});

/** Texts that lead a careless reader to go over the same ground again and again. */
const hostile: Readonly<Record<string, (n: number) => string>> = {
  'opening brackets': (n) => '('.repeat(n),
  'nested groups': (n) => `${'[k1, '.repeat(n)}k1${'] twice'.repeat(n)}`,
  'groups worked once': (n) => '(k1) '.repeat(n),
  marks: (n) => '*k1 '.repeat(n),
  'repeats of a mark': (n) => '*k1; rep from *, '.repeat(n),
  'repeats without a mark': (n) => 'k1, rep from *, '.repeat(n),
  'passages again': (n) => `*k1, p1 **, ${'rep from * to **, '.repeat(n)}`,
  'unknown words': (n) => 'qqz '.repeat(n),
  'half a sized number': (n) => '1 (2, '.repeat(n),
  'slips passed over': (n) => 'sl1, k1, psso, '.repeat(n),
  'twists that never end': (n) => 'k2tog but leave '.repeat(n),
  'cables that never end': (n) => 'sl 2 to cn hold '.repeat(n),
  labels: (n) => 'k1.\nRow 1: '.repeat(n),
  'lists of row numbers': (n) => `k1.\nRows ${'1, '.repeat(n)}2: k1`,
  'row repeats': (n) => 'k1. Rep row 1. '.repeat(n),
  markers: (n) => `${'pm, '.repeat(n)}\nRow 2: ${'k to marker, sm, '.repeat(n)}`,
  'rows that do not come out': (n) => 'k5, p2tog.\nRow 2: *k7; rep from *.\nRow 1: '.repeat(n),
  'passages and times': (n) => 'then make 1 and knit 2 together 4 times, three times, '.repeat(n),
  'passages inside passages': (n) => `k1, p1${', twice'.repeat(n)}`,
  alternately: (n) => 'alternately k1, p1 alternately; '.repeat(n),
  'ends of the last repeat': (n) => '*k1, p1; rep from *, ending last rep k1, '.repeat(n),
  yarns: (n) => 'k1 A, 2 B, with MC k1 (white), '.repeat(n),
  'letters in brackets': (n) => 'k1 (a) '.repeat(n),
  'sentences that are rows': (n) => 'k to end. Knit 2 rows. Work 3 rows in st st. '.repeat(n),
  'ends of the yarn': (n) => 'break yarn and draw through rem sts, '.repeat(n),
  definitions: (n) => `k1.\n${Array.from({length: n}, (_, k) => `X${k}Y: uses 1, makes 1`).join('\n')}`,
  'definitions in words': (n) => `k1.\n${Array.from({length: n}, (_, k) => `X${k}Y: k1, yo, k1`).join('\n')}`,
  'rounds that turn': (n) => `k5.\nRnd 2: ${'k5, w&t, p10, w&t, '.repeat(n)}k to end of rnd`,
  'rows repeated and growing': (n) => `k1, yo, k to end.\nRep row 1 ${n} more times`,
};

describe.each(Object.entries(hostile))('on %s', (_, make) => {
  it('twice the text is less than three times the work', () => {
    const work = (n: number) => {
      const {pattern, visited} = readRows(`stitches: 100\nRow 1: ${make(n)}`);
      return visited + proveRows(pattern).visited + proveForEveryMultiple(pattern).visited;
    };
    expect(work(1_000) / work(500)).toBeLessThan(3);
  });
});

it('a repeat worked more often is no more work and keeps no more in memory', () => {
  const planOf = (times: number) => {
    const {pattern} = readRows(`stitches: ${times * 4}\nRow 1: [k1, p1, [k2tog, yo] once] ${times} times.`);
    const proved = proveRows(pattern, {isPlanned: true});
    return {
      visited: proved.visited,
      plan: JSON.stringify(proved.sizes[0]?.rows[0]?.plan).length - `${times}`.length,
    };
  };
  expect(planOf(100_000).visited).toBe(planOf(10).visited);
  expect(planOf(100_000).plan).toBeLessThan(planOf(10).plan + 40);
});
