import {spawn} from 'node:child_process';
import {once} from 'node:events';
import {existsSync} from 'node:fs';
import {describe, expect, test} from 'vitest';
import {writeGrownBinder} from '../../src/dev/bench-binders.ts';
import {memoryOfTree, peakMemory} from '../../src/dev/bench-memory.ts';
import {openDiskWorkspace} from '../../src/io/disk-workspace.ts';
import {assemble, check, load} from '../../src/pipeline.ts';
import {emptyFolder, root} from '../support/run-cli.ts';

describe('a grown binder', () => {
  test('has as many items as it should, each with an id of its own, and nothing amiss but what a photo would mend', async () => {
    const folder = await emptyFolder();
    writeGrownBinder(root, folder, 36);
    const workspace = await openDiskWorkspace(folder);
    const loaded = await load(workspace, async () => ({ok: true, width: 1, height: 1, format: 'jpeg'}));
    const {binder} = assemble(loaded, '2026-09-28');
    if (binder === null) throw new Error('the binder cannot be read');
    expect(new Set(binder.items.map(({id}) => id)).size).toBe(36);
    expect(check(binder).filter(({severity}) => severity !== 'info')).toEqual([]);
    expect(binder.items.every(({body}) => body.clusters.length > 0)).toBe(true);
  });
});

describe.runIf(existsSync('/proc/self/smaps_rollup'))('memory of a tree of processes', () => {
  const hold = (mebibytes: number) => `globalThis.held = Buffer.alloc(${mebibytes} * 2 ** 20, 1);`;

  test('counts what a process below holds, and peaks though it is given back', async () => {
    const below = `${hold(96)} setTimeout(() => {}, 300);`;
    const script = `require('node:child_process').spawnSync(process.execPath, ['-e', ${JSON.stringify(below)}]);`;
    const alone = (await peakMemory({args: ['-e', 'setTimeout(() => {}, 300)'], cwd: root})) ?? Number.NaN;
    const both = (await peakMemory({args: ['-e', script], cwd: root})) ?? Number.NaN;
    expect(both - alone).toBeGreaterThan(96 * 2 ** 20);
  });

  test('does not count a process beside it, and knows when one is gone', async () => {
    const beside = spawn(process.execPath, [
      '-e',
      `${hold(200)} console.log(1); setInterval(() => {}, 999);`,
    ]);
    await once(beside.stdout, 'data');
    const other = (await peakMemory({args: ['-e', 'setTimeout(() => {}, 200)'], cwd: root})) ?? Number.NaN;
    expect(other).toBeLessThan(200 * 2 ** 20);
    const ended = once(beside, 'close');
    beside.kill('SIGKILL');
    await ended;
    expect(memoryOfTree(beside.pid ?? 0)).toBeNull();
  });
});
