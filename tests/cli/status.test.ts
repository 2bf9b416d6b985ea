import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatch = await readFile(path.join(root, 'tests/rules/base/content/swatches/s-01.md'), 'utf8');
const inWork = {
  'content/swatches/s-01.md': swatch
    .replace('status: finished', 'status: in work')
    .replace('blocking: wet blocked, dried flat\n', ''),
};

describe('status', () => {
  test('says how far the binder is on standard output, exit 0 though errors stand, and writes nothing', async () => {
    const folder = await smallBinder(inWork);
    const before = await filesIn(folder);
    const {code, out, err} = await swatchleaf(['status'], {cwd: folder});
    expect({code, err}).toEqual({code: 0, err: ''});
    expect(out).toMatch(/^1 Swatches\s+-{20} {2}1 in work$/m);
    expect(out).toContain('Nearest to done\n  S-01  Stockinette with a selvedge\n        blocking\n');
    expect(out).toContain('\nFound by check: 1 error, 1 warning, 1 for information.\n');
    expect(await filesIn(folder)).toEqual(before);
  });

  test('one item, in small letters and with the folder in any place', async () => {
    const folder = await smallBinder(inWork);
    const {code, out} = await swatchleaf(['status', 's-01', folder]);
    expect(code).toBe(0);
    expect(out).toMatch(/^S-01 Stockinette with a selvedge\nswatch, Swatches, in work\n/);
    expect(await swatchleaf(['status', folder, 'S-01'])).toEqual({code, out, err: ''});
  });

  test('the questions that belong to a piece', async () => {
    const folder = await smallBinder();
    const {out} = await swatchleaf(['status', '--for', 'S-01', folder]);
    expect(out).toContain('Questions beside it\n  Q-01  Which selvedge for which edge?\n        finished\n');
    const {out: none} = await swatchleaf(['status', '--for', 'B-01', folder]);
    expect(none).toContain('No question of the syllabus is tied to B-01.');
  });

  test('JSON is one document with a version', async () => {
    const folder = await smallBinder(inWork);
    const whole = JSON.parse((await swatchleaf(['status', '--json', folder])).out);
    expect(whole).toMatchObject({schemaVersion: 1, nearest: ['S-01'], evening: {ids: ['S-01']}});
    const items = JSON.parse((await swatchleaf(['status', 'S-01', 'Q-01', '--json', folder])).out).items;
    expect(items.map(({id}: {id: string}) => id)).toEqual(['S-01', 'Q-01']);
    const tied = JSON.parse((await swatchleaf(['status', '--for', 'S-01', '--json', folder])).out);
    expect(tied).toMatchObject({schemaVersion: 1, for: 'S-01', questions: [{id: 'Q-01'}]});
  });

  test('the page is written where it says, and loads nothing', async () => {
    const folder = await smallBinder(inWork);
    const {code, out} = await swatchleaf(['status', '--page', folder]);
    expect({code, out}).toEqual({code: 0, out: 'build/status.html\n'});
    const page = await readFile(path.join(folder, 'build/status.html'), 'utf8');
    expect(page).toContain("default-src 'none'");
    expect(page).not.toContain('<script');
    expect(page).toContain('Nearest to done');
  });

  test.each([
    [['status', 'S-10'], /names no `S-10`; did you mean `S-01`\?/],
    [['status', '--for', 'S-02'], /names no `S-02`; did you mean `S-01`\?/],
    [['status', 'S-01', '--for', 'Q-01'], /name either an item or/],
    [['status', '--page', '--json'], /`--page` writes the whole binder/],
    [['status', 'here', 'there'], /cannot both be the binder folder/],
  ])('wrong use, %j: exit 2', async (args, message) => {
    const {code, out, err} = await swatchleaf(args, {cwd: await smallBinder()});
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(message);
  });

  test('a broken syllabus: exit 2, with the place, and no old page is lost', async () => {
    const folder = await smallBinder({
      'content/syllabus.yaml': 'title: [\n',
      'build/status.html': 'the last good one',
    });
    for (const args of [['status'], ['status', '--json'], ['status', '--page']]) {
      const {code, out, err} = await swatchleaf([...args, folder]);
      expect({code, out}).toEqual({code: 2, out: ''});
      expect(err).toMatch(/content\/syllabus\.yaml:\d+:\d+ error yaml-syntax/);
    }
    expect(await readFile(path.join(folder, 'build/status.html'), 'utf8')).toBe('the last good one');
  });
});
