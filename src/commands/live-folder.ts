import type {FileStamp, Workspace} from '../io/workspace.ts';
import type {PhotoFacts} from '../model/binder.ts';
import {
  contentFolder,
  contentKind,
  type LoadedFolder,
  loadedFolder,
  type PhotoDecoder,
  photosFolder,
} from '../pipeline.ts';

/** The content folder as it is now, of which only what changed is read again. */
export interface LiveFolder {
  /** Reads what changed since the last call; the first call reads everything. */
  refresh(): Promise<FolderChange>;
}

export interface FolderChange {
  readonly loaded: LoadedFolder;
  /** Paths that are new, changed or gone, sorted. */
  readonly changed: readonly string[];
  /** Whether a file was read so soon after it was written that a second save could carry the same time. */
  readonly isYoung: boolean;
}

interface Known {
  readonly stamp: FileStamp;
  readonly isYoung: boolean;
  readonly text: string | null;
  readonly facts: PhotoFacts | null;
}

/** Milliseconds within which two saves may carry the same time; the clock of a disk is coarser than that of the program. */
const coarseness = 50;

export function openLiveFolder(
  workspace: Workspace,
  decodePhoto: PhotoDecoder,
  now: () => number = Date.now,
): LiveFolder {
  let known: ReadonlyMap<string, Known> = new Map();

  async function look(path: string): Promise<readonly [string, Known] | null> {
    const stamp = await workspace.stamp(path);
    if (stamp === null) return null;
    const before = known.get(path);
    if (before && !before.isYoung && before.stamp.stamp === stamp.stamp) return [path, before];
    // The age is taken before reading: what is written meanwhile makes another stamp or is read again.
    const isYoung = now() - stamp.changed < coarseness;
    if (contentKind(path) !== 'photo') {
      const text = await workspace.readText(path);
      return text === null ? null : [path, {stamp, isYoung, text, facts: null}];
    }
    if (before?.stamp.stamp === stamp.stamp) return [path, {...before, isYoung}];
    const bytes = await workspace.readBytes(path);
    return bytes === null ? null : [path, {stamp, isYoung, text: null, facts: await decodePhoto(bytes)}];
  }

  return {
    async refresh() {
      const paths = (await workspace.list(contentFolder)).filter((path) => contentKind(path) !== null);
      const found = await Promise.all(paths.map(look));
      const next = new Map(found.filter((each) => each !== null));
      const changed = [...new Set([...known.keys(), ...next.keys()])].filter((path) =>
        hasChanged(known.get(path), next.get(path)),
      );
      known = next;
      return {
        loaded: whatIsThere(next),
        changed: changed.sort(),
        isYoung: [...next.values()].some(({isYoung}) => isYoung),
      };
    },
  };
}

function hasChanged(before: Known | undefined, now: Known | undefined): boolean {
  if (before === undefined || now === undefined) return before !== now;
  return before.text === null ? before.stamp.stamp !== now.stamp.stamp : before.text !== now.text;
}

function whatIsThere(known: ReadonlyMap<string, Known>): LoadedFolder {
  const texts = [...known].flatMap(([path, {text}]) => (text === null ? [] : [{path, text}]));
  const photos = [...known].flatMap(([path, {facts}]) =>
    facts === null ? [] : [[path.slice(photosFolder.length), facts] as const],
  );
  return loadedFolder(texts, new Map(photos));
}
