import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import {assemble, load} from '../../src/pipeline.ts';
import {layoutInputOf} from '../support/worked-example.ts';

const base = 'tests/rules/base/content';
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
  return layoutInputOf(binder);
}
