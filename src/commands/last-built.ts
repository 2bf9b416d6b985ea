import type {Workspace} from '../io/workspace.ts';

/** What `build` makes of the whole binder, and what `printed` reads. */
export const binderPdf = 'build/binder.pdf';
/** Parts of a binder, as they were asked for last. */
export const onlyPdf = 'build/only.pdf';
export const onlyTagsPdf = 'build/only-tags.pdf';
export const changedPdf = 'build/changed.pdf';
export const changedSlipPdf = 'build/changed-slip.pdf';
export const partPdfs = [onlyPdf, onlyTagsPdf, changedPdf, changedSlipPdf] as const;

/** A file as it was built last; null when there is none, or none that can be read: it only saves time. */
export function lastBuilt(workspace: Workspace, path: string): Promise<Uint8Array | null> {
  return workspace.readBytes(path).catch(() => null);
}

/**
 * Removes the parts that an earlier build left and this one did not make anew: whoever printed them now would put old
 * leaves into the binder. Each is named to `tell`.
 */
export async function removeOldParts(
  workspace: Workspace,
  made: Iterable<string>,
  tell: (line: string) => void,
): Promise<void> {
  const kept = new Set(made);
  for (const path of partPdfs.filter((part) => !kept.has(part))) {
    if (await workspace.remove(path)) tell(`Removed ${path}, which an earlier build had made`);
  }
}
