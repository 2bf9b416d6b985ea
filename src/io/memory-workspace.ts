import nodePath from 'node:path';
import {isPassedOver} from './is-passed-over.ts';
import {resolveInside} from './resolve-inside.ts';
import type {Workspace} from './workspace.ts';

export interface MemoryWorkspace extends Workspace {
  /** What the folder holds now, by path. */
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** A binder folder without a disk. It refuses the same paths and passes over the same files as the one on disk. */
export function createMemoryWorkspace(
  content: Readonly<Record<string, string | Uint8Array>> = {},
): MemoryWorkspace {
  const files = new Map<string, Uint8Array>();
  for (const [path, value] of Object.entries(content)) files.set(keyOf(path), bytesOf(value));
  const writes = new Map([...files.keys()].map((path) => [path, 0]));
  const put = (path: string, value: string | Uint8Array) => {
    files.set(keyOf(path), bytesOf(value));
    writes.set(keyOf(path), (writes.get(keyOf(path)) ?? 0) + 1);
  };
  return {
    files,
    async list(folder) {
      const prefix = folder === '' ? '' : `${keyOf(folder)}/`;
      return [...files.keys()]
        .filter((path) => path.startsWith(prefix))
        .filter((path) => !path.slice(prefix.length).split('/').some(isPassedOver))
        .sort();
    },
    async readText(path) {
      const bytes = files.get(keyOf(path));
      return bytes === undefined ? null : Buffer.from(bytes).toString('utf8');
    },
    async readBytes(path) {
      return files.get(keyOf(path)) ?? null;
    },
    async stamp(path) {
      const count = writes.get(keyOf(path));
      return count === undefined ? null : {stamp: String(count), changed: 0};
    },
    async write(path, value) {
      put(path, value);
    },
    async create(path, value) {
      if (files.has(keyOf(path))) return false;
      put(path, value);
      return true;
    },
    async remove(path) {
      writes.delete(keyOf(path));
      return files.delete(keyOf(path));
    },
  };
}

function keyOf(path: string): string {
  return resolveInside('/', path, nodePath.posix).slice(1).normalize('NFC');
}

function bytesOf(value: string | Uint8Array): Uint8Array {
  return typeof value === 'string' ? Buffer.from(value, 'utf8') : value;
}
