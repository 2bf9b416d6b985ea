import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {type Folded, foldRepeats} from '../../src/knitting/fold-repeats.ts';
import {sharesOf, sharesWithHalfEnds} from '../../src/knitting/share-evenly.ts';
import {spreadEvenly} from '../../src/knitting/spread-evenly.ts';
import {spreadInRib} from '../../src/knitting/spread-in-rib.ts';
import {type SpreadKind, spreadWork, writeSpread} from '../../src/knitting/spread-work.ts';
import {stitches} from '../../src/knitting/units.ts';
import {writeRow} from '../../src/knitting/write-row.ts';
import {workRow} from './worked-row.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const apart = (values: readonly number[]) =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);

/** The sums of all runs of `length` neighbours, round the join too. */
function runsInRound(shares: readonly number[], length: number): number[] {
  return shares.map((_, start) =>
    sum(Array.from({length}, (_each, index) => shares[(start + index) % shares.length] ?? 0)),
  );
}

const total = fc.nat({max: 2000});
const parts = fc.integer({min: 1, max: 60});

test('shares add up exactly and no two differ by more than one', () => {
  fc.assert(
    fc.property(total, parts, (stitchCount, places) => {
      const shares = sharesOf(stitchCount, places);
      expect(shares).toHaveLength(places);
      expect(sum(shares)).toBe(stitchCount);
      expect(apart(shares)).toBeLessThanOrEqual(1);
    }),
  );
});

test('in the round, any run of neighbouring shares holds as much as any other of its length, to one, wherever the round begins', () => {
  fc.assert(
    fc.property(total, fc.integer({min: 1, max: 24}), fc.nat(), (stitchCount, places, turn) => {
      const shares = sharesOf(stitchCount, places);
      const turned = [...shares.slice(turn % places), ...shares.slice(0, turn % places)];
      for (let length = 1; length <= places; length++) {
        expect(apart(runsInRound(turned, length))).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test('with half a space at the ends the sum is exact, inner spaces differ by one at most, and each end is half a space to less than one stitch', () => {
  fc.assert(
    fc.property(total, parts, (stitchCount, places) => {
      const spaces = sharesWithHalfEnds(stitchCount, places);
      expect(spaces).toHaveLength(places + 1);
      expect(sum(spaces)).toBe(stitchCount);
      expect(apart(spaces.slice(1, -1))).toBeLessThanOrEqual(1);
      for (const end of [spaces[0] ?? 0, spaces.at(-1) ?? 0]) {
        expect(Math.abs(end - stitchCount / (2 * places))).toBeLessThan(1);
      }
    }),
  );
});

function unfold(folded: readonly Folded<string>[]): string[] {
  return folded.flatMap((part) =>
    part.kind === 'one' ? [part.value] : Array.from({length: part.times}, () => unfold(part.passage)).flat(),
  );
}

test('unfolding folded repeats gives the row back, and folding never lengthens it', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom('k1', 'k2', 'k2tog'), {maxLength: 60}), (row) => {
      const folded = foldRepeats(row);
      expect(unfold(folded)).toEqual(row);
      expect(folded.length).toBeLessThanOrEqual(row.length);
      expect(workRow(writeRow(row)).steps).toEqual(row);
    }),
  );
});

describe('what was spread', () => {
  const kind = fc.constantFrom<SpreadKind>(
    'decreases',
    'bar increases',
    'raised increases',
    'yarn overs',
    'buttonholes',
    'beads',
    'markers',
  );
  const ends = fc.oneof(fc.constantFrom('half' as const, 'whole' as const, null), fc.nat({max: 6}));
  const request = fc.record({
    kind,
    over: fc.integer({min: 1, max: 300}),
    times: fc.integer({min: 1, max: 60}),
    width: fc.integer({min: 1, max: 5}),
    ends,
  });

  test('is evenly spaced, and the row as written works every stitch and leaves the count it says; or else it says what would work', () => {
    fc.assert(
      fc.property(request, ({kind: what, over, times, width, ends: at}) => {
        const work = spreadWork(what, width);
        const {needsNeighbours} = work;
        const result = spreadEvenly({
          stitches: stitches(over),
          places: times,
          work,
          ends: at,
          needsNeighbours,
        });
        if (!result.ok) {
          expect(result.problems[0]?.hint).toMatch(/^(Work|Begin|Leave)/);
          return;
        }
        const {spaces, between} = result.value;
        expect(sum(spaces) + times * work.uses).toBe(over);
        expect((between?.longest ?? 0) - (between?.shortest ?? 0)).toBeLessThanOrEqual(1);
        if (typeof at === 'number') expect([spaces[0], spaces.at(-1)]).toEqual([at, at]);
        let needle = over;
        for (const row of writeSpread(result.value, what, width, at === null)) {
          const [, text = '', count = ''] = /: (.*\.) \((\d+) sts?\)$/.exec(row) ?? [];
          const worked = workRow(text);
          expect(worked.uses).toBe(needle);
          expect(worked.makes).toBe(Number(count));
          needle = worked.makes;
        }
        expect(needle).toBe(result.value.result);
      }),
      {numRuns: 300},
    );
  });

  test('fits exactly as often as the hint says, and not once more', () => {
    fc.assert(
      fc.property(request, ({kind: what, over, width, ends: at}) => {
        const work = spreadWork(what, width);
        const spread = (places: number) =>
          spreadEvenly({
            stitches: stitches(over),
            places,
            work,
            ends: at,
            needsNeighbours: work.needsNeighbours,
          });
        const tooMany = spread(400);
        if (tooMany.ok) return;
        const [, most] = /at most (\d+) (?:of them|time)/.exec(tooMany.problems[0]?.hint ?? '') ?? [];
        if (most === undefined) return;
        // One place alone has no space between, so it fits fixed ends only by luck.
        if (Number(most) > 1) expect(spread(Number(most)).ok).toBe(true);
        expect(spread(Number(most) + 1).ok).toBe(false);
      }),
    );
  });
});

test('buttonholes in rib stand centred in purl ribs, the free ribs between them differ by one at most, and both rows work out', () => {
  const sizes = fc.record({
    knit: fc.integer({min: 1, max: 4}),
    purl: fc.integer({min: 1, max: 5}),
    repeats: fc.integer({min: 1, max: 40}),
    over: fc.nat({max: 4}),
    buttonholes: fc.integer({min: 1, max: 9}),
    width: fc.integer({min: 1, max: 5}),
  });
  fc.assert(
    fc.property(sizes, ({knit, purl, repeats, over, buttonholes, width}) => {
      const count = (knit + purl) * repeats + Math.min(over, knit);
      const result = spreadInRib({stitches: stitches(count), rib: {knit, purl}, buttonholes, width});
      const fits = width <= purl && (purl - width) % 2 === 0 && buttonholes <= repeats;
      expect(result.ok).toBe(fits);
      if (!result.ok) return;
      expect(apart(result.value.free.slice(1, -1))).toBeLessThanOrEqual(1);
      expect(sum(result.value.free) + buttonholes).toBe(repeats);
      const [first, second] = [result.value.boundOff, result.value.castOn].map((row) =>
        workRow(row.replace(/^[^:]*: /, '').replace(/ \(.*\)$/, '')),
      );
      expect([first?.uses, first?.makes]).toEqual([count, count - buttonholes * width]);
      expect([second?.uses, second?.makes]).toEqual([count - buttonholes * width, count]);
      // Where each hole lies, counted in stitches from the right edge: its middle is the middle of a purl rib.
      let reached = 0;
      for (const step of first?.steps ?? []) {
        const length = Number(/\d+$/.exec(step)?.[0]);
        if (step.startsWith('bind off')) {
          expect(((reached + length / 2) % (knit + purl)) - knit).toBe(purl / 2);
        }
        reached += length;
      }
    }),
  );
});
