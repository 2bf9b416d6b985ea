import {rowsOrFault} from './bench-fault.ts';
import {median} from './bench-median.ts';
import {peakMemory} from './bench-memory.ts';
import type {BenchRow} from './bench-record.ts';
import {timeProcess} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/** The binder of one item is what starting, loading and the documents around the items cost. */
const smallest = 1;
const sizes = [25, 100, 400, 1600] as const;
const most = 3;
const mebibyte = 1024 * 1024;

interface Cost {
  /** Milliseconds. */
  readonly time: number;
  /** Bytes; null where the system does not tell. */
  readonly memory: number | null;
}

/**
 * `check` and `build` of ever larger binders: what one item adds in time and in peak memory of all processes together, at
 * 1,600 items and at 100. What a binder of one item costs is taken off both; otherwise start-up alone would make large
 * binders cheap. The largest is measured once, the others up to three times. Memory is measured in runs of its own, since looking at it takes time.
 */
export async function benchGrowth(world: BenchWorld): Promise<readonly BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const name of ['check', 'build'] as const) {
    const words = {id: `growth-${name}`, what: `growth of \`${name}\``, target: 1.2};
    rows.push(...(await rowsOrFault(words, () => growthOf(world, name))));
  }
  return rows;
}

async function growthOf(world: BenchWorld, name: string): Promise<readonly BenchRow[]> {
  const costs = new Map<number, Cost>();
  for (const size of [smallest, ...sizes]) {
    world.say(`${name} of ${size} items …`);
    costs.set(size, await costOf(world, name, size));
  }
  return growthRows(name, costs);
}

async function costOf({command, runs, grown}: BenchWorld, name: string, size: number): Promise<Cost> {
  const whole = command([name, grown(size)], {codes: [0, 1]});
  const times: number[] = [];
  // The largest takes minutes, against which the accidents of one run are small.
  for (let run = 0; run < (size === 1600 ? 1 : Math.min(runs, most)); run++) times.push(timeProcess(whole));
  return {time: median(times), memory: await peakMemory(whole)};
}

export function growthRows(name: string, costs: ReadonlyMap<number, Cost>): readonly BenchRow[] {
  const base = costs.get(smallest) ?? {time: Number.NaN, memory: null};
  const amounts = [
    {id: 'time', what: 'time', unit: 'ms', of: ({time}: Cost) => time},
    {
      id: 'memory',
      what: 'peak memory',
      unit: 'MiB',
      of: ({memory}: Cost) => (memory === null ? Number.NaN : memory / mebibyte),
    },
  ];
  return amounts.map(({id, what, unit, of}) => {
    const perItem = (size: number) => (of(costs.get(size) ?? base) - of(base)) / size;
    const ratio = perItem(1600) / perItem(100);
    return {
      id: `growth-${name}-${id}`,
      what: `\`${name}\`: ${what} an item, of 1,600 items`,
      against: 'of 100 items',
      unit: '×',
      measured: Number.isFinite(ratio) && ratio >= 0 ? ratio : null,
      quartiles: null,
      target: 1.2,
      runs: 1,
      detail: sizes
        .map(
          (size) =>
            `${size}: ${perItem(size).toFixed(2)} ${unit} an item, ${of(costs.get(size) ?? base).toFixed(0)} in all`,
        )
        .join('; '),
    };
  });
}
