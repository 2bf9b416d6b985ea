import {mkdirSync, rmSync} from 'node:fs';
import path from 'node:path';
import {runCheck} from '../commands/check.ts';
import {copyExample} from './bench-binders.ts';
import {nodeFloor, printFloor, warmRemark, warmUps} from './bench-floors.ts';
import type {BenchRow} from './bench-record.ts';
import {inMilliseconds, inTurn, ratioRow, timeProcess, timeRow, timeWork} from './bench-timing.ts';
import {type BenchWorld, quietSurroundings, writeReprintHtml} from './bench-world.ts';

export async function benchStartUp({root, runs, command}: BenchWorld): Promise<readonly BenchRow[]> {
  const {floor, own} = await inTurn(runs, {
    floor: () => timeProcess(nodeFloor(root)),
    own: () => timeProcess(command(['--version'])),
  });
  return [ratioRow({id: 'start-up', what: '`--version`', against: '`node -e 0`', target: 1.5}, own, floor)];
}

/** `check` as a process and as a call in this one; the floor of remark is the warm one in both. */
export async function benchCheck({root, runs, command, example}: BenchWorld): Promise<readonly BenchRow[]> {
  const {folder} = await example();
  const remark = warmRemark(path.join(folder, 'content'));
  const own = () => runCheck(folder, quietSurroundings(folder), 'text');
  for (let index = 0; index < warmUps; index++) {
    remark();
    await own();
  }
  const {n, m, cold, warm} = await inTurn(runs, {
    n: () => timeProcess(nodeFloor(root)),
    cold: () => timeProcess(command(['check', folder])),
    m: () => timeWork(remark),
    warm: () => timeWork(own),
  });
  const floors = n.map((each, index) => 3 * each + 1.5 * (m[index] ?? Number.NaN));
  const toNode = ratioRow({id: '', what: '', against: '', target: null}, cold, n).measured ?? Number.NaN;
  const coldRow = ratioRow(
    {
      id: 'check-cold',
      what: '`check` of the example as a process',
      against: '3 × `node -e 0` + 1.5 × remark alone, warm',
      target: 1,
    },
    cold,
    floors,
  );
  return [
    {
      ...coldRow,
      detail: `${coldRow.detail}, which is 3 × ${inMilliseconds(n)} + 1.5 × ${inMilliseconds(m)}; ${toNode.toFixed(1)} × \`node -e 0\``,
    },
    ratioRow(
      {
        id: 'check-warm',
        what: 'the same as a call within a process, reading the disk included',
        against: 'remark alone, warm',
        target: 1.3,
      },
      warm,
      m,
    ),
  ];
}

export async function benchBuild({root, runs, command, example}: BenchWorld): Promise<readonly BenchRow[]> {
  const {folder, html, browser} = await example();
  const floor = printFloor(root, browser, html, path.join(folder, 'floor.pdf'));
  const fresh = path.join(path.dirname(folder), 'fresh');
  const again = await inTurn(runs, {
    floor: () => timeProcess(floor),
    own: () => timeProcess(command(['build', folder])),
  });
  const first = await inTurn(runs, {
    floor: () => timeProcess(floor),
    own() {
      rmSync(fresh, {recursive: true, force: true});
      copyExample(root, fresh);
      const cache = path.join(fresh, 'cache');
      mkdirSync(cache);
      const env = {...command([]).env, XDG_CACHE_HOME: cache};
      return timeProcess(command(['build', fresh], {env}));
    },
  });
  const against = 'bare print of its `binder.html`';
  return [
    ratioRow(
      {id: 'build', what: '`build` of the example, all documents', against, target: 1.3},
      again.own,
      again.floor,
    ),
    ratioRow(
      {
        id: 'build-first',
        what: 'the same for the first time: no picture scaled yet, no earlier build',
        against,
        target: null,
      },
      first.own,
      first.floor,
    ),
  ];
}

export async function benchReprint({root, runs, command, example}: BenchWorld): Promise<readonly BenchRow[]> {
  const built = await example();
  const html = await writeReprintHtml(built, 'S-06');
  const {floor, own} = await inTurn(runs, {
    floor: () =>
      timeProcess(printFloor(root, built.browser, html, path.join(built.folder, 'floor-item.pdf'))),
    own: () => timeProcess(command(['reprint', 'S-06', built.folder])),
  });
  return [
    ratioRow(
      {
        id: 'reprint',
        what: '`reprint S-06` of the example',
        against: 'bare print of the item’s own HTML',
        target: 1.15,
      },
      own,
      floor,
    ),
  ];
}

export async function benchThousand({runs, command, grown}: BenchWorld): Promise<readonly BenchRow[]> {
  const folder = grown(1000);
  // A binder that lacks something is checked as well.
  const codes = [0, 1];
  const {status, check} = await inTurn(runs, {
    status: () => timeProcess(command(['status', folder], {codes})),
    check: () => timeProcess(command(['check', folder], {codes})),
  });
  return [
    timeRow({id: 'status-1000', what: '`status` of a binder of 1,000 items', target: 1500}, status),
    timeRow({id: 'check-1000', what: '`check` of a binder of 1,000 items', target: 1500}, check),
  ];
}
