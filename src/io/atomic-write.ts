import * as nodeFiles from 'node:fs/promises';
import {dirname, join} from 'node:path';
import {setTimeout as pause} from 'node:timers/promises';
import {newAsideName} from './aside-file.ts';
import {errorCode, explainFailure} from './explain-failure.ts';

/** An open file as far as writing needs it. */
export interface WritableFile {
  write(bytes: Uint8Array, offset: number, length: number): Promise<{readonly bytesWritten: number}>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** The calls of `node:fs/promises` that writing needs, so that a test can let any one of them fail. */
export interface WriteCalls {
  open(path: string, flags: string, mode?: number): Promise<WritableFile>;
  rename(from: string, to: string): Promise<void>;
  /** A second name for a file; fails with `EEXIST` where anything stands already. */
  link(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
}

/** Milliseconds between attempts to rename: on Windows a virus scanner or a viewer holds a file open for a moment. */
const renamePauses = [10, 50, 150, 400];

/**
 * Puts `content` at `target`, whose folder exists: whoever looks sees the old file or the whole new one, even when the
 * power fails. Throws `OperationalError` and leaves nothing behind. `name` is what messages call the file.
 */
export async function atomicWrite(
  target: string,
  content: string | Uint8Array,
  name: string = target,
  calls: WriteCalls = nodeFiles,
): Promise<void> {
  await writeAside(target, content, {name, calls}, async (aside) => {
    await renameOver(aside, target, calls);
    return {isDone: true, isAsideLeft: false};
  });
}

/**
 * As `atomicWrite`, for a new file. False, and nothing is changed, when anything stands at `target` already: a file, a
 * folder, or a link, even one that leads nowhere.
 */
export function atomicCreate(
  target: string,
  content: string | Uint8Array,
  name: string = target,
  calls: WriteCalls = nodeFiles,
): Promise<boolean> {
  return writeAside(target, content, {name, calls}, async (aside) => {
    try {
      await calls.link(aside, target);
      return {isDone: true, isAsideLeft: true};
    } catch (error) {
      const isTaken = errorCode(error) === 'EEXIST' || (await nodeFiles.lstat(target).catch(() => null));
      if (isTaken) return {isDone: false, isAsideLeft: true};
    }
    // A memory stick may know no second names; then only a file that appears within this moment would be replaced.
    await renameOver(aside, target, calls);
    return {isDone: true, isAsideLeft: false};
  });
}

/**
 * Writes `content` to a new file beside `target` and lets `place` put it there. The name of that file is random and it
 * must not exist yet, so a link planted there is never followed. Gives whether `target` now has the content.
 */
async function writeAside(
  target: string,
  content: string | Uint8Array,
  {name, calls}: {readonly name: string; readonly calls: WriteCalls},
  place: (aside: string) => Promise<{readonly isDone: boolean; readonly isAsideLeft: boolean}>,
): Promise<boolean> {
  const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
  const folder = dirname(target);
  const aside = join(folder, newAsideName());
  let asideExists = false;
  try {
    const file = await calls.open(aside, 'wx');
    asideExists = true;
    await closing(file, async () => {
      await writeAll(file, bytes);
      await file.sync();
    });
    const {isDone, isAsideLeft} = await place(aside);
    if (isAsideLeft) await calls.unlink(aside);
    asideExists = false;
    await syncFolder(folder, calls);
    return isDone;
  } catch (error) {
    if (asideExists) await calls.unlink(aside).catch(() => {});
    throw explainFailure('write', name, error);
  }
}

/** Closes the file whatever happens; the first error is the one that is told. */
async function closing(file: WritableFile, run: () => Promise<void>): Promise<void> {
  try {
    await run();
  } catch (error) {
    await file.close().catch(() => {});
    throw error;
  }
  await file.close();
}

/** A single write may take only part of the bytes; one that takes none would be tried for ever. */
async function writeAll(file: WritableFile, bytes: Uint8Array): Promise<void> {
  let done = 0;
  while (done < bytes.length) {
    const {bytesWritten} = await file.write(bytes, done, bytes.length - done);
    if (bytesWritten === 0) throw Object.assign(new Error('nothing was written'), {code: 'EIO'});
    done += bytesWritten;
  }
}

async function renameOver(from: string, to: string, calls: WriteCalls): Promise<void> {
  for (const wait of renamePauses) {
    try {
      return await calls.rename(from, to);
    } catch (error) {
      if (!['EPERM', 'EBUSY'].includes(errorCode(error) ?? '')) throw error;
      await pause(wait);
    }
  }
  await calls.rename(from, to);
}

/**
 * Makes the new name last through a power cut. Windows and some network disks cannot do this for a folder; that is no
 * failure, since the file is in place and whole. A fault of the disk is one.
 */
async function syncFolder(folder: string, calls: WriteCalls): Promise<void> {
  try {
    const handle = await calls.open(folder, 'r');
    await closing(handle, () => handle.sync());
  } catch (error) {
    if (['EIO', 'ENOSPC', 'EDQUOT'].includes(errorCode(error) ?? '')) throw error;
  }
}
