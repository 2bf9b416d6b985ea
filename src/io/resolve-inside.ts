import nodePath from 'node:path';
import {OutsideFolderError} from './workspace.ts';

/** The part of `node:path` that decides what a path means; `path.win32` and `path.posix` in tests. */
export type PathRules = Pick<typeof nodePath, 'resolve' | 'relative' | 'isAbsolute' | 'sep'>;

/** Names that Windows keeps for devices in every folder, with any ending. */
const deviceName = /(^|\/)(con|prn|aux|nul|com\d|lpt\d)(\.[^/]*)?(\/|$)/i;

/**
 * The absolute path of `path` below `root`, judged by its letters alone; throws `OutsideFolderError`.
 *
 * A path that is no longer the same after the system has resolved it is refused too: it holds `.`, `..`, an empty
 * part or the system's other separator, and two ways to write one file would be two files to the rest of the program.
 */
export function resolveInside(root: string, path: string, rules: PathRules = nodePath): string {
  const absolute = rules.resolve(root, path);
  const relative = rules.relative(root, absolute);
  const leaves = relative.split(rules.sep)[0] === '..' || rules.isAbsolute(relative) || path.includes('\0');
  const changed = relative.split(rules.sep).join('/') !== path;
  const device = rules.sep === '\\' && deviceName.test(path);
  if (leaves || changed || device) throw new OutsideFolderError(path);
  return absolute;
}
