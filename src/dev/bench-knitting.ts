import {proveRows} from '../knitting/rows/prove-rows.ts';
import {readRows} from '../knitting/rows/read-rows.ts';
import {assemble} from '../pipeline.ts';
import {lookUpTable} from '../tables/index.ts';

/** A lace of 400 rows on 301 stitches: the size that reading and proving are measured at. */
const lace = [
  'multiple: 12 + 1',
  'cast on: 301',
  ...Array.from({length: 200}, (_, index) => [
    `Row ${2 * index + 1} (RS): K1, *yo, ssk, k3, p1, k3, k2tog, yo, p1; rep from * to end.`,
    `Row ${2 * index + 2} (WS): *K1, p1, k4, p1, k4, p1; rep from * to last st, k1.`,
  ]).flat(),
].join('\n');

/** Times of the arithmetic in milliseconds, medians of `runs`, beside the floor of splitting the same text into words. */
export function benchKnitting(
  runs: number,
  example: Parameters<typeof assemble>[0],
  today: string,
): readonly string[] {
  const {binder} = assemble(example, today);
  const vest = binder?.items.find(({id}) => id === 'P-01');
  const floor = timed(runs, () => lace.split(/\s+/));
  const rows = timed(runs, () => proveRows(readRows(lace).pattern));
  const lines = [
    `read and prove ${lace.split('\n').length - 2} rows of 301 stitches: ${rows.toFixed(1)} ms = ${(rows / floor).toFixed(0)} × splitting the text into words`,
  ];
  if (binder && vest) {
    const pieces = timed(runs, () =>
      lookUpTable(binder, vest)('piece', {name: 'front', against: 'back', rows: 'yes'}),
    );
    lines.push(`vest front and back read, worked, joined, drawn and written: ${pieces.toFixed(1)} ms`);
  }
  return lines;
}

function timed(runs: number, work: () => unknown): number {
  const times = Array.from({length: runs + 2}, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  // The first two runs load and compile.
  return times.slice(2).toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN;
}
