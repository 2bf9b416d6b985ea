import {tableFindings} from './compose/table-findings.ts';
import type {Finding} from './diagnostics/finding.ts';
import {sortFindings} from './diagnostics/sort-findings.ts';
import type {Workspace} from './io/workspace.ts';
import {parseItem} from './markdown/parse-item.ts';
import type {Binder, PhotoFacts} from './model/binder.ts';
import type {ParsedItem} from './model/parsed-item.ts';
import {
  clippingsPath,
  type ReadBinder,
  readBinderFiles,
  roundsFolder,
  sentRoundFile,
} from './model/read-binder-files.ts';
import {rules} from './rules/index.ts';
import {runRules} from './rules/run-rules.ts';
import {tables} from './tables/index.ts';
import {readYaml as readYamlText, type YamlDocument} from './yaml/read-yaml.ts';

/** A file of the binder folder as it was read. */
export interface TextFile {
  readonly path: string;
  readonly text: string;
}

/** What lies in the binder folder, as far as checking needs it. */
export interface LoadedFolder {
  readonly items: readonly TextFile[];
  readonly yamlFiles: readonly TextFile[];
  /** Null when there is none. */
  readonly clippings: TextFile | null;
  readonly styles: readonly TextFile[];
  /** By file name within `content/photos`. */
  readonly photos: ReadonlyMap<string, PhotoFacts>;
}

/** Decodes a picture; the world's part of loading, so that the phases run without a decoder in tests. */
export type PhotoDecoder = (bytes: Uint8Array) => Promise<PhotoFacts>;

export const contentFolder = 'content';
export const photosFolder = 'content/photos/';

/** Phase 1, load: every text and picture below `content`. */
export async function load(workspace: Workspace, decodePhoto: PhotoDecoder): Promise<LoadedFolder> {
  const photos = new Map<string, PhotoFacts>();
  const paths = await workspace.list(contentFolder);
  const read = async (path: string): Promise<TextFile> => ({
    path,
    text: (await workspace.readText(path)) ?? '',
  });
  const texts = await Promise.all(paths.filter((path) => isText(contentKind(path))).map(read));
  for (const path of paths.filter((each) => contentKind(each) === 'photo')) {
    const bytes = await workspace.readBytes(path);
    if (bytes !== null) photos.set(path.slice(photosFolder.length), await decodePhoto(bytes));
  }
  return loadedFolder(texts, photos);
}

/** The folder's texts by what they are read as. */
export function loadedFolder(texts: readonly TextFile[], photos: LoadedFolder['photos']): LoadedFolder {
  const textsOf = (kind: ContentKind) => texts.filter(({path}) => contentKind(path) === kind);
  return {
    items: textsOf('item'),
    yamlFiles: textsOf('yaml'),
    clippings: textsOf('clippings')[0] ?? null,
    styles: textsOf('style'),
    photos,
  };
}

export type ContentKind = 'item' | 'yaml' | 'clippings' | 'style' | 'photo';

/** What a file of the content folder is read as; null when it is not read. */
export function contentKind(path: string): ContentKind | null {
  if (path === clippingsPath) return 'clippings';
  if (path.startsWith(photosFolder)) return 'photo';
  if (path.startsWith(roundsFolder)) return sentRoundFile.test(path) ? 'yaml' : null;
  if (/\.ya?ml$/i.test(path)) return 'yaml';
  if (/\.csl$/i.test(path)) return 'style';
  return /\.md$/i.test(path) ? 'item' : null;
}

function isText(kind: ContentKind | null): boolean {
  return kind !== null && kind !== 'photo';
}

/** How texts are read; a preview remembers what they gave for files that have not changed. */
export interface Readers {
  readonly parse: (file: TextFile) => ParsedItem;
  readonly readYaml: (file: TextFile) => YamlDocument;
}

/** Phases 2 and 3, parse and assemble: texts become the typed binder, with all that was found on the way. */
export function assemble(
  {items, yamlFiles, clippings, styles, photos}: LoadedFolder,
  today: string,
  {parse, readYaml}: Readers = {parse: parseFile, readYaml: ({text}) => readYamlText(text)},
): ReadBinder {
  return readBinderFiles({
    yamlFiles,
    items: items.map(parse),
    clippings: clippings?.text ?? '',
    styles,
    photos,
    today,
    readYaml,
  });
}

/** Phase 2 for one item. */
export function parseFile({path, text}: TextFile): ParsedItem {
  return parseItem(path, text, tableNames);
}

const tableNames = tables.map(({id}) => id);

/** Phase 4, check: every law and every computed table, also on what could only partly be read. */
export function check(binder: Binder): readonly Finding[] {
  return sortFindings([...runRules(binder, rules), ...tableFindings(binder)]);
}
