import {type ChildProcess, spawn} from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import {tmpdir} from 'node:os';
import {basename, join} from 'node:path';
import {afterEach, beforeEach, describe, expect, test, vi} from 'vitest';
import {abandonedLocks, lockFolder} from '../../src/io/folder-lock.ts';
import {claimPlaces} from '../../src/io/lock-claims.ts';
import {processStart} from '../../src/io/process-life.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

let root = '';
let temporary = '';
const started: ChildProcess[] = [];
const patience = 300;

beforeEach(() => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'swatchleaf-test-')));
  temporary = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  vi.stubEnv('TMPDIR', temporary);
  mkdirSync(join(root, 'content'));
});
afterEach(() => {
  vi.unstubAllEnvs();
  for (const child of started.splice(0)) child.kill('SIGKILL');
  for (const folder of [root, temporary]) rmSync(folder, {recursive: true});
});

/** A process that does nothing but live; it stands for a run in another window. */
async function neighbour(): Promise<{readonly id: number; readonly start: string}> {
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000); console.log()']);
  started.push(child);
  await new Promise((resolve) => child.stdout?.once('data', resolve));
  const id = child.pid ?? 0;
  return {id, start: (await processStart(id)) ?? ''};
}

function plant(name: string, folder = join(root, 'build')): string {
  mkdirSync(folder, {recursive: true});
  const path = join(folder, name);
  writeFileSync(path, '');
  return path;
}

function lock(command = 'printed', onWait: (holder: {readonly command: string}) => void = () => {}) {
  return lockFolder(root, {command, onWait, patience});
}

const inBuild = () => readdirSync(join(root, 'build'));
/** No system gives so high a number to a process (2^22 is the most on Linux, see proc(5)). */
const nobody = 99_999_999;

test('lies in the build folder while it is held, is empty, and names command and process only', async () => {
  const {release} = await lock('build');
  const start = await processStart(process.pid);
  expect(inBuild()).toEqual([`.swatchleaf-build-${process.pid}-${start}.lock`]);
  expect(readFileSync(join(root, 'build', String(inBuild()[0])), 'utf8')).toBe('');
  expect(start).toMatch(process.platform === 'linux' ? /^[1-9]\d*$/ : /^\d+$/);
  release();
  release();
  // The folder was only made for it.
  expect(readdirSync(root)).toEqual(['content']);
  expect(readdirSync(temporary)).toEqual([]);
});

test('a build folder that was there stays, with what is in it', async () => {
  plant('binder.pdf');
  (await lock()).release();
  expect(inBuild()).toEqual(['binder.pdf']);
});

test('leaves no listener behind, so that a long run may take it often', async () => {
  const before = process.listenerCount('exit');
  for (let turn = 0; turn < 20; turn++) (await lock()).release();
  expect(process.listenerCount('exit')).toBe(before);
});

describe('another run is at work', () => {
  test('and is named, with what to do, after a wait that is told once', async () => {
    const {id, start} = await neighbour();
    const path = plant(`.swatchleaf-send-${id}-${start}.lock`);
    utimesSync(path, new Date(2026, 2, 1, 9, 5), new Date(2026, 2, 1, 9, 5));
    const told: string[] = [];
    const taken = lockFolder(root, {
      command: 'printed',
      onWait: ({command}) => told.push(command),
      patience: 900,
    });
    await expect(taken).rejects.toThrow(
      new OperationalError(
        `\`send\` has been at work in this binder since 2026-03-01 09:05 (process ${id}, still running); wait until it has ended or end it in its window, then run \`printed\` again`,
      ),
    );
    expect(told).toEqual(['send']);
    expect(inBuild()).toEqual([basename(path)]);
  });

  test('and ends while it is waited for', async () => {
    const {id, start} = await neighbour();
    const path = plant(`.swatchleaf-build-${id}-${start}.lock`);
    const taken = lockFolder(root, {command: 'printed', onWait: () => {}, patience: 20_000});
    setTimeout(() => rmSync(path), 100);
    (await taken).release();
    expect(inBuild()).toEqual([]);
  });

  test('and is killed while it is waited for', async () => {
    const {id, start} = await neighbour();
    plant(`.swatchleaf-build-${id}-${start}.lock`);
    const taken = lockFolder(root, {command: 'printed', onWait: () => {}, patience: 20_000});
    setTimeout(() => process.kill(id, 'SIGKILL'), 100);
    const {wasAbandoned, release} = await taken;
    release();
    expect({wasAbandoned, left: inBuild()}).toEqual({wasAbandoned: true, left: []});
  });

  test('where the system does not tell when it began: the lock can be deleted, and where it lies is said', async () => {
    const {id} = await neighbour();
    const path = plant(`.swatchleaf-send-${id}-0.lock`);
    await expect(lock()).rejects.toThrow(
      `which seems to be running); wait until it has ended or end it in its window, then run \`printed\` again; if no Swatchleaf is running, delete \`${path}\``,
    );
  });

  test('in a build folder that cannot be written: the lock is seen in the temporary folder', async () => {
    const {id, start} = await neighbour();
    const [, {folder, prefix}] = claimPlaces(root);
    expect(folder).toBe(temporary);
    plant(`${prefix}init-${id}-${start}.lock`, temporary);
    await expect(lock()).rejects.toThrow(/^`init` has been at work/);
  });
});

describe('a run was killed', () => {
  test.each([
    ['no process has its number', `.swatchleaf-build-${nobody}-123.lock`],
    ['where the system does not tell when it began', `.swatchleaf-build-${nobody}-0.lock`],
    ['its number is that of this run now', `.swatchleaf-build-${process.pid}-1.lock`],
  ])('%s: its lock is taken over, and what it had half written is swept away', async (_, name) => {
    plant(name);
    const half = `.swatchleaf-${nobody}-${'0'.repeat(24)}.tmp`;
    plant(half, join(root, 'content/rounds/0'));
    plant('kept.yaml', join(root, 'content/rounds/0'));
    plant(half);
    expect(await abandonedLocks(root)).toEqual([join(root, 'build', name)]);
    const {wasAbandoned, release} = await lock();
    expect(wasAbandoned).toBe(true);
    release();
    expect(inBuild()).toEqual([]);
    expect(readdirSync(join(root, 'content/rounds/0'))).toEqual(['kept.yaml']);
  });

  test.runIf(process.platform === 'linux')('and its number was given to another process later', async () => {
    const {id, start} = await neighbour();
    plant(`.swatchleaf-build-${id}-${Number(start) - 1}.lock`);
    const {wasAbandoned, release} = await lock();
    release();
    expect(wasAbandoned).toBe(true);
  });

  test.runIf(process.platform === 'linux')(
    'and its parent has not buried it yet: it is gone nevertheless',
    async () => {
      // The shell starts a child that ends soon, and meanwhile becomes a program that never asks after it.
      const shell = spawn('/bin/sh', ['-c', 'sleep 0.3 & echo $!; exec sleep 60']);
      started.push(shell);
      const id = await new Promise<number>((resolve) => {
        shell.stdout.once('data', (part) => resolve(Number(part)));
      });
      await vi.waitFor(() => expect(readFileSync(`/proc/${id}/stat`, 'utf8')).toMatch(/\) Z /), 5000);
      expect(() => process.kill(id, 0)).not.toThrow();
      expect(await processStart(id)).toBeNull();
    },
  );

  test('what a living process writes stays', async () => {
    const {id} = await neighbour();
    plant(`.swatchleaf-build-${nobody}-1.lock`);
    const half = `.swatchleaf-${id}-${'0'.repeat(24)}.tmp`;
    plant(half);
    (await lock()).release();
    expect(inBuild()).toEqual([half]);
  });
});

describe('where the build folder cannot be written or there is no binder yet', () => {
  const heldInTemporary = () => readdirSync(temporary).filter((name) => /^swatchleaf-lock-/.test(name));

  test.each<[string, () => void]>([
    ['a file stands in its place', () => writeFileSync(join(root, 'build'), '')],
    ['it is a link out of the binder', () => symlinkSync(temporary, join(root, 'build'))],
    ['it is a link that leads nowhere', () => symlinkSync(join(temporary, 'gone'), join(root, 'build'))],
    ['there is no binder yet', () => rmSync(join(root, 'content'), {recursive: true})],
    ['there is no folder yet', () => rmSync(root, {recursive: true})],
  ])('%s: the lock lies in the temporary folder', async (_, prepare) => {
    prepare();
    const before = existsSync(root) ? readdirSync(root) : null;
    const {release} = await lock();
    expect(heldInTemporary()).toHaveLength(1);
    // Neither the folder's name nor the user's can be read from it.
    expect(heldInTemporary()[0]).toMatch(/^swatchleaf-lock-[0-9a-f]{16}-printed-\d+-\d+\.lock$/);
    release();
    expect(readdirSync(temporary)).toEqual([]);
    expect(existsSync(root) ? readdirSync(root) : null).toEqual(before);
    mkdirSync(root, {recursive: true});
  });

  test.skipIf(process.getuid?.() === 0)('it may only be read: the same', async () => {
    mkdirSync(join(root, 'build'), {mode: 0o500});
    const {release} = await lock();
    expect(heldInTemporary()).toHaveLength(1);
    release();
  });

  test('another binder is another lock, and one folder by two paths is the same', async () => {
    const other = mkdtempSync(join(temporary, 'other-'));
    const byLink = join(temporary, 'link');
    symlinkSync(root, byLink);
    expect(claimPlaces(root)[1].prefix).not.toBe(claimPlaces(other)[1].prefix);
    const {id, start} = await neighbour();
    plant(`${claimPlaces(root)[1].prefix}init-${id}-${start}.lock`, temporary);
    (await lockFolder(other, {command: 'init', onWait: () => {}, patience})).release();
    await expect(lockFolder(byLink, {command: 'init', onWait: () => {}, patience})).rejects.toThrow(
      OperationalError,
    );
  });
});

test.each([
  ['a folder', (path: string) => mkdirSync(path)],
  ['a link', (path: string) => symlinkSync(join(temporary, 'victim'), path)],
])('%s with the name of a lock is none, and stays', async (_, make) => {
  const {id, start} = await neighbour();
  const name = `.swatchleaf-build-${id}-${start}.lock`;
  mkdirSync(join(root, 'build'));
  make(join(root, 'build', name));
  (await lock()).release();
  expect(inBuild()).toEqual([name]);
});

test('a link planted at the very name is not followed', async () => {
  const victim = join(temporary, 'victim.txt');
  writeFileSync(victim, 'precious');
  const start = await processStart(process.pid);
  mkdirSync(join(root, 'build'));
  symlinkSync(victim, join(root, 'build', `.swatchleaf-printed-${process.pid}-${start}.lock`));
  (await lock()).release();
  expect(readFileSync(victim, 'utf8')).toBe('precious');
});
