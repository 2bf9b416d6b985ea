import type * as NodeFiles from 'node:fs/promises';

/** One call of `node:fs/promises` or of an open file, as a test sees it before it is made. */
export interface FileCall {
  /** Counted from 0 since the last reset. */
  readonly at: number;
  /** Such as `rename`; `open wx` for opening with flags; `write`, `sync`, `close` for an open file. */
  readonly name: string;
  readonly path: string;
}

/** What happens to a call: an error code instead of it, half of the bytes, or something planted at the path before it. */
export type Fault = {readonly code: string} | {readonly short: true} | {readonly plant: () => void};

let calls: FileCall[] = [];
let choose: (call: FileCall) => Fault | null = () => null;

/** Forgets the calls made until now, and lets `fault` decide about those to come. */
export function resetCalls(fault: (call: FileCall) => Fault | null = () => null): void {
  calls = [];
  choose = fault;
}

export function callsMade(): readonly FileCall[] {
  return calls;
}

/** The calls that change something on the disk. */
export function isWriting({name}: FileCall): boolean {
  return /^(open w|write|sync|close|rename|link|unlink|rm|rmdir|mkdir|mkdtemp)/.test(name);
}

/** Those that take something away: a full disk lets them. */
export function isRemoving({name}: FileCall): boolean {
  return /^(unlink|rm|rmdir|close)$/.test(name);
}

/** The module `node:fs/promises` with every call counted, so that any of them can fail; for `vi.mock`. */
export function faultyFiles(real: typeof NodeFiles): typeof NodeFiles {
  const wrapped = Object.entries(real).map(([name, value]) => [
    name,
    typeof value === 'function' ? watchedCall(name, value) : value,
  ]);
  return Object.fromEntries(wrapped);
}

type AnyCall = (...args: readonly unknown[]) => unknown;

function watchedCall(name: string, real: unknown): AnyCall {
  const call = real as AnyCall;
  return async (...args) => {
    const path = String(args[0]);
    const flags = name === 'open' ? ` ${String(args[1] ?? 'r')}` : '';
    obstruct(announce(`${name}${flags}`, path));
    const result = await call(...args);
    return name === 'open' ? watchedFile(result as NodeFiles.FileHandle, path) : result;
  };
}

function watchedFile(file: NodeFiles.FileHandle, path: string): Partial<NodeFiles.FileHandle> {
  return {
    write: (async (bytes: Uint8Array, offset: number, length: number) => {
      const fault = announce('write', path);
      obstruct(fault);
      return file.write(bytes, offset, fault && 'short' in fault ? Math.ceil(length / 2) : length);
    }) as NodeFiles.FileHandle['write'],
    sync: async () => {
      obstruct(announce('sync', path));
      await file.sync();
    },
    // A file is closed even when closing tells of a fault that writing kept back.
    close: async () => {
      await file.close();
      obstruct(announce('close', path));
    },
  };
}

function announce(name: string, path: string): Fault | null {
  const call = {at: calls.length, name, path};
  calls.push(call);
  return choose(call);
}

function obstruct(fault: Fault | null): void {
  if (fault === null || 'short' in fault) return;
  if ('plant' in fault) fault.plant();
  else throw Object.assign(new Error(`${fault.code}: as the system words it`), {code: fault.code});
}
