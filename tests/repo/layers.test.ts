import {execFile} from 'node:child_process';
import {cp, mkdir, mkdtemp, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {promisify} from 'node:util';
import {expect, test} from 'vitest';

const run = promisify(execFile);
const root = path.resolve(import.meta.dirname, '../..');

/** Each breach of a layer, as the file that commits it, its text, and the rule that must name it. */
const breaches = [
  ['src/knitting/reads-a-file.ts', "import 'node:fs';", 'knitting-no-node'],
  ['src/knitting/uses-a-package.ts', "import 'yaml';", 'knitting-imports'],
  ['src/rules/uses-the-processor.ts', "import 'unified';", 'rules-imports'],
  ['src/rules/uses-a-table.ts', "import '../tables/plain.ts';", 'rules-imports'],
  ['src/markdown/uses-a-table.ts', "import '../tables/plain.ts';", 'markdown-imports'],
  ['src/layout/computes.ts', "import '../knitting/plain.ts';", 'layout-imports'],
  ['src/pipeline.ts', "import './print/plain.ts';", 'pipeline-knows-no-world'],
  ['src/commands/needs-developers.ts', "import '../dev/plain.ts';", 'nothing-imports-dev'],
  ['src/commands/needs-developers.ts', "import '../dev/plain.ts';", 'commands-imports'],
  ['src/model/one.ts', "import './two.ts';", 'no-cycles'],
] as const;

const allowed = {
  // The other half of the cycle, which is named once.
  'src/model/two.ts': "import './one.ts';",
  'src/knitting/plain.ts': "import '../support/plain.ts';",
  'src/support/plain.ts': 'export {};',
  'src/tables/plain.ts': "import '../knitting/plain.ts';",
  'src/model/plain.ts': "import 'zod';\nimport '../knitting/plain.ts';",
  'src/print/plain.ts': "import 'node:fs';",
  'src/dev/plain.ts': "import 'node:fs';",
};

test('the layer check names each breach of the import table, and nothing that the table allows', async () => {
  const folder = await mkdtemp(path.join(tmpdir(), 'swatchleaf-layers-'));
  try {
    const files = {...Object.fromEntries(breaches.map(([file, text]) => [file, text])), ...allowed};
    for (const [file, text] of Object.entries(files)) await writeAt(path.join(folder, file), text);
    for (const name of ['yaml', 'unified', 'zod']) {
      await writeAt(
        path.join(folder, 'node_modules', name, 'package.json'),
        `{"name": "${name}", "main": "index.js"}`,
      );
      await writeAt(path.join(folder, 'node_modules', name, 'index.js'), '');
    }
    const dependencies = {yaml: '*', unified: '*', zod: '*'};
    await writeAt(path.join(folder, 'package.json'), JSON.stringify({type: 'module', dependencies}));
    for (const name of ['.dependency-cruiser.mjs', 'tsconfig.json'])
      await cp(path.join(root, name), path.join(folder, name));

    const cruiser = path.join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
    const options = ['src', '--config', '.dependency-cruiser.mjs', '--output-type', 'json'];
    const result = await run(process.execPath, [cruiser, ...options], {cwd: folder}).catch((error) => error);
    const report: {summary: {violations: {from: string; rule: {name: string}}[]; totalCruised: number}} =
      JSON.parse(result.stdout);
    // A parser that does not understand the sources would see no module and report no fault.
    expect(report.summary.totalCruised).toBeGreaterThanOrEqual(Object.keys(files).length);
    const found = new Set(report.summary.violations.map(({from, rule}) => `${from}: ${rule.name}`));
    expect([...found].sort()).toEqual(breaches.map(([file, , rule]) => `${file}: ${rule}`).sort());
  } finally {
    await rm(folder, {recursive: true, force: true});
  }
});

async function writeAt(file: string, text: string): Promise<void> {
  await mkdir(path.dirname(file), {recursive: true});
  await writeFile(file, text);
}
