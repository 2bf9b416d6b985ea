import {spawnSync} from 'node:child_process';
import {median, quartiles} from './bench-median.ts';
import type {BenchRow} from './bench-record.ts';

/** How a program is run. */
export interface Command {
  readonly program?: string;
  readonly args: readonly string[];
  readonly cwd: string;
  readonly env?: NodeJS.ProcessEnv;
  /** Exit codes with which it did its work; others are a fault and no measurement. */
  readonly codes?: readonly number[];
  /** Milliseconds after which it is given up. */
  readonly patience?: number;
}

/** Runs a command as a process, Node itself where no program is named; milliseconds from start to end. Throws when it fails. */
export function timeProcess({program, args, cwd, env, codes = [0], patience}: Command): number {
  const start = performance.now();
  const {status, signal, stderr, error} = spawnSync(program ?? process.execPath, args, {
    cwd,
    env: env ?? process.env,
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
    ...(patience !== undefined && {timeout: patience, killSignal: 'SIGKILL'}),
  });
  const time = performance.now() - start;
  if (error) throw error;
  if (status === null || !codes.includes(status)) {
    const last = stderr.trim().split('\n').at(-1) ?? '';
    throw new Error(
      `\`${args.slice(0, 3).join(' ')}\` ended with ${status ?? signal}: ${last.slice(0, 200)}`,
    );
  }
  return time;
}

/** Milliseconds that `work` takes within this process. */
export async function timeWork(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

export type Measure = () => number | Promise<number>;

/**
 * Milliseconds of each of `measures`, `runs` times, one after the other in turn: a busy moment of the machine meets all
 * of them. The order turns around from round to round, so that none is always the one that goes first.
 */
export async function inTurn<Name extends string>(
  runs: number,
  measures: Readonly<Record<Name, Measure>>,
): Promise<Record<Name, number[]>> {
  const names = Object.keys(measures) as Name[];
  const times = Object.fromEntries(names.map((name) => [name, []])) as unknown as Record<Name, number[]>;
  for (let round = 0; round < runs; round++) {
    for (const name of round % 2 === 0 ? names : names.toReversed()) times[name].push(await measures[name]());
  }
  return times;
}

type RowWords = Pick<BenchRow, 'id' | 'what' | 'target'>;

/** The row of a ratio: the median of the ratios of each time to the floor that was measured beside it. */
export function ratioRow(
  words: RowWords & {readonly against: string},
  times: readonly number[],
  floors: readonly number[],
): BenchRow {
  const ratios = times.map((time, index) => time / (floors[index] ?? Number.NaN));
  return {
    ...words,
    unit: '×',
    measured: median(ratios),
    quartiles: quartiles(ratios),
    runs: times.length,
    detail: `${inMilliseconds(times)} against ${inMilliseconds(floors)}`,
  };
}

/** The row of a time that stands for itself. */
export function timeRow(words: RowWords, times: readonly number[], detail = ''): BenchRow {
  return {
    ...words,
    against: null,
    unit: 'ms',
    measured: median(times),
    quartiles: quartiles(times),
    runs: times.length,
    detail,
  };
}

export function inMilliseconds(times: readonly number[]): string {
  const time = median(times);
  return `${time.toLocaleString('en-GB', {maximumFractionDigits: time < 10 ? 2 : 0})} ms`;
}
