import {mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {afterEach, beforeEach, describe, expect, test, vi} from 'vitest';
import {casesIn} from './cases.ts';
import {expectFolder} from './expect-folder.ts';

let folder = '';
beforeEach(() => {
  vi.stubEnv('UPDATE_GOLDEN', '0');
  folder = mkdtempSync(join(tmpdir(), 'golden-'));
  mkdirSync(join(folder, 'deep'));
  writeFileSync(join(folder, 'report.txt'), 'one\n');
  writeFileSync(join(folder, 'deep', 'page.html'), 'two\n');
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, {recursive: true});
});

const same = {'report.txt': 'one\n', 'deep/page.html': 'two\n'};

describe('a golden folder', () => {
  test('passes when names and texts agree', () => {
    expectFolder(folder, same);
  });

  test.each([
    ['an orphan file', {'report.txt': 'one\n'}],
    ['a missing file', {...same, 'more.txt': ''}],
    ['another text', {...same, 'report.txt': 'two\n'}],
    ['nothing produced', {}],
  ])('fails for %s', (_, produced: Record<string, string>) => {
    expect(() => expectFolder(folder, produced)).toThrow();
  });

  test('fails when the folder itself is missing', () => {
    expect(() => expectFolder(join(folder, 'none'), same)).toThrow();
  });

  test('holds exactly what was produced after an update', () => {
    vi.stubEnv('UPDATE_GOLDEN', '1');
    expectFolder(folder, {'new/name.txt': 'three\n'});
    vi.stubEnv('UPDATE_GOLDEN', '0');
    expectFolder(folder, {'new/name.txt': 'three\n'});
    expect(readFileSync(join(folder, 'new/name.txt'), 'utf8')).toBe('three\n');
  });
});

describe('case folders', () => {
  test('are found by level, sorted, with their expected folder', () => {
    mkdirSync(join(folder, 'deep', 'b'));
    mkdirSync(join(folder, 'deep', 'a'));
    expect(casesIn(folder).map(({name}) => name)).toEqual(['deep/a', 'deep/b']);
    expect(casesIn(folder)[0]?.expected).toBe(join(folder, 'deep', 'a', 'expected'));
    expect(casesIn(folder, 1).map(({name}) => name)).toEqual(['deep']);
  });

  test('must exist', () => {
    expect(() => casesIn(join(folder, 'deep'))).toThrow('no case folders');
  });
});
