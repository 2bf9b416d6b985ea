import {rmdirSync, unlinkSync} from 'node:fs';
import {mkdir, open, realpath, stat} from 'node:fs/promises';
import {dirname, join, sep} from 'node:path';
import {errorCode, explainFailure} from './explain-failure.ts';
import {type ClaimPlace, claimName} from './lock-claims.ts';

/** Takes a claim away, once. */
export interface Withdrawal {
  readonly withdraw: () => void;
}

/** In the build folder of the binder; where there is no binder yet or that folder cannot be written, in the temporary one. */
export async function layClaim(
  [build, temporary]: readonly [ClaimPlace, ClaimPlace],
  command: string,
  start: string,
): Promise<Withdrawal> {
  const made = await makeFolder(build.folder);
  if (made !== null) {
    const path = join(build.folder, claimName(build, command, start));
    if (await makeEmptyFile(path).catch(() => false)) return withdrawing(path, made ? build.folder : null);
    if (made) removeFolder(build.folder);
  }
  const path = join(temporary.folder, claimName(temporary, command, start));
  try {
    await makeEmptyFile(path);
  } catch (error) {
    throw explainFailure('write', path, error);
  }
  return withdrawing(path, null);
}

/** Whether the build folder had to be made; null where there can be none: outside a binder, or outside its folder by a link. */
async function makeFolder(build: string): Promise<boolean | null> {
  try {
    if (!(await stat(join(dirname(build), 'content'))).isDirectory()) return null;
    const made = await mkdir(build, {recursive: true});
    return (await realpath(build)).startsWith(dirname(build) + sep) ? made !== undefined : null;
  } catch {
    return null;
  }
}

/** What stands there already was left by a process of our own number, which is us. A link is not followed. */
async function makeEmptyFile(path: string): Promise<true> {
  const file = await open(path, 'wx').catch((error: unknown) => {
    if (errorCode(error) !== 'EEXIST') throw error;
    unlinkSync(path);
    return open(path, 'wx');
  });
  // It holds nothing, so nothing can be lost in closing it.
  await file.close().catch(() => {});
  return true;
}

/** Takes the claim away once, now or when the program ends, and the folder that was made for it when nothing else came into it. */
function withdrawing(path: string, madeFolder: string | null): Withdrawal {
  const withdraw = () => {
    process.off('exit', withdraw);
    try {
      unlinkSync(path);
    } catch {
      // It counts for nothing once this process has ended.
    }
    if (madeFolder !== null) removeFolder(madeFolder);
  };
  process.once('exit', withdraw);
  return {withdraw};
}

function removeFolder(folder: string): void {
  try {
    rmdirSync(folder);
  } catch {
    // Something lies in it: it is wanted.
  }
}
