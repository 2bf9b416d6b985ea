import type {Workspace} from '../io/workspace.ts';

/** What `build` makes of the whole binder, and what `printed` reads. */
export const binderPdf = 'build/binder.pdf';
/** For the candidate's own desk; never posted, and never taken for the binder. */
export const draftPdf = 'build/draft.pdf';
/** Parts of a binder, as they were asked for last. */
export const onlyPdf = 'build/only.pdf';
export const onlyTagsPdf = 'build/only-tags.pdf';
export const changedPdf = 'build/changed.pdf';
export const changedSlipPdf = 'build/changed-slip.pdf';
export const partPdfs = [onlyPdf, onlyTagsPdf, changedPdf, changedSlipPdf] as const;
/** What `build` makes of a binder that has something for it, by its name in `build`. */
export const optionalDocuments = ['tags', 'inserts', 'letter', 'self-check'] as const;
const reprintFolder = 'build/reprint';
/** The files of `reprint` there: an item's, and what goes with a round. */
const reprintFile = /^build\/reprint\/(?:[A-Z]{1,4}-\d{1,3}|round-\d+-(?:letter|packing-list|label))\.pdf$/;

export function reprintPdf(id: string): string {
  return `${reprintFolder}/${id}.pdf`;
}

/** A file as it was built last; null when there is none, or none that can be read: it only saves time. */
export function lastBuilt(workspace: Workspace, path: string): Promise<Uint8Array | null> {
  return workspace.readBytes(path).catch(() => null);
}

/**
 * Removes the parts that an earlier build left and this one did not make anew: whoever printed them now would put old
 * leaves into the binder. After the whole binder was built, what it no longer asks for goes too, such as inserts that were
 * taken out of its settings. Each is named to `tell`.
 */
export async function removeOldParts(
  workspace: Workspace,
  made: Iterable<string>,
  tell: (line: string) => void,
): Promise<void> {
  const kept = new Set(made);
  const ofWhole = kept.has(binderPdf) ? optionalDocuments.map((name) => `build/${name}.pdf`) : [];
  await removeUnlessKept(workspace, [...partPdfs, ...ofWhole], kept, tell);
}

/** Removes what earlier runs of `reprint` left and this one, which printed a whole round, did not make anew. */
export async function removeOldReprints(
  workspace: Workspace,
  made: Iterable<string>,
  tell: (line: string) => void,
): Promise<void> {
  const ours = (await workspace.list(reprintFolder)).filter((path) => reprintFile.test(path));
  await removeUnlessKept(workspace, ours, new Set(made), tell);
}

async function removeUnlessKept(
  workspace: Workspace,
  paths: readonly string[],
  kept: ReadonlySet<string>,
  tell: (line: string) => void,
): Promise<void> {
  for (const path of paths.filter((each) => !kept.has(each))) {
    if (await workspace.remove(path)) tell(`Removed ${path}, which an earlier build had made`);
  }
}
