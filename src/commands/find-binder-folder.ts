import {existsSync, statSync} from 'node:fs';
import path from 'node:path';
import {UsageError} from '../support/usage-error.ts';

/**
 * The absolute path of the binder folder meant by `folder`: the one that has `content` in it, also when `content`
 * itself was named. Throws `UsageError` when there is none.
 */
export function findBinderFolder(folder: string, currentFolder: string): string {
  const absolute = path.resolve(currentFolder, folder);
  if (!existsSync(absolute)) throw new UsageError(`there is no folder \`${folder}\``);
  if (!statSync(absolute).isDirectory())
    throw new UsageError(`\`${folder}\` is a file; name the binder folder instead`);
  if (existsSync(path.join(absolute, 'content'))) return absolute;
  if (existsSync(path.join(absolute, 'binder.yaml'))) return path.dirname(absolute);
  throw new UsageError(
    `\`${folder}\` is not a binder folder: it has no \`content\` folder with a \`binder.yaml\` in it; go to the binder folder, name it, or begin one with \`init\``,
  );
}
