import fc from 'fast-check';
import {expect, test} from 'vitest';
import {plotScale} from '../../src/tables/plot-scale.ts';
import {stackDots} from '../../src/tables/stack-dots.ts';

const values = fc.array(fc.double({min: 0, max: 1e9, noNaN: true}), {minLength: 1, maxLength: 30});

test('an axis covers all values in one to six equal steps, none finer than asked', () => {
  fc.assert(
    fc.property(values, fc.constantFrom(1, 5), (shown, finest) => {
      const {from, to, ticks} = plotScale(shown, finest);
      expect(from).toBeLessThanOrEqual(Math.min(...shown));
      expect(to).toBeGreaterThanOrEqual(Math.max(...shown));
      expect(ticks.length).toBeGreaterThanOrEqual(2);
      expect(ticks.length).toBeLessThanOrEqual(7);
      expect([ticks[0]?.value, ticks.at(-1)?.value]).toEqual([from, to]);
      const steps = ticks.slice(1).map(({value}, index) => (value - (ticks[index]?.value ?? 0)) * 10);
      for (const step of steps) {
        expect(step).toBeCloseTo(steps[0] ?? 0, 4);
        expect(step).toBeGreaterThan(finest - 0.001);
      }
    }),
  );
});

test('the label of a tick is its value', () => {
  fc.assert(
    fc.property(values, (shown) => {
      for (const {value, label} of plotScale(shown, 1).ticks) expect(Number(label)).toBe(value);
    }),
  );
});

test('no dot is lost, and dots on one level never touch', () => {
  const positions = fc.array(fc.double({min: 0, max: 50, noNaN: true}), {maxLength: 40});
  fc.assert(
    fc.property(positions, (given) => {
      const dots = stackDots(given, 2.2);
      expect(dots.map(({x}) => x)).toEqual([...given].sort((a, b) => a - b));
      for (const [index, dot] of dots.entries()) {
        for (const other of dots.slice(index + 1).filter(({level}) => level === dot.level)) {
          expect(other.x - dot.x).toBeGreaterThanOrEqual(2.2);
        }
      }
    }),
  );
});

test('a dot that touches no other stands on the line', () => {
  expect(stackDots([30, 10, 20], 2.2).map(({level}) => level)).toEqual([0, 0, 0]);
  expect(stackDots([10, 10, 10], 2.2).map(({level}) => level)).toEqual([0, 1, 2]);
});
