import {existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {dirname, join, relative} from 'node:path';
import {expect} from 'vitest';

/**
 * Compares texts by file name with the files of a golden folder: first the set of names, so that a missing and an
 * orphan file both fail, then each text. With `UPDATE_GOLDEN=1` the folder is made to hold exactly `produced`.
 */
export function expectFolder(folder: string, produced: Readonly<Record<string, string>>): void {
  if (process.env.UPDATE_GOLDEN === '1') updateFolder(folder, produced);
  expect(filesIn(folder), `files in ${folder}`).toEqual(Object.keys(produced).sort());
  for (const [name, text] of Object.entries(produced)) {
    expect(text, `${folder}/${name}`).toBe(readFileSync(join(folder, name), 'utf8'));
  }
}

function updateFolder(folder: string, produced: Readonly<Record<string, string>>): void {
  for (const name of filesIn(folder)) if (!Object.hasOwn(produced, name)) rmSync(join(folder, name));
  for (const [name, text] of Object.entries(produced)) {
    const file = join(folder, name);
    mkdirSync(dirname(file), {recursive: true});
    writeFileSync(file, text);
  }
}

/** Paths of all files below `folder`, with forward slashes, sorted; none when the folder does not exist. */
function filesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
}
