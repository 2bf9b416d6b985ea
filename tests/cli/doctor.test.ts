import {mkdir, utimes, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {seeClock} from '../../src/commands/doctor/see-clock.ts';
import {judgeSpace, newestFile, whyNotWritable} from '../../src/commands/doctor/see-folders.ts';
import {emptyFolder, filesIn, smallBinder, swatchleaf} from '../support/run-cli.ts';

/** The clock of this computer, not the date that other tests are given. */
const trueClock = {SOURCE_DATE_EPOCH: ''};

async function examine(args: readonly string[], env: Readonly<Record<string, string>> = {}, cwd?: string) {
  const ran = await swatchleaf(['doctor', ...args, '--json'], {
    env: {...trueClock, ...env},
    ...(cwd ? {cwd} : {}),
  });
  const report: {
    schemaVersion: number;
    lacking: boolean;
    checks: {id: string; name: string; state: string; says: string; remedy: string | null}[];
  } = JSON.parse(ran.out);
  expect(report.schemaVersion).toBe(1);
  expect(report.lacking).toBe(ran.code === 3);
  // Whatever is not as it should be comes with what to do.
  for (const {state, remedy} of report.checks) expect(remedy !== null).toBe(state !== 'fine');
  const checks = new Map(report.checks.map((check) => [check.id, check]));
  return {
    code: ran.code,
    states: Object.fromEntries([...checks].map(([id, {state}]) => [id, state])),
    checks,
  };
}

const temporaryIn = (folder: string) => ({TMPDIR: folder, TEMP: folder, TMP: folder});

const allFine = {
  node: 'fine',
  binder: 'fine',
  fonts: 'fine',
  browser: 'fine',
  printing: 'fine',
  'build-folder': 'fine',
  'temporary-folder': 'fine',
  'cache-folder': 'fine',
  disk: 'fine',
  clock: 'fine',
  leftovers: 'fine',
};

test('a computer that has everything: exit 0, and nothing is changed', async () => {
  const folder = await smallBinder();
  const temporary = await emptyFolder();
  const before = await filesIn(folder);
  const {code, states} = await examine([folder], temporaryIn(temporary));
  // How full this computer's disk is, is not for a test to say.
  expect({code, states}).toEqual({code: 0, states: {...allFine, disk: states.disk}});
  expect(await filesIn(folder)).toEqual(before);
  expect(await filesIn(temporary)).toEqual([]);
});

test('no binder is needed; in text every line fits the terminal and says what to do', async () => {
  const folder = await emptyFolder();
  const {code, out} = await swatchleaf(['doctor', '--browser', '/nowhere/browser'], {
    cwd: folder,
    env: trueClock,
  });
  expect(code).toBe(3);
  expect(out).toMatch(/^fine {3}Node\.js /);
  expect(out).toMatch(/^note {3}Binder +there is none in this folder\n +→ Go to the binder folder/m);
  expect(out).toMatch(/^lacks {2}Browser +`--browser` names the browser `\/nowhere\/browser`/m);
  expect(out).toMatch(/\n1 thing is lacking\.\n$/);
  for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect((await swatchleaf(['doctor', 'nowhere'], {cwd: folder})).code).toBe(2);
});

test('what is lacking and what was left behind is found in one run, and nothing is taken away', async () => {
  const folder = await smallBinder();
  const temporary = await emptyFolder();
  const aside = `.swatchleaf-${'0'.repeat(24)}.tmp`;
  await writeFile(path.join(folder, 'content', aside), 'half');
  await writeFile(path.join(folder, 'build'), 'a file in the way');
  // No system gives so high a number to a process; the other is at work.
  const profile = path.join(temporary, 'swatchleaf-99999999-abcdef');
  await mkdir(profile);
  await mkdir(path.join(temporary, `swatchleaf-${process.pid}-abcdef`));
  const {code, states, checks} = await examine([folder, '--browser', process.execPath], {
    ...temporaryIn(temporary),
    XDG_CACHE_HOME: path.join(folder, 'build'),
    SOURCE_DATE_EPOCH: '0',
  });
  expect({code, states}).toEqual({
    code: 3,
    states: {
      ...allFine,
      browser: 'lacks',
      printing: 'note',
      'build-folder': 'lacks',
      'cache-folder': 'note',
      clock: 'lacks',
      leftovers: 'note',
      disk: states.disk,
    },
  });
  const says = (id: string) => checks.get(id)?.says;
  expect(says('browser')).toContain('does not start');
  expect(says('build-folder')).toBe('cannot write into `build`: a file stands where a folder is needed');
  expect(says('clock')).toMatch(/^SOURCE_DATE_EPOCH says 1970-01-01, and Swatchleaf was installed on \d{4}-/);
  expect(says('leftovers')).toBe(
    `2 things left behind by a run that was killed: ${path.join('content', aside)}, ${profile}`,
  );
  expect(await filesIn(folder)).toContain(`content/${aside}`);
});

test.each([
  ['2026-03-01', '2026-03-01T23:00:00Z', 'fine'],
  // A file from a time zone in which the day has begun already.
  ['2026-03-01', '2026-03-02T13:00:00Z', 'fine'],
  ['2026-03-01', '2025-01-01T00:00:00Z', 'fine'],
  ['2026-03-01', '2026-03-04T00:00:00Z', 'lacks'],
  ['1970-01-01', '2026-03-04T00:00:00Z', 'lacks'],
])('a clock that says %s, and a file changed at %s: %s', (today, changed, state) => {
  const seen = seeClock(today, [{what: '`a.md` was changed', at: Date.parse(changed)}], false);
  expect(seen.state).toBe(state);
  if (state === 'lacks')
    expect(seen.says).toBe(`the clock says ${today}, and \`a.md\` was changed on 2026-03-04`);
});

test('the newest file is that of the binder, not what systems and killed runs leave lying about', async () => {
  const folder = await smallBinder({'content/.DS_Store': 'x'});
  const at = async (file: string, date: string) => {
    await utimes(path.join(folder, file), new Date(date), new Date(date));
  };
  await at('content/swatches/s-01.md', '2100-05-01T12:00:00Z');
  await at('content/.DS_Store', '2100-06-01T12:00:00Z');
  expect(await newestFile(folder)).toEqual({
    path: path.join('content', 'swatches', 's-01.md'),
    changed: Date.parse('2100-05-01T12:00:00Z'),
  });
});

test('whether a folder can be written is found without leaving anything', async () => {
  const folder = await emptyFolder();
  expect(await whyNotWritable(path.join(folder, 'deep/er'), 'deep')).toBeNull();
  expect(await filesIn(folder)).toEqual([]);
  await writeFile(path.join(folder, 'file'), '');
  for (const place of ['file', 'file/below'])
    expect(await whyNotWritable(path.join(folder, place), 'x')).toBe(
      'cannot write into `x`: a file stands where a folder is needed',
    );
});

test.each([
  [49_999_999, 'lacks', '49 MB free here; printing needs about 50 MB'],
  [50_000_000, 'note', '50 MB free here'],
  [200_000_000, 'fine', '200 MB free here'],
])('a disk with %i bytes free: %s', (free, state, says) => {
  expect(judgeSpace(free, 'here')).toMatchObject({state, says});
});
