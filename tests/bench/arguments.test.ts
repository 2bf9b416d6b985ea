import {describe, expect, test} from 'vitest';
import {readBenchArguments} from '../../src/dev/bench-arguments.ts';
import {benchGroups} from '../../src/dev/bench-record.ts';

describe('what is typed after `npm run bench --`', () => {
  test('nothing measures everything but growth, seven times, and keeps nothing', () => {
    expect(readBenchArguments([])).toEqual({
      runs: 7,
      groups: benchGroups.filter((group) => group !== 'growth'),
      json: null,
      table: false,
      keep: false,
      stages: false,
      peers: false,
      peersFrom: null,
    });
  });

  test('names of groups measure these alone, in the order of the whole', () => {
    expect(readBenchArguments(['3', '--only', 'build', 'check'])).toMatchObject({
      runs: 3,
      groups: ['check', 'build'],
    });
    expect(readBenchArguments(['--only', 'growth']).groups).toEqual(['growth']);
    expect(readBenchArguments(['--growth']).groups).toEqual(benchGroups);
  });

  test('`--json` goes to standard output, or to the file behind it', () => {
    expect(readBenchArguments(['--json']).json).toBe('-');
    expect(readBenchArguments(['--json', 'run.json', '--keep'])).toMatchObject({
      json: 'run.json',
      keep: true,
    });
  });

  test.each([[['0']], [['many']], [['--only', 'everything']], [['--fast']]])('%j is refused', (typed) => {
    expect(() => readBenchArguments(typed)).toThrow();
  });
});
