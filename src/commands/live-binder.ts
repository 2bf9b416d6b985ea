import {createHash} from 'node:crypto';
import {type OpenedEngine, openEngine} from '../compose/compose-binder.ts';
import {composeItem} from '../compose/compose-item.ts';
import {gaugeInWords} from '../compose/gauge-in-words.ts';
import {itemPhotos} from '../compose/photo-requests.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {documentHtml} from '../layout/document.ts';
import {itemSheet} from '../layout/item-sheet.ts';
import {sheetParts} from '../layout/render-sheets.ts';
import type {Binder, Item} from '../model/binder.ts';
import {assemble, check, parseFile, type TextFile} from '../pipeline.ts';
import {readYaml} from '../yaml/read-yaml.ts';
import type {FolderChange, LiveFolder} from './live-folder.ts';
import {type Layouts, loadLayouts} from './load-layouts.ts';
import type {OpenedFolder} from './open-binder.ts';
import {scalePhotos} from './scale-photos.ts';

/** A binder that is read again and again while it is written; what did not change is not worked out anew. */
export interface LiveBinder {
  refresh(): Promise<FolderChange>;
  /** As of the last refresh; null while the binder file or the syllabus cannot be read. */
  binder(): Binder | null;
  /** Everything there is to find in the binder as of the last refresh. */
  findings(): readonly Finding[];
  /** The item's sheet as a page, each block marked with its line. */
  preview(item: Item): Promise<ItemPreview>;
}

export interface ItemPreview {
  /** Stands for everything before the body. */
  readonly head: string;
  readonly body: string;
  document(): string;
}

export function openLiveBinder(
  {workspace, photoCache}: OpenedFolder,
  folder: LiveFolder,
  today: string,
): LiveBinder {
  const parse = remembering(parseFile);
  const parseYaml = remembering(({text}: TextFile) => readYaml(text));
  let read: ReturnType<typeof assemble> = {binder: null, findings: []};
  let layouts: {readonly key: string; readonly loaded: Promise<Layouts>} | null = null;
  let engine: {readonly key: string; readonly opened: Promise<OpenedEngine>} | null = null;

  /** The engine keeps the sources it was opened with: another library or style needs another engine. */
  function engineFor(binder: Binder): Promise<OpenedEngine> {
    const {language, 'citation-style': style} = binder.settings;
    const key = JSON.stringify([
      language,
      style,
      binder.ownStyle?.xml,
      binder.library.map(({source}) => source),
    ]);
    if (engine?.key !== key) engine = {key, opened: openEngine(binder)};
    return engine.opened;
  }

  /** The candidate may be writing a layout of their own too. */
  async function layoutsNow(): Promise<Layouts> {
    const stamps = (await workspace.list('layouts')).map(async (path) => [path, await workspace.stamp(path)]);
    const key = JSON.stringify(await Promise.all(stamps));
    if (layouts?.key !== key) layouts = {key, loaded: loadLayouts(workspace)};
    return layouts.loaded;
  }

  return {
    async refresh() {
      const change = await folder.refresh();
      read = assemble(change.loaded, today, {parse, readYaml: parseYaml});
      return change;
    },
    binder: () => read.binder,
    findings: () => (read.binder ? check(read.binder) : read.findings),
    async preview(item) {
      const {binder} = read;
      if (binder === null) throw new Error('there is no binder to preview');
      const [{templates, fonts}, pictures, opened] = await Promise.all([
        layoutsNow(),
        scalePhotos({workspace, photoCache}, binder.photos, itemPhotos(binder, item)),
        engineFor(binder),
      ]);
      const composed = composeItem({binder, item, engine: opened.engine, pictures, marksLines: true});
      const input = {
        binder,
        composed: new Map([[item.id, composed.item]]),
        references: [],
        templates,
        fonts,
        draft: null,
        findings: [],
        gaugeInWords: (measured: Parameters<typeof gaugeInWords>[0]) =>
          gaugeInWords(measured, binder.settings.units),
      };
      const sheet = itemSheet(input, composed.item, null);
      const parts = sheetParts(input, `${item.id}: ${item.title}`, [sheet], null);
      // Half a megabyte of fonts goes before the body: it is put together only for a page that does not have it yet.
      return {
        head: digest([layouts?.key, parts.title, parts.pageRules]),
        body: parts.body,
        document: () => documentHtml(input, parts),
      };
    },
  };
}

/** Reads a file again only when its text has changed. */
function remembering<Result>(parse: (file: TextFile) => Result): (file: TextFile) => Result {
  const known = new Map<string, {readonly text: string; readonly result: Result}>();
  return (file) => {
    const before = known.get(file.path);
    if (before?.text === file.text) return before.result;
    const result = parse(file);
    known.set(file.path, {text: file.text, result});
    return result;
  };
}

function digest(value: unknown): string {
  return createHash('sha256').update(JSON.stringify(value)).digest('hex').slice(0, 16);
}
