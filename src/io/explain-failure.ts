import {OperationalError} from '../support/operational-error.ts';

/** What the system's error codes mean to someone who does not know them. */
const meanings: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the space allowed to you on this disk is used up',
  EACCES: 'you have no right to do that there',
  EPERM: 'the system does not allow it; close any program that shows the file',
  EBUSY: 'another program has it open; close that program',
  EROFS: 'the disk can only be read',
  EIO: 'the disk reports a fault',
  EISDIR: 'a folder of that name is in the way',
  ENOTEMPTY: 'a folder of that name is in the way',
  ENOTDIR: 'a file stands where a folder is needed',
  EEXIST: 'a file stands where a folder is needed',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its symbolic links go round in a circle',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  ENOENT: 'the folder has gone',
};

/** The error code of a failed call of the system, or null when `error` is something else. */
export function errorCode(error: unknown): string | null {
  if (!(error instanceof Error) || !('code' in error)) return null;
  return typeof error.code === 'string' ? error.code : null;
}

/** One line for the user: ``cannot write `build/binder.pdf`: the disk is full``. An `OperationalError` is passed on as it is. */
export function explainFailure(action: string, path: string, error: unknown): OperationalError {
  if (error instanceof OperationalError) return error;
  const code = errorCode(error);
  const reason =
    (code !== null && meanings[code]) || (error instanceof Error ? error.message : String(error));
  return new OperationalError(`cannot ${action} \`${path}\`: ${reason}`, {cause: error});
}
