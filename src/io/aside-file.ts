import {randomBytes} from 'node:crypto';
import {lstat, readdir, unlink} from 'node:fs/promises';
import {join} from 'node:path';
import {processStart} from './process-life.ts';

/** The number is that of the process that writes it. */
const asideName = /^\.swatchleaf-(?:(\d+)-)?[0-9a-f]{24}\.tmp$/;
const hour = 3_600_000;

/** What a file is called while it is being written: hidden, so that it is no part of a binder, and never the same twice. */
export function newAsideName(): string {
  return `.swatchleaf-${process.pid}-${randomBytes(12).toString('hex')}.tmp`;
}

/** Whether a file of this name is being written at this moment, or was left half-written by a run that was killed. */
export function isAside(name: string): boolean {
  return asideName.test(name);
}

/**
 * Removes from `folder` what killed runs left: at once when the process is gone, else an hour before `now` (milliseconds
 * since 1970), since its number may be another's by then. Never throws.
 */
export async function sweepLeftovers(folder: string, now: number): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names) await sweep(folder, name, now);
}

/** As `sweepLeftovers`, for `folder` and all below it; links are not followed. */
export async function sweepBelow(folder: string, now: number): Promise<void> {
  const entries = await readdir(folder, {withFileTypes: true}).catch(() => []);
  for (const entry of entries) {
    if (entry.isDirectory()) await sweepBelow(join(folder, entry.name), now);
    else await sweep(folder, entry.name, now);
  }
}

async function sweep(folder: string, name: string, now: number): Promise<void> {
  const aside = asideName.exec(name);
  if (aside === null) return;
  const path = join(folder, name);
  const facts = await lstat(path).catch(() => null);
  if (!facts?.isFile()) return;
  const isAbandoned = aside[1] !== undefined && (await processStart(Number(aside[1]))) === null;
  if (isAbandoned || now - facts.mtimeMs > hour) await unlink(path).catch(() => {});
}
