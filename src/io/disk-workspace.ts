import type {Dirent} from 'node:fs';
import {mkdir, readdir, readFile, realpath, stat, unlink} from 'node:fs/promises';
import {dirname, join, sep} from 'node:path';
import {OperationalError} from '../support/operational-error.ts';
import {sweepLeftovers} from './aside-file.ts';
import {atomicCreate, atomicWrite} from './atomic-write.ts';
import {errorCode, explainFailure} from './explain-failure.ts';
import {isPassedOver} from './is-passed-over.ts';
import {resolveInside} from './resolve-inside.ts';
import {OutsideFolderError, type Workspace} from './workspace.ts';

const hasAccents = /[^\x20-\x7e]/;

/** The binder in `folder` on this machine's disk. Throws `OperationalError` when there is no such folder. */
export async function openDiskWorkspace(folder: string): Promise<Workspace> {
  const root = await realFolder(folder);
  const swept = new Set<string>();

  /** Where `path` really is, links followed; null when there is nothing. */
  async function locate(path: string): Promise<string | null> {
    const real = await realPathOf(await spelledOnDisk(root, path));
    if (real !== null && !isWithin(root, real)) throw new OutsideFolderError(path);
    return real;
  }

  async function read(path: string): Promise<Buffer | null> {
    try {
      const real = await locate(path);
      // Anything but a plain file is no file of a binder; opening a pipe would wait for ever.
      if (real === null || !(await stat(real)).isFile()) return null;
      return await readFile(real);
    } catch (error) {
      if (isAbsence(error)) return null;
      throw explainFailure('read', path, error);
    }
  }

  /** Where `path` is to be written; its folder is there afterwards. */
  async function makeRoom(path: string): Promise<string> {
    const target = await spelledOnDisk(root, path);
    const parent = dirname(target);
    try {
      // The nearest folder that exists decides: what is made below it lies where it lies.
      if (!isWithin(root, await nearestReal(parent))) throw new OutsideFolderError(path);
      await mkdir(parent, {recursive: true});
    } catch (error) {
      throw explainFailure('write', path, error);
    }
    if (!swept.has(parent)) await sweepLeftovers(parent, Date.now());
    swept.add(parent);
    return target;
  }

  return {
    async list(start) {
      try {
        const real = await locate(start);
        if (real === null) return [];
        const files = await filesBelow(real, start, [real], locate);
        return files.map((path) => path.normalize('NFC')).sort();
      } catch (error) {
        throw explainFailure('read', start || '.', error);
      }
    },
    async readText(path) {
      return (await read(path))?.toString('utf8') ?? null;
    },
    readBytes: read,
    async stamp(path) {
      try {
        const real = await locate(path);
        const facts = real === null ? null : await stat(real, {bigint: true});
        if (!facts?.isFile()) return null;
        const {ino, size, mtimeNs, ctimeNs, mtimeMs, ctimeMs} = facts;
        const changed = Math.max(Number(mtimeMs), Number(ctimeMs));
        return {stamp: [ino, size, mtimeNs, ctimeNs].join(' '), changed};
      } catch (error) {
        if (isAbsence(error)) return null;
        throw explainFailure('read', path, error);
      }
    },
    async write(path, content) {
      await atomicWrite(await makeRoom(path), content, path);
    },
    async create(path, content) {
      return atomicCreate(await makeRoom(path), content, path);
    },
    async remove(path) {
      try {
        const target = await spelledOnDisk(root, path);
        if (!isWithin(root, await nearestReal(dirname(target)))) throw new OutsideFolderError(path);
        await unlink(target);
        return true;
      } catch (error) {
        if (isAbsence(error)) return false;
        throw explainFailure('remove', path, error);
      }
    },
  };
}

async function realFolder(folder: string): Promise<string> {
  try {
    const real = await realPathOf(folder);
    if (real !== null && (await stat(real)).isDirectory()) return real;
  } catch (error) {
    throw explainFailure('open', folder, error);
  }
  throw new OperationalError(`there is no folder \`${folder}\``);
}

function isWithin(root: string, path: string): boolean {
  return path === root || path.startsWith(root.endsWith(sep) ? root : root + sep);
}

function isAbsence(error: unknown): boolean {
  return ['ENOENT', 'ENOTDIR'].includes(errorCode(error) ?? '');
}

async function realPathOf(path: string): Promise<string | null> {
  try {
    return await realpath(path);
  } catch (error) {
    if (isAbsence(error)) return null;
    throw error;
  }
}

async function nearestReal(path: string): Promise<string> {
  return (await realPathOf(path)) ?? nearestReal(dirname(path));
}

/**
 * The absolute path of `path`, its accented letters written as the disk writes them: a folder copied from a Mac has
 * `u` and a separate `¨` where the candidate's keyboard makes `ü`. Throws `OutsideFolderError`.
 */
async function spelledOnDisk(root: string, path: string): Promise<string> {
  const absolute = resolveInside(root, path);
  if (!hasAccents.test(path)) return absolute;
  let folder = root;
  for (const segment of path.split('/')) {
    const names = hasAccents.test(segment) ? await readdir(folder).catch(() => []) : [];
    const alike = names.find((name) => name.normalize('NFC') === segment.normalize('NFC'));
    folder = join(folder, names.includes(segment) ? segment : (alike ?? segment));
  }
  return folder;
}

/**
 * Paths of the files below the folder `real`, which the binder calls `path`. A linked folder inside the binder is
 * followed unless it holds itself; one that leads outside throws, rather than leave its items out in silence.
 */
async function filesBelow(
  real: string,
  path: string,
  ancestors: readonly string[],
  locate: (path: string) => Promise<string | null>,
): Promise<string[]> {
  let entries: Dirent[];
  try {
    entries = await readdir(real, {withFileTypes: true});
  } catch (error) {
    if (isAbsence(error)) return [];
    throw error;
  }
  const files: string[] = [];
  for (const entry of entries) {
    if (isPassedOver(entry.name)) continue;
    const below = path === '' ? entry.name : `${path}/${entry.name}`;
    const realBelow = join(real, entry.name);
    if (entry.isDirectory()) {
      files.push(...(await filesBelow(realBelow, below, [...ancestors, realBelow], locate)));
    } else if (entry.isSymbolicLink() && (await isFolder(realBelow))) {
      const target = await locate(below);
      if (target === null || ancestors.includes(target)) continue;
      files.push(...(await filesBelow(target, below, [...ancestors, target], locate)));
    } else files.push(below);
  }
  return files;
}

async function isFolder(path: string): Promise<boolean> {
  return (await stat(path).catch(() => null))?.isDirectory() ?? false;
}
