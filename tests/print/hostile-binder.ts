import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {loadLayouts} from '../../src/commands/load-layouts.ts';
import {composeBinder} from '../../src/compose/compose-binder.ts';
import {gaugeInWords} from '../../src/compose/gauge-in-words.ts';
import {photoRequests} from '../../src/compose/photo-requests.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import {assemble, check, load} from '../../src/pipeline.ts';

const base = 'tests/rules/base/content';
/** One grey point, as large on paper as a photo. */
const grey = 'data:image/gif;base64,R0lGODlhAQABAIAAAMLCwgAAACH5BAAAAAAALAAAAAABAAEAAAICRAEAOw==';

/** The small binder of the rules' cases with `files` laid over its content, composed and ready to be laid out. */
export async function smallLayoutInput(files: Readonly<Record<string, string>>): Promise<LayoutInput> {
  const own = readdirSync(base, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'))
    .map((path) => [`content/${path.slice(base.length + 1)}`, readFileSync(path, 'utf8')] as const);
  const workspace = createMemoryWorkspace({
    ...Object.fromEntries(own),
    'content/photos/s-01-front.jpg': Uint8Array.of(0),
    ...files,
  });
  const loaded = await load(workspace, async () => ({ok: true, width: 1600, height: 1200, format: 'jpeg'}));
  const {binder, findings} = assemble(loaded, '2026-09-28');
  if (binder === null) throw new Error(`the binder cannot be read: ${JSON.stringify(findings)}`);
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
