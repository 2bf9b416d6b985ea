import fc from 'fast-check';
import {expect, test} from 'vitest';
import {areaInside, placeOutline} from '../../../src/knitting/pieces/piece-outline.ts';
import {writePieceRows} from '../../../src/knitting/pieces/write-piece-rows.ts';
import {proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import {gauges, samplePieces, work} from './sample-pieces.ts';

const small = fc.integer({min: 1, max: 9});
const shaping = fc
  .tuple(
    fc.constantFrom('increase', 'decrease'),
    fc.integer({min: 1, max: 2}),
    fc.constantFrom('each', 'left', 'right'),
    small,
    small,
  )
  .map(
    ([change, count, edge, every, times]) =>
      `${change} ${count} at ${edge} edge every ${every}th row ${times} times`,
  );
const step = fc.oneof(
  small.map((rows) => `work ${rows} rows`),
  shaping,
  fc
    .tuple(small, small)
    .map(([count, rows]) => `bind off ${count} at the beginning of the next ${rows} rows`),
  fc
    .tuple(fc.array(small, {minLength: 1, maxLength: 4}), fc.constantFrom('each', 'left', 'right'))
    .map(([steps, edge]) => `bind off in steps ${steps.join(', ')} at ${edge} edge`),
);
const piece = fc
  .tuple(fc.integer({min: 20, max: 200}), fc.array(step, {minLength: 1, maxLength: 6}))
  .map(([count, steps]) => [`cast on ${count}`, ...steps, 'bind off'].join('\n'));

const runsOf = (text: string) => work(text).worked.panels.flatMap(({base, parts}) => [base, ...parts]);

test('no row has fewer stitches than none, and each begins with what the row before left', () => {
  fc.assert(
    fc.property(piece, (text) => {
      for (const {rows, startStitches} of runsOf(text)) {
        let before = startStitches;
        for (const row of rows) {
          expect(row.before).toBe(before);
          expect(row.after).toBeGreaterThanOrEqual(0);
          before = row.after;
        }
      }
    }),
  );
});

test('rows add up: a run that can be worked ends at the row where its outline ends, as wide as its last row', () => {
  fc.assert(
    fc.property(piece, (text) => {
      const {worked, problems} = work(text);
      if (problems.length > 0) return;
      for (const {left, right, rows} of worked.panels.map(({base}) => base)) {
        const last = rows.at(-1);
        expect([left.at(-1), right.at(-1)]).toEqual([
          {x: last?.leftX, row: rows.length},
          {x: last?.rightX, row: rows.length},
        ]);
      }
    }),
  );
});

test('the mirror of a piece has the same area', () => {
  fc.assert(
    fc.property(piece, (text) => {
      const swapped = text.replaceAll(/left|right/g, (edge) => (edge === 'left' ? 'right' : 'left'));
      const [one, other] = [text, swapped].map((each) => work(each));
      if (!one || !other || one.problems.length + other.problems.length > 0 || /next [13579] rows/.test(text))
        return;
      const areas = [one, other].map(({worked}) =>
        worked.panels.map((panel) => areaInside(placeOutline(panel, gauges))),
      );
      expect(areas[0]).toEqual(areas[1]);
    }),
  );
});

test('the written rows of any piece can be read, and prove the count that the piece has', () => {
  fc.assert(
    fc.property(fc.oneof(piece, fc.constantFrom(...Object.values(samplePieces))), (text) => {
      const {worked, problems} = work(text);
      if (problems.length > 0) return;
      for (const {text: written, stitches} of writePieceRows(worked)) {
        const read = readRows(written);
        const proved = proveRows(read.pattern);
        expect([...read.problems, ...proved.problems], written).toEqual([]);
        expect(proved.sizes[0]?.rows.at(-1)?.out, written).toBe(stitches);
      }
    }),
    {numRuns: 120},
  );
});
