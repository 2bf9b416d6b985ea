import {expect, test, vi} from 'vitest';
import {openDiskWorkspace} from '../../src/io/disk-workspace.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';
import {assemble, check, load, parseFile, type TextFile} from '../../src/pipeline.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';
import {root} from '../support/run-cli.ts';

// Reading costs most of a check. What is read twice by two who do not know of each other is not seen in any result.

vi.mock('../../src/knitting/rows/read-rows.ts', async (real) => {
  const actual = await real<typeof import('../../src/knitting/rows/read-rows.ts')>();
  return {...actual, readRows: vi.fn(actual.readRows)};
});

test('a check of the worked example reads each file once, and each block of rows once for rules, charts and keys', async () => {
  const workspace = await openDiskWorkspace(root);
  const loaded = await load(workspace, async () => ({ok: true, width: 1600, height: 1200, format: 'jpeg'}));
  const parse = vi.fn(parseFile);
  const parseYaml = vi.fn(({text}: TextFile) => readYaml(text));
  const {binder} = assemble(loaded, '2026-09-28', {parse, readYaml: parseYaml});
  if (binder === null) throw new Error('the worked example has a binder file');
  expect(parse).toHaveBeenCalledTimes(loaded.items.length);
  for (const {path} of loaded.yamlFiles)
    expect(parseYaml.mock.calls.filter(([file]) => file.path === path)).toHaveLength(1);

  const blocks = binder.items.flatMap(({body}) =>
    body.blocks.flatMap(({language, text}) => (language === 'rows' ? [text] : [])),
  );
  check(binder);
  const read = vi.mocked(readRows).mock.calls.map(([text]) => text);
  expect(blocks.length).toBeGreaterThan(5);
  expect(blocks.map((text) => read.filter((each) => each === text).length)).toEqual(
    blocks.map((text) => blocks.filter((each) => each === text).length),
  );
});
