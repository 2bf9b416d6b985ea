import {homedir} from 'node:os';
import path from 'node:path';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import {openDiskWorkspace} from '../io/disk-workspace.ts';
import type {Workspace} from '../io/workspace.ts';
import type {Binder} from '../model/binder.ts';
import {openPhotoCache, type PhotoCache} from '../photos/photo-cache.ts';
import {readPhotoFacts} from '../photos/read-photo-facts.ts';
import {assemble, check, load} from '../pipeline.ts';
import type {Surroundings} from './command.ts';
import {findBinderFolder} from './find-binder-folder.ts';

/** A binder folder, found and not yet read. */
export interface OpenedFolder {
  readonly folder: string;
  readonly workspace: Workspace;
  readonly photoCache: PhotoCache;
}

/** A binder folder, read and checked. */
export interface OpenedBinder extends OpenedFolder {
  /** Null when the binder file or the syllabus is missing or unreadable; `findings` say why. */
  readonly binder: Binder | null;
  readonly findings: readonly Finding[];
  readonly textOf: (file: string) => string | null;
}

/** Throws `UsageError` when there is no binder in `folder`, `OperationalError` for the disk. */
export async function openFolder(folder: string, around: Surroundings): Promise<OpenedFolder> {
  const absolute = findBinderFolder(folder, around.currentFolder);
  return {
    folder: absolute,
    workspace: await openDiskWorkspace(absolute),
    photoCache: openPhotoCache(cacheFolder(around)),
  };
}

/** Reads and checks the binder in `folder`. Throws `UsageError` when there is none, `OperationalError` for the disk. */
export async function openBinder(folder: string, around: Surroundings): Promise<OpenedBinder> {
  return readBinder(await openFolder(folder, around), around);
}

/** Reads and checks what lies in a binder folder. Throws `OperationalError` for the disk. */
export async function readBinder(opened: OpenedFolder, around: Surroundings): Promise<OpenedBinder> {
  const {workspace, photoCache} = opened;
  const loaded = await load(workspace, (bytes) => readPhotoFacts(bytes, photoCache));
  const {binder, findings} = assemble(loaded, around.today);
  const texts = new Map(
    [...loaded.items, ...loaded.yamlFiles, ...(loaded.clippings ? [loaded.clippings] : [])].map((file) => [
      file.path,
      file.text,
    ]),
  );
  return {
    ...opened,
    binder,
    findings: binder ? check(binder) : sortFindings(findings),
    textOf: (file) => texts.get(file) ?? null,
  };
}

/** Outside the binder folder, so that nothing of ours lies among the candidate's files; it may be deleted at any time. */
export function cacheFolder({environment}: Surroundings): string {
  const base = environment.XDG_CACHE_HOME || environment.LOCALAPPDATA || path.join(homedir(), '.cache');
  return path.join(base, 'swatchleaf', 'photos');
}
