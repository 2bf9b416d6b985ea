import {open, readdir, stat, statfs, unlink} from 'node:fs/promises';
import {dirname, join, relative} from 'node:path';
import {isAside, newAsideName} from '../../io/aside-file.ts';
import {errorCode, explainFailure} from '../../io/explain-failure.ts';
import {abandonedLocks} from '../../io/folder-lock.ts';
import {isPassedOver} from '../../io/is-passed-over.ts';
import {abandonedProfiles} from '../../print/profile-folder.ts';
import {plural} from '../../support/plural.ts';
import {fine, lacks, note, type Seen} from './machine-fact.ts';

const megabyte = 1_000_000;
/**
 * The worked example takes 15 MB in `build`, as much again while it is replaced, and the browser a few tens while it
 * prints (measured).
 */
const leastSpace = 50 * megabyte;
const easySpace = 200 * megabyte;

/** Whether a file can be made in `folder`, or where it would be made; null when it can, else why not. Leaves nothing. */
export async function whyNotWritable(folder: string, name: string): Promise<string | null> {
  try {
    const place = await nearestFolder(folder);
    const trial = join(place, newAsideName());
    const file = await open(trial, 'wx');
    await file.close();
    await unlink(trial);
    return null;
  } catch (error) {
    return explainFailure('write into', name, error).message;
  }
}

async function nearestFolder(folder: string): Promise<string> {
  try {
    if ((await stat(folder)).isDirectory()) return folder;
  } catch (error) {
    if (errorCode(error) === 'ENOENT' && dirname(folder) !== folder) return nearestFolder(dirname(folder));
    throw error;
  }
  throw Object.assign(new Error(folder), {code: 'ENOTDIR'});
}

/** `free` is in bytes. */
export function judgeSpace(free: number, where: string): Seen {
  const says = `${Math.floor(free / megabyte)} MB free ${where}`;
  const remedy = 'Make room: delete or move what is no longer needed.';
  if (free < leastSpace) return lacks(`${says}; printing needs about ${leastSpace / megabyte} MB`, remedy);
  return free < easySpace ? note(says, remedy) : fine(says);
}

/** Of several places the fullest. */
export async function seeSpace(
  places: readonly {readonly folder: string; readonly where: string}[],
): Promise<Seen> {
  const free = await Promise.all(
    places.map(async ({folder, where}) => {
      const {bavail, bsize} = await statfs(await nearestFolder(folder));
      return {free: bavail * bsize, where};
    }),
  );
  const [fullest] = free.sort((a, b) => a.free - b.free);
  return fullest ? judgeSpace(fullest.free, fullest.where) : fine('not asked');
}

/** What runs that were killed left behind: half-written files and locks of the binder `root`, and browsers' folders. */
export async function seeLeftovers(root: string | null): Promise<Seen> {
  const folders = root === null ? [] : ['content', 'build'].map((name) => join(root, name));
  const files = (await Promise.all(folders.map(filesBelow))).flat();
  const halfWritten = files.filter(({name}) => isAside(name)).map(({path}) => path);
  const locks = root === null ? [] : await abandonedLocks(root);
  const left = [
    ...halfWritten.map((path) => relative(root ?? '', path)),
    ...locks.map((path) => (root !== null && path.startsWith(root) ? relative(root, path) : path)),
    ...(await abandonedProfiles()),
  ];
  if (left.length === 0) return fine('none');
  return note(
    `${plural(left.length, 'thing')} left behind by a run that was killed: ${left.join(', ')}`,
    'Delete them unless Swatchleaf is at work in another window. Nothing of yours is in them.',
  );
}

/** The file changed last in `content`, of those that are part of a binder. */
export async function newestFile(
  root: string,
): Promise<{readonly path: string; readonly changed: number} | null> {
  const files = (await filesBelow(join(root, 'content'))).filter(({name}) => !isPassedOver(name));
  let newest: {path: string; changed: number} | null = null;
  for (const {path} of files) {
    const changed = (await stat(path).catch(() => null))?.mtimeMs ?? 0;
    if (changed > (newest?.changed ?? 0)) newest = {path: relative(root, path), changed};
  }
  return newest;
}

async function filesBelow(
  folder: string,
): Promise<readonly {readonly name: string; readonly path: string}[]> {
  const entries = await readdir(folder, {withFileTypes: true}).catch(() => []);
  const files = await Promise.all(
    entries.map(async (entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return filesBelow(path);
      return [{name: entry.name, path}];
    }),
  );
  return files.flat();
}
