import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import * as nodeFiles from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {basename, join} from 'node:path';
import {afterEach, beforeEach, describe, expect, test} from 'vitest';
import {atomicCreate, atomicWrite, type WritableFile, type WriteCalls} from '../../src/io/atomic-write.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

let folder = '';
let target = '';
const old = 'the last good binder';
const fresh = 'the new binder, which is longer than the last good one';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  target = join(folder, 'binder.pdf');
  writeFileSync(target, old);
});
afterEach(() => rmSync(folder, {recursive: true}));

/** The disk's own calls, with `before` asked ahead of each one; it may throw. */
function watched(before: (call: string) => void): WriteCalls {
  return {
    async open(path, flags, mode) {
      before(`open ${flags}`);
      const file = await nodeFiles.open(path, flags, mode);
      return {
        async write(bytes, offset, length) {
          before('write');
          // Half of what was asked: a disk may do so at any time.
          return file.write(bytes, offset, Math.ceil(length / 2));
        },
        async sync() {
          before('sync');
          await file.sync();
        },
        async close() {
          await file.close();
          before('close');
        },
      } satisfies WritableFile;
    },
    async rename(from, to) {
      before('rename');
      await nodeFiles.rename(from, to);
    },
    async link(from, to) {
      before('link');
      await nodeFiles.link(from, to);
    },
    async unlink(path) {
      await nodeFiles.unlink(path);
    },
  };
}

function failure(code: string): Error {
  return Object.assign(new Error(`${code}: as the system words it`), {code});
}

async function callsOfOneWrite(): Promise<readonly string[]> {
  const calls: string[] = [];
  await atomicWrite(
    target,
    fresh,
    'binder.pdf',
    watched((call) => calls.push(call)),
  );
  writeFileSync(target, old);
  return calls;
}

test('the content is on the disk before the name is, and the name before the end', async () => {
  const calls = await callsOfOneWrite();
  expect(calls.filter((call, at) => call !== calls[at - 1])).toEqual([
    'open wx',
    'write',
    'sync',
    'close',
    'rename',
    'open r',
    'sync',
    'close',
  ]);
});

describe.each(['ENOSPC', 'EACCES', 'EIO', 'EROFS', 'EPERM'])(
  'when the k-th call fails with %s, for every k',
  (code) => {
    test('the file is the old one or the whole new one, nothing is left beside it, and the fault is told', async () => {
      const {length} = await callsOfOneWrite();
      for (let k = 0; k < length; k++) {
        let at = 0;
        const calls = watched(() => {
          if (at++ === k) throw failure(code);
        });
        const outcome = await atomicWrite(target, fresh, 'binder.pdf', calls).then(
          () => 'written',
          (error: unknown) => error,
        );
        const now = readFileSync(target, 'utf8');
        expect(readdirSync(folder), `call ${k}`).toEqual(['binder.pdf']);
        if (outcome === 'written') expect(now).toBe(fresh);
        else {
          expect(outcome).toBeInstanceOf(OperationalError);
          expect([old, fresh]).toContain(now);
        }
        writeFileSync(target, old);
      }
    });
  },
);

test.each([
  ['ENOSPC', 'cannot write `build/binder.pdf`: the disk is full'],
  ['EACCES', 'cannot write `build/binder.pdf`: you have no right to do that there'],
  ['EROFS', 'cannot write `build/binder.pdf`: the disk can only be read'],
  ['EIO', 'cannot write `build/binder.pdf`: the disk reports a fault'],
  ['EXDEV', 'cannot write `build/binder.pdf`: EXDEV: as the system words it'],
])('%s is told in one line', async (code, message) => {
  const calls = watched(() => {
    throw failure(code);
  });
  await expect(atomicWrite(target, fresh, 'build/binder.pdf', calls)).rejects.toThrow(
    new OperationalError(message),
  );
});

test.each(['EPERM', 'EBUSY'])(
  'renaming is tried again while another program holds the file (%s)',
  async (code) => {
    let refusals = 2;
    const calls = watched((call) => {
      if (call === 'rename' && refusals-- > 0) throw failure(code);
    });
    await atomicWrite(target, fresh, 'binder.pdf', calls);
    expect(readFileSync(target, 'utf8')).toBe(fresh);
  },
);

test('a file that another program never lets go stays as it was', async () => {
  const calls = watched((call) => {
    if (call === 'rename') throw failure('EBUSY');
  });
  await expect(atomicWrite(target, fresh, 'binder.pdf', calls)).rejects.toThrow(
    'cannot write `binder.pdf`: another program has it open; close that program',
  );
  expect(readFileSync(target, 'utf8')).toBe(old);
  expect(readdirSync(folder)).toEqual(['binder.pdf']);
});

test('a link planted at the name used while writing is not followed', async () => {
  const victim = join(folder, 'victim.txt');
  writeFileSync(victim, 'precious');
  const planting: WriteCalls = {
    ...watched(() => {}),
    async open(path, flags, mode) {
      if (flags === 'wx') symlinkSync(victim, path);
      return nodeFiles.open(path, flags, mode);
    },
  };
  await expect(atomicWrite(target, fresh, 'binder.pdf', planting)).rejects.toThrow(OperationalError);
  expect(readFileSync(victim, 'utf8')).toBe('precious');
  expect(readFileSync(target, 'utf8')).toBe(old);
});

test('the name used while writing differs each time and is hidden', async () => {
  const names = new Set<string>();
  const calls: WriteCalls = {
    ...watched(() => {}),
    async open(path, flags, mode) {
      if (flags === 'wx') names.add(basename(path));
      return nodeFiles.open(path, flags, mode);
    },
  };
  for (let run = 0; run < 20; run++) await atomicWrite(target, fresh, 'binder.pdf', calls);
  expect(names.size).toBe(20);
  for (const name of names) expect(name).toMatch(/^\./);
});

test('an empty file, and one of several megabytes', async () => {
  await atomicWrite(target, '');
  expect(statSync(target).size).toBe(0);
  const big = new Uint8Array(5_000_000).fill(7);
  await atomicWrite(target, big);
  expect(readFileSync(target).equals(Buffer.from(big))).toBe(true);
});

describe('a file that must be new', () => {
  const names = () => readdirSync(folder).sort();

  test('is written whole where nothing stands, and nothing is left beside it', async () => {
    const path = join(folder, 'new.md');
    expect(await atomicCreate(path, fresh)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe(fresh);
    expect(names()).toEqual(['binder.pdf', 'new.md']);
  });

  test.each<[string, (path: string) => void]>([
    ['a file', (path) => writeFileSync(path, 'mine')],
    ['an empty file', (path) => writeFileSync(path, '')],
    ['a folder', (path) => mkdirSync(path)],
    ['a link to a file', (path) => symlinkSync(target, path)],
    ['a link that leads nowhere', (path) => symlinkSync(join(folder, 'nowhere'), path)],
  ])('is not written where %s stands, on a disk with and without hard links', async (_, plant) => {
    const path = join(folder, 'taken.md');
    plant(path);
    const without = watched((call) => {
      if (call === 'link') throw failure('EPERM');
    });
    for (const calls of [watched(() => {}), without]) {
      const before = lstatSync(path);
      expect(await atomicCreate(path, fresh, 'taken.md', calls)).toBe(false);
      expect(lstatSync(path)).toEqual(before);
    }
    expect(names()).toEqual(['binder.pdf', 'taken.md']);
    expect(readFileSync(target, 'utf8')).toBe(old);
  });

  test('is written on a disk without hard links too', async () => {
    const path = join(folder, 'new.md');
    const calls = watched((call) => {
      if (call === 'link') throw failure('ENOTSUP');
    });
    expect(await atomicCreate(path, fresh, 'new.md', calls)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe(fresh);
    expect(names()).toEqual(['binder.pdf', 'new.md']);
  });

  test('of two runs that make the same file at once, one makes it', async () => {
    const path = join(folder, 'new.md');
    const made = await Promise.all(['a', 'b', 'c', 'd'].map((text) => atomicCreate(path, text)));
    expect(made.filter(Boolean)).toHaveLength(1);
    expect(readFileSync(path, 'utf8')).toBe('abcd'[made.indexOf(true)]);
  });
});
