import {tableFindings} from './compose/table-findings.ts';
import type {Finding} from './diagnostics/finding.ts';
import {sortFindings} from './diagnostics/sort-findings.ts';
import type {Workspace} from './io/workspace.ts';
import {parseItem} from './markdown/parse-item.ts';
import type {Binder, PhotoFacts} from './model/binder.ts';
import {clippingsPath, type ReadBinder, readBinderFiles, roundsFolder} from './model/read-binder-files.ts';
import {rules} from './rules/index.ts';
import {runRules} from './rules/run-rules.ts';
import {tables} from './tables/index.ts';

/** A file of the binder folder as it was read. */
export interface TextFile {
  readonly path: string;
  readonly text: string;
}

/** What lies in the binder folder, as far as checking needs it. */
export interface LoadedFolder {
  readonly items: readonly TextFile[];
  readonly yamlFiles: readonly TextFile[];
  /** By file name within `content/photos`. */
  readonly photos: ReadonlyMap<string, PhotoFacts>;
}

/** Decodes a picture; the world's part of loading, so that the phases run without a decoder in tests. */
export type PhotoDecoder = (bytes: Uint8Array) => Promise<PhotoFacts>;

const contentFolder = 'content';
export const photosFolder = 'content/photos/';

/** Phase 1, load: every text and picture below `content`. */
export async function load(workspace: Workspace, decodePhoto: PhotoDecoder): Promise<LoadedFolder> {
  const paths = await workspace.list(contentFolder);
  const readTexts = (ending: RegExp) =>
    Promise.all(
      paths
        .filter((path) => ending.test(path) && !path.startsWith(photosFolder))
        .map(async (path) => ({path, text: (await workspace.readText(path)) ?? ''})),
    );
  const [markdown, yamlFiles] = await Promise.all([readTexts(/\.md$/i), readTexts(/\.ya?ml$/i)]);
  const items = markdown.filter(({path}) => path !== clippingsPath && !path.startsWith(roundsFolder));
  const photos = new Map<string, PhotoFacts>();
  for (const path of paths.filter((path) => path.startsWith(photosFolder))) {
    const bytes = await workspace.readBytes(path);
    if (bytes !== null) photos.set(path.slice(photosFolder.length), await decodePhoto(bytes));
  }
  return {items, yamlFiles, photos};
}

/** Phases 2 and 3, parse and assemble: texts become the typed binder, with all that was found on the way. */
export function assemble({items, yamlFiles, photos}: LoadedFolder, today: string): ReadBinder {
  const tableNames = tables.map(({id}) => id);
  const parsed = items.map(({path, text}) => parseItem(path, text, tableNames));
  return readBinderFiles({yamlFiles, items: parsed, photos, today});
}

/** Phase 4, check: every law and every computed table, also on what could only partly be read. */
export function check(binder: Binder): readonly Finding[] {
  return sortFindings([...runRules(binder, rules), ...tableFindings(binder)]);
}
