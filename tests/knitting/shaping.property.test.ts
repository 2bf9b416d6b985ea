import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {type CurveShape, curvedEdge} from '../../src/knitting/curved-edge.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {heelTurns, usualMiddle} from '../../src/knitting/heel-turns.ts';
import {joinEdges} from '../../src/knitting/join-edges.ts';
import {shoulderSteps, stepsInRows} from '../../src/knitting/shoulder-steps.ts';
import {slope} from '../../src/knitting/slope.ts';
import {rows, stitches} from '../../src/knitting/units.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const count = fc.integer({min: 0, max: 300});

describe('a slope', () => {
  const request = fc.record({
    from: count,
    to: count,
    height: fc.integer({min: 0, max: 400}),
    edges: fc.constantFrom(1 as const, 2 as const),
    onlyRight: fc.boolean(),
  });

  test('takes exactly its rows and its stitches, in intervals that differ by one step, on rows that are never a whole interval off; or says why it cannot', () => {
    fc.assert(
      fc.property(request, ({from, to, height, edges, onlyRight}) => {
        const result = slope({from: stitches(from), to: stitches(to), rows: rows(height), edges, onlyRight});
        const step = onlyRight ? 2 : 1;
        const change = Math.abs(to - from);
        const fits = change > 0 && change % edges === 0 && change / edges <= Math.floor(height / step);
        expect(result.ok).toBe(fits);
        if (!result.ok) return;
        const {times, intervals, shapingRows, evenRows, mostOff, mostOffInGroups} = result.value;
        expect(times * edges).toBe(change);
        expect(sum(intervals.map((interval) => interval.every * interval.times)) + evenRows).toBe(height);
        expect(sum(intervals.map((interval) => interval.times))).toBe(times);
        const every = intervals.map((interval) => interval.every);
        expect(Math.max(...every) - Math.min(...every)).toBeLessThanOrEqual(step);
        if (onlyRight) expect(every.every((interval) => interval % 2 === 0)).toBe(true);

        expect(new Set(shapingRows).size).toBe(times);
        expect(shapingRows.every((row) => row >= 1 && row <= height && (!onlyRight || row % 2 === 1))).toBe(
          true,
        );
        expect(mostOff.compare(Fraction.ofInteger(2 * step - 1))).toBeLessThan(0);
        expect(mostOffInGroups.compare(mostOff)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('is the same slope upside down', () => {
    fc.assert(
      fc.property(request, ({from, to, height, edges, onlyRight}) => {
        const common = {rows: rows(height), edges, onlyRight};
        const down = slope({...common, from: stitches(from), to: stitches(to)});
        const up = slope({...common, from: stitches(to), to: stitches(from)});
        expect(up.ok).toBe(down.ok);
        if (up.ok && down.ok) expect(up.value.shapingRows).toEqual(down.value.shapingRows);
      }),
    );
  });

  test('names the nearest numbers that pairs can make when the difference is odd', () => {
    const result = slope({from: stitches(96), to: stitches(75), rows: rows(60), edges: 2, onlyRight: false});
    expect(result).toMatchObject({ok: false, problems: [{hint: expect.stringContaining('76 or 74')}]});
  });
});

describe('a curved edge', () => {
  /** The curves as real functions, in the machine's own arithmetic. */
  const curve: Record<CurveShape, (part: number) => number> = {
    neckline: (part) => Math.sqrt(1 - (1 - part) ** 2),
    raglan: (part) => 0.75 * part + 0.25 * (2 * part - part * part),
  };

  test('loses exactly its stitches and is never more than half a stitch off its curve after a step', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<CurveShape>('neckline', 'raglan'),
        fc.integer({min: 1, max: 120}),
        fc.integer({min: 2, max: 200}),
        (shape, width, height) => {
          const result = curvedEdge(shape, stitches(width), rows(height));
          if (!result.ok) throw new Error('it can be shaped');
          const {steps} = result.value;
          expect(sum(steps.map((step) => step.stitches))).toBe(width);
          const chances = Math.floor(height / 2);
          for (let chance = 1; chance <= chances; chance++) {
            const gone = sum(steps.filter(({row}) => row <= 2 * chance - 1).map((step) => step.stitches));
            expect(Math.abs(gone - width * curve[shape](chance / chances))).toBeLessThanOrEqual(0.5 + 1e-9);
          }
        },
      ),
    );
  });

  test('needs stitches and rows', () => {
    expect(curvedEdge('neckline', stitches(0), rows(20)).ok).toBe(false);
    expect(curvedEdge('neckline', stitches(12), rows(1)).ok).toBe(false);
  });
});

test('shoulder steps add up to the shoulder, fall by one stitch at most, and leave as many stitches as were bound off', () => {
  fc.assert(
    fc.property(count, fc.integer({min: 0, max: 40}), (shoulder, steps) => {
      const result = shoulderSteps(stitches(shoulder), steps);
      expect(result.ok).toBe(steps > 0 && steps <= shoulder);
      if (!result.ok) return;
      expect(sum(result.value.steps)).toBe(shoulder);
      expect((result.value.steps[0] ?? 0) - (result.value.steps.at(-1) ?? 0)).toBeLessThanOrEqual(1);
      expect(result.value.steps).toEqual(result.value.steps.toSorted((a, b) => b - a));
      expect(result.value.unworked.at(-1)).toBe(shoulder);
      expect(result.value.rows).toBe(2 * steps);
    }),
  );
});

test('the steps of a height are its rows halved and rounded once: 5.43 rows are 3 steps, 4.5 rows are 2', () => {
  expect(stepsInRows(Fraction.ofRatio(543, 100))).toBe(3);
  expect(stepsInRows(Fraction.ofRatio(9, 2))).toBe(2);
  expect(stepsInRows(Fraction.ofRatio(1, 2))).toBe(1);
});

test('a short-row heel turns as many stitches at each side, and row by row comes down to its middle', () => {
  fc.assert(
    fc.property(count, count, (heel, middle) => {
      const result = heelTurns(stitches(heel), stitches(middle));
      expect(result.ok).toBe(middle > 0 && heel - middle >= 2 && (heel - middle) % 2 === 0);
      if (!result.ok) return;
      const {each, shorter, first, last} = result.value;
      expect(2 * each + middle).toBe(heel);
      expect(first - (shorter - 1)).toBe(last);
    }),
  );
});

test('the usual middle of a heel is the number nearest to a third that leaves two equal sides', () => {
  fc.assert(
    fc.property(fc.integer({min: 3, max: 300}), (heel) => {
      const middle = usualMiddle(stitches(heel));
      expect((heel - middle) % 2).toBe(0);
      expect(Math.abs(middle - heel / 3)).toBeLessThanOrEqual(1);
    }),
  );
});

test('joined edges meet completely, no two meetings differ by more than one, and pins lie where the quarters are, to one stitch and one meeting', () => {
  const edge = fc.integer({min: 1, max: 400});
  fc.assert(
    fc.property(edge, edge, (one, other) => {
      const result = joinEdges(one, other);
      if (!result.ok) throw new Error('they can be joined');
      const {meets, kinds, pins} = result.value;
      const [few, many] = [Math.min(one, other), Math.max(one, other)];
      expect(meets).toHaveLength(few);
      expect(sum(meets)).toBe(many);
      expect(Math.max(...meets) - Math.min(...meets)).toBeLessThanOrEqual(1);
      expect(sum(kinds.map((kind) => kind.meets * kind.times))).toBe(many);
      for (const [index, pin] of pins.entries()) {
        const quarter = (index + 1) / 4;
        const [short, long] = one <= other ? [pin.one, pin.other] : [pin.other, pin.one];
        expect(few * quarter - short).toBeLessThan(1);
        expect(Math.abs(long / many - short / few) * many).toBeLessThan(1 + 1e-9);
      }
    }),
  );
});

test('joining the other way round gives the same meetings', () => {
  expect(joinEdges(45, 60)).toMatchObject({value: {fewer: 'one'}});
  expect(joinEdges(60, 45)).toMatchObject({value: {fewer: 'other'}});
  expect(joinEdges(0, 45).ok).toBe(false);
});
