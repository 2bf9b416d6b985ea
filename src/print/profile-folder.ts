import {rmSync} from 'node:fs';
import {lstat, mkdtemp, readdir, rm} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {OperationalError} from '../support/operational-error.ts';

/** A folder for the browser's own files, readable by nobody else. */
export interface ProfileFolder {
  readonly path: string;
  remove(): Promise<void>;
}

const profileName = /^swatchleaf-(\d+)-\w{6}$/;
/** A browser that was killed may still be writing for a moment. */
const patiently = {recursive: true, force: true, maxRetries: 10, retryDelay: 50};

/**
 * Makes a profile folder, after removing those of runs that were killed before they could. It goes when `remove` is
 * called or when the program ends by `process.exit`, whichever comes first; one that cannot be removed is left to the
 * next run, since what was printed is whole. Throws `OperationalError`.
 */
export async function makeProfileFolder(): Promise<ProfileFolder> {
  await sweepProfiles();
  const path = await mkdtemp(join(tmpdir(), `swatchleaf-${process.pid}-`)).catch((cause: unknown) => {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new OperationalError(
      `the browser needs a folder of its own in \`${tmpdir()}\`, which cannot be made (${reason}); make room there, or let TMPDIR (TEMP on Windows) name another place`,
      {cause},
    );
  });
  const removeNow = () => {
    try {
      rmSync(path, patiently);
    } catch {
      // The next run removes it.
    }
  };
  process.once('exit', removeNow);
  return {
    path,
    async remove() {
      await rm(path, patiently).then(
        () => process.off('exit', removeNow),
        () => {},
      );
    },
  };
}

/** Removes the profile folders of runs that were killed before they could. Never throws. */
export async function sweepProfiles(): Promise<void> {
  // Another run may be sweeping too: whoever comes second finds nothing.
  for (const path of await abandonedProfiles()) await rm(path, patiently).catch(() => {});
}

/** The profile folders of runs that were killed before they could remove them. Never throws. */
export async function abandonedProfiles(): Promise<readonly string[]> {
  const names = await readdir(tmpdir()).catch(() => []);
  const abandoned: string[] = [];
  for (const name of names) {
    const owner = profileName.exec(name)?.[1];
    if (owner === undefined || isAlive(Number(owner))) continue;
    const path = join(tmpdir(), name);
    const facts = await lstat(path).catch(() => null);
    const isOurs = facts?.isDirectory() && (process.getuid === undefined || facts.uid === process.getuid());
    if (isOurs) abandoned.push(path);
  }
  return abandoned;
}

function isAlive(processId: number): boolean {
  try {
    process.kill(processId, 0);
    return true;
  } catch (error) {
    // Anything but "no such process" means that it is there and belongs to somebody else.
    return !(error instanceof Error && 'code' in error && error.code === 'ESRCH');
  }
}
