import {loadLayouts} from '../../src/commands/load-layouts.ts';
import {composeBinder} from '../../src/compose/compose-binder.ts';
import {gaugeInWords} from '../../src/compose/gauge-in-words.ts';
import {photoRequests} from '../../src/compose/photo-requests.ts';
import {openDiskWorkspace} from '../../src/io/disk-workspace.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import type {Binder} from '../../src/model/binder.ts';
import {assemble, check, load} from '../../src/pipeline.ts';
import {root} from './run-cli.ts';

/** One grey point: a picture's place is what counts here, and decoding photos takes half of a build. */
const grey = 'data:image/gif;base64,R0lGODlhAQABAIAAAMLCwgAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==';

/** The worked example, composed and ready to be laid out, with the text of its binder file changed by `rewrite`. */
export async function workedExample(
  rewrite: (settings: string) => string = (text) => text,
): Promise<LayoutInput> {
  const workspace = await openDiskWorkspace(root);
  const loaded = await load(workspace, async () => ({ok: true, width: 1600, height: 1200, format: 'jpeg'}));
  const yamlFiles = loaded.yamlFiles.map(({path, text}) => ({
    path,
    text: path === 'content/binder.yaml' ? rewrite(text) : text,
  }));
  const {binder} = assemble({...loaded, yamlFiles}, '2026-09-28');
  if (binder === null) throw new Error('the worked example has a binder file');
  return layoutInputOf(binder);
}

/** A binder composed and ready to be laid out, with a grey square for each picture. */
export async function layoutInputOf(binder: Binder): Promise<LayoutInput> {
  const pictures = photoRequests(binder).map(
    ({key, widthMillimetres}) =>
      [key, {source: grey, widthMillimetres, heightMillimetres: widthMillimetres}] as const,
  );
  const [layouts, composition] = await Promise.all([
    loadLayouts(createMemoryWorkspace({})),
    composeBinder(binder, new Map(pictures)),
  ]);
  return {
    ...layouts,
    binder,
    composed: composition.items,
    references: composition.references,
    draft: null,
    findings: check(binder),
    gaugeInWords: (measured) => gaugeInWords(measured, binder.settings.units),
  };
}
