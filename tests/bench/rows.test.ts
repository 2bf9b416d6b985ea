import {describe, expect, test} from 'vitest';
import {rowsOrFault} from '../../src/dev/bench-fault.ts';
import {growthRows} from '../../src/dev/bench-growth.ts';
import {verdictOf} from '../../src/dev/bench-record.ts';
import {inTurn, ratioRow, timeProcess} from '../../src/dev/bench-timing.ts';
import {root} from '../support/run-cli.ts';

const words = {id: 'build', what: 'build', against: 'bare print', target: 1.3};

describe('a ratio', () => {
  test('is the median of each time to the floor beside it: a machine that slows down meets both', () => {
    // The ratio of the medians would be 400 / 200 = 2 as well, that of the sums 3100 / 1050.
    const row = ratioRow(words, [200, 400, 2500], [100, 200, 750]);
    expect(row).toMatchObject({unit: '×', measured: 2, runs: 3});
    expect(ratioRow(words, [100, 900, 120], [100, 300, 60]).measured).toBe(2);
  });

  test('without a floor to each time is no figure that passes', () => {
    const {measured} = ratioRow(words, [100, 100], []);
    expect(measured).toBeNaN();
    expect(verdictOf({...ratioRow(words, [100, 100], []), measured})).not.toBe('reached');
  });
});

describe('measuring in turn', () => {
  test('goes through all of them in each round, each round the other way', async () => {
    const order: string[] = [];
    const step = (name: string) => () => order.push(name);
    const times = await inTurn(3, {floor: step('floor'), own: step('own')});
    expect(order).toEqual(['floor', 'own', 'own', 'floor', 'floor', 'own']);
    expect(times).toEqual({floor: [1, 4, 5], own: [2, 3, 6]});
  });
});

describe('a process', () => {
  test('that fails is a fault and no fast measurement', () => {
    const command = {args: ['-e', 'console.error("no paper"); process.exit(3)'], cwd: root};
    expect(() => timeProcess(command)).toThrow('ended with 3: no paper');
    expect(timeProcess({...command, codes: [0, 3]})).toBeGreaterThan(0);
  });

  test('that does not end is given up', () => {
    expect(() => timeProcess({args: ['-e', 'setInterval(() => {}, 9)'], cwd: root, patience: 200})).toThrow();
  });
});

describe('a measurement that fails', () => {
  test('leaves a row that says why, and its target', async () => {
    const words = {id: 'build', what: 'build', target: 1.3};
    const [row, ...others] = await rowsOrFault(words, () => Promise.reject(new Error('no paper\nat line 1')));
    expect(others).toEqual([]);
    expect(row).toMatchObject({...words, measured: null, detail: 'failed: no paper'});
    expect(row && verdictOf(row)).toBe('not measured');
  });
});

describe('growth', () => {
  const mebibytes = (count: number) => count * 1024 * 1024;
  const costs = (at100: number, at1600: number, memory: number | null = null) =>
    new Map(
      [
        [1, 500],
        [25, 600],
        [100, at100],
        [400, 2100],
        [1600, at1600],
      ].map(([size = 0, time = 0]) => [size, {time, memory: memory && mebibytes(memory + size)}]),
    );

  test('compares what an item adds, so that a dear start does not hide a square', () => {
    const [time, memory] = growthRows('check', costs(900, 6900, 60));
    expect(time).toMatchObject({id: 'growth-check-time', measured: 1, target: 1.2});
    expect(memory).toMatchObject({id: 'growth-check-memory', runs: 1});
    expect(memory?.measured).toBeCloseTo(1599 / 1600 / (99 / 100));
    // A sixteenfold cost an item: 4 ms at 100, 64 ms at 1,600.
    const [square] = growthRows('check', costs(900, 102_900));
    expect(square?.measured).toBe(16);
  });

  test('without memory to read says so and no figure', () => {
    const [, memory] = growthRows('build', costs(900, 6900));
    expect(memory?.measured).toBeNull();
  });
});
