import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {keepRun} from '../../src/dev/bench-history.ts';
import {benchHistory, benchRun} from '../../src/dev/bench-record.ts';
import {emptyFolder, root} from '../support/run-cli.ts';
import {inventedRow, inventedRun} from './invented-run.ts';

describe('the history of measurements', () => {
  test('the one that is kept is in order, and no id comes and goes under another unit', async () => {
    const text = await readFile(path.join(root, 'tests/bench/history.json'), 'utf8');
    const history = benchHistory.parse(JSON.parse(text));
    const dates = history.map(({date}) => date);
    expect(dates).toEqual(dates.toSorted());
    const units = new Map<string, string>();
    for (const {ratios} of history) {
      for (const [id, {unit}] of Object.entries(ratios)) {
        expect(units.get(id) ?? unit).toBe(unit);
        units.set(id, unit);
      }
    }
  });

  test('grows by one entry a run, the newest last, without what could not be measured', async () => {
    const file = path.join(await emptyFolder(), 'history.json');
    await keepRun(file, inventedRun([inventedRow(), inventedRow({id: 'growth', measured: null})]));
    const first = await readFile(file, 'utf8');
    await keepRun(file, {...inventedRun([inventedRow({measured: 1.1})]), commit: 'def5678'});
    const history = benchHistory.parse(JSON.parse(await readFile(file, 'utf8')));
    expect(history[0]).toEqual(JSON.parse(first)[0]);
    expect(history.map(({commit, ratios}) => [commit, ratios])).toEqual([
      ['abc1234', {build: {measured: 1.25, unit: '×'}}],
      ['def5678', {build: {measured: 1.1, unit: '×'}}],
    ]);
  });

  test.each(['{', '{}', '[{"date": "yesterday"}]'])(
    'what is no history is left as it is: %s',
    async (text) => {
      const file = path.join(await emptyFolder(), 'history.json');
      await writeFile(file, text);
      await expect(keepRun(file, inventedRun([]))).rejects.toThrow();
      expect(await readFile(file, 'utf8')).toBe(text);
    },
  );
});

test('a run with a figure that is no number is not kept', async () => {
  const file = path.join(await emptyFolder(), 'history.json');
  await writeFile(file, '[]');
  await expect(keepRun(file, inventedRun([inventedRow({measured: Number.NaN})]))).rejects.toThrow();
  expect(await readFile(file, 'utf8')).toBe('[]');
});

describe('a run as JSON', () => {
  test('comes back as it went', () => {
    const run = inventedRun([inventedRow(), inventedRow({id: 'rows', quartiles: null, target: null})]);
    expect(benchRun.parse(JSON.parse(JSON.stringify(run)))).toEqual(run);
  });

  test.each([
    ['a figure that is no number', inventedRow({measured: Number.NaN})],
    ['an id with a blank', inventedRow({id: 'check cold'})],
    ['a negative time', inventedRow({measured: -1})],
  ])('does not pass with %s', (_, row) => {
    expect(benchRun.safeParse(inventedRun([row])).success).toBe(false);
  });
});
