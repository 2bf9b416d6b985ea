import {readdirSync} from 'node:fs';
import {join} from 'node:path';

/** One case of a golden runner: a folder that holds an input and `expected/`. */
export interface Case {
  /** The folder's path below the runner's folder, such as `word-limit/too-many`. */
  readonly name: string;
  /** Path of the case folder, relative to the repository. */
  readonly folder: string;
  /** Path of its `expected` folder, which need not exist yet. */
  readonly expected: string;
}

/**
 * Every folder `levels` deep below `folder` (relative to the repository), by name. `casesIn('tests/rules')` lists
 * `tests/rules/<rule-id>/<case>`. Throws when there is none, so that a misspelt folder cannot pass as no cases.
 */
export function casesIn(folder: string, levels = 2): readonly Case[] {
  let names = [''];
  for (let level = 0; level < levels; level++) {
    names = names.flatMap((name) => subfolders(join(folder, name)).map((child) => join(name, child)));
  }
  if (names.length === 0) throw new Error(`no case folders in ${folder}`);
  return names.map((name) => ({
    name: name.replaceAll('\\', '/'),
    folder: join(folder, name),
    expected: join(folder, name, 'expected'),
  }));
}

function subfolders(folder: string): string[] {
  return readdirSync(folder, {withFileTypes: true})
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}
