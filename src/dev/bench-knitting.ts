import {openDiskWorkspace} from '../io/disk-workspace.ts';
import {proveRows} from '../knitting/rows/prove-rows.ts';
import {readRows} from '../knitting/rows/read-rows.ts';
import {noCache} from '../photos/photo-cache.ts';
import {readPhotoFacts} from '../photos/read-photo-facts.ts';
import {assemble, load} from '../pipeline.ts';
import {lookUpTable} from '../tables/index.ts';
import {warmUps} from './bench-floors.ts';
import type {BenchRow} from './bench-record.ts';
import {inTurn, timeRow, timeWork} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/** A lace of 400 rows on 301 stitches: the size that reading and proving are measured at. */
const lace = [
  'multiple: 12 + 1',
  'cast on: 301',
  ...Array.from({length: 200}, (_, index) => [
    `Row ${2 * index + 1} (RS): K1, *yo, ssk, k3, p1, k3, k2tog, yo, p1; rep from * to end.`,
    `Row ${2 * index + 2} (WS): *K1, p1, k4, p1, k4, p1; rep from * to last st, k1.`,
  ]).flat(),
].join('\n');

/** The arithmetic, warm and within this process; reported only, since nothing outside does the same. */
export async function benchKnitting({root, runs}: BenchWorld): Promise<readonly BenchRow[]> {
  const example = await load(await openDiskWorkspace(root), (bytes) => readPhotoFacts(bytes, noCache));
  const {binder} = assemble(example, '2026-09-28');
  const vest = binder?.items.find(({id}) => id === 'P-01');
  if (!binder || !vest) throw new Error('the worked example has no vest P-01');
  const works = {
    rows: () => timeWork(() => proveRows(readRows(lace).pattern)),
    pieces: () =>
      timeWork(() => lookUpTable(binder, vest)('piece', {name: 'front', against: 'back', rows: 'yes'})),
  };
  await inTurn(warmUps, works);
  const {rows, pieces} = await inTurn(runs, works);
  return [
    timeRow({id: 'rows', what: 'reading and proving 400 rows of 301 stitches', target: null}, rows),
    timeRow(
      {
        id: 'pieces',
        what: 'the vest’s front and back read, worked, joined, drawn and written',
        target: null,
      },
      pieces,
    ),
  ];
}
