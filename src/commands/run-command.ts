import path from 'node:path';
import {UsageError} from '../support/usage-error.ts';
import type {CommandWords, Outcome, Surroundings, Typed} from './command.ts';
import {findBinderFolder} from './find-binder-folder.ts';

/**
 * Runs a command; one that writes into the binder, only while no other such command does, in whatever window. Throws
 * `UsageError` and `OperationalError`.
 */
export async function runCommand(words: CommandWords, typed: Typed, around: Surroundings): Promise<Outcome> {
  const folder = words.writesInto?.(typed);
  if (folder === undefined) return words.run(typed, around);
  const [{lockFolder, sinceWhen}, {sweepProfiles}] = await Promise.all([
    import('../io/folder-lock.ts'),
    import('../print/profile-folder.ts'),
  ]);
  const lock = await lockFolder(meantFolder(folder, around.currentFolder), {
    command: words.name,
    onWait: (holder) =>
      around.progress(
        `Waiting: \`${holder.command}\` has been at work in this binder since ${sinceWhen(holder)} (process ${holder.processId}) …`,
      ),
  });
  try {
    if (lock.wasAbandoned) await sweepProfiles();
    return await words.run(typed, around);
  } finally {
    lock.release();
  }
}

/** A folder that is no binder is a new one, or the command's to refuse. */
function meantFolder(folder: string, currentFolder: string): string {
  try {
    return findBinderFolder(folder, currentFolder);
  } catch (error) {
    if (error instanceof UsageError) return path.resolve(currentFolder, folder);
    throw error;
  }
}
