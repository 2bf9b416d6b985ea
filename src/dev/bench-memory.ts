import {spawn} from 'node:child_process';
import {readdirSync, readFileSync} from 'node:fs';
import {setTimeout as pause} from 'node:timers/promises';
import type {Command} from './bench-timing.ts';

/** Milliseconds between two looks at the memory. */
const interval = 40;

/**
 * Peak memory in bytes of a command with all processes below it; null where the system has no `/proc`. Pages that
 * several processes share are counted once between them (proportional set size, proc_pid_smaps(5)). What lives shorter than
 * 40 ms may be missed.
 */
export async function peakMemory({program, args, cwd, env, codes = [0]}: Command): Promise<number | null> {
  const child = spawn(program ?? process.execPath, args, {cwd, env: env ?? process.env, stdio: 'ignore'});
  const ended = new Promise<number | null>((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', resolve);
  });
  let isRunning = true;
  ended.then(
    () => {
      isRunning = false;
    },
    () => {
      isRunning = false;
    },
  );
  let peak: number | null = null;
  while (isRunning) {
    const now = child.pid === undefined ? null : memoryOfTree(child.pid);
    if (now !== null) peak = Math.max(peak ?? 0, now);
    await pause(interval);
  }
  const code = await ended;
  if (code === null || !codes.includes(code))
    throw new Error(`\`${args.slice(0, 3).join(' ')}\` ended with ${code}`);
  return peak;
}

/** Memory in bytes of a process and of all below it; null when there is no such process, or no `/proc`. */
export function memoryOfTree(root: number): number | null {
  const parents = new Map<number, number>();
  for (const name of namesIn('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    // The program's name stands in parentheses and may itself hold blanks and parentheses.
    const parent = /^.*\) \S (\d+)/s.exec(textOf(`/proc/${name}/stat`))?.[1];
    if (parent !== undefined) parents.set(Number(name), Number(parent));
  }
  if (!parents.has(root)) return null;
  const isBelow = (id: number): boolean => {
    for (let each: number | undefined = id; each !== undefined; each = parents.get(each)) {
      if (each === root) return true;
    }
    return false;
  };
  const sizes = [...parents.keys()].filter(isBelow).map((id) => {
    const kilobytes = /^Pss:\s+(\d+) kB/m.exec(textOf(`/proc/${id}/smaps_rollup`))?.[1];
    return Number(kilobytes ?? 0) * 1024;
  });
  return sizes.reduce((sum, size) => sum + size, 0);
}

/** Empty for a process that has ended meanwhile. */
function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
