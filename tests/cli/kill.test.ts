import {existsSync, readdirSync, readFileSync, watch} from 'node:fs';
import {cp, mkdir, rm} from 'node:fs/promises';
import path from 'node:path';
import process from 'node:process';
import {setTimeout as pause} from 'node:timers/promises';
import {expect, test, vi} from 'vitest';
import {emptyFolder, smallBinder, swatchleaf} from '../support/run-cli.ts';
import {startSwatchleaf} from '../support/start-cli.ts';

const isLong = process.env.SWATCHLEAF_LONG !== undefined;
const seed = Number(process.env.SWATCHLEAF_SEED ?? Date.now() % 1_000_000);

/** What each file of a folder holds, by path. */
type Snapshot = ReadonlyMap<string, string>;

interface Victim {
  readonly args: readonly string[];
  readonly kills: number;
  /** Files laid over the small binder; null takes one away. */
  readonly files?: Readonly<Record<string, string | null>>;
  /** Whether a build comes first. */
  readonly isBuilt?: boolean;
  /** The exit code of the run that finds the work done already. */
  readonly again: number;
}

interface Moment {
  readonly after: 'the lock was taken' | 'it began to write';
  /** Milliseconds. */
  readonly wait: number;
}

/** A browser takes its time: most kills are for commands without one. 20 in all, and 200 in the long run. */
const victims: readonly Victim[] = [
  {args: ['printed'], kills: 7, isBuilt: true, again: 0},
  {args: ['answer'], kills: 5, again: 2},
  {
    args: ['new'],
    kills: 5,
    files: {'content/questions/q-01.md': null, 'content/reviews/b-01.md': null},
    again: 0,
  },
  {args: ['build'], kills: 2, again: 0},
  {args: ['send', '--self-checked'], kills: 1, again: 2},
];

test.each(victims)(
  `$args, killed at random moments (seed ${seed}): nothing is lost or torn, and the next run leaves nothing behind`,
  async ({args, kills, files = {}, isBuilt = false, again}) => {
    const before = await smallBinder(files);
    if (isBuilt) expect((await swatchleaf(['build', '--only', 'S-01', before])).code).toBe(0);
    const old = snapshot(before);
    const scratch = await emptyFolder();
    const random = randomNumbers(seed + args.join().length);

    /** Once to the end: what comes out, and how long the lock is held. */
    const whole = await lane(scratch, 'whole', before);
    const run = startSwatchleaf([...args, whole.folder], {env: whole.env});
    const locked = await lockIn(whole.folder, run.ended);
    const began = performance.now();
    expect((await run.ended).code).toBe(0);
    const duration = performance.now() - began;
    const fresh = snapshot(whole.folder);
    expect(locked).toBe(true);
    expect(fresh).not.toEqual(old);

    const met = {killed: 0, 'with files half written': 0, 'with a browser': 0};
    const count = isLong ? kills * 10 : kills;
    // Half of them while it works, half while it writes. Most of the first early: where other work takes the processor, a
    // run is over sooner after its lock than the measured one, and whoever comes too late kills nothing.
    const moments = Array.from({length: count}, (_, index): Moment => {
      return index >= count / 2
        ? {after: 'it began to write', wait: random() * (kills > 2 ? 8 : 80)}
        : {after: 'the lock was taken', wait: random() * duration * (index % 4 === 3 ? 1 : 0.25)};
    });
    const killOne = async ({after, wait}: Moment, name: string) => {
      const {folder, env, temporary} = await lane(scratch, name, before);
      const victim = startSwatchleaf([...args, folder], {env});
      await (after === 'the lock was taken' ? lockIn : stirIn)(folder, victim.ended);
      await pause(wait);
      victim.signal('SIGKILL');
      const {code} = await victim.ended;
      const torn = snapshot(folder);
      if (code === -1) met.killed++;
      if ([...torn.keys()].some((file) => file.endsWith('.tmp'))) met['with files half written']++;
      if (readdirSync(temporary).length > 0) met['with a browser']++;
      const why = `killed ${wait.toFixed(1)} ms after ${after}`;
      for (const file of new Set([...old.keys(), ...torn.keys()])) {
        // What is being written and the lock have names of their own, which are hidden.
        if (path.basename(file).startsWith('.swatchleaf-')) continue;
        expect([old.get(file), fresh.get(file)], `${file}, ${why}`).toContain(torn.get(file));
      }
      const isDone = torn.size >= fresh.size && [...fresh].every(([file, text]) => torn.get(file) === text);
      await nobodyWith(temporary);
      const next = await swatchleaf([...args, folder], {env});
      expect(next.code, `${next.err}\nthe run after it was ${why}`).toBe(isDone ? again : 0);
      expect(next.err).not.toMatch(/Waiting|lock/);
      expect(snapshot(folder), `the run after it was ${why}`).toEqual(fresh);
      expect(readdirSync(temporary)).toEqual([]);
      await nobodyWith(temporary);
      await rm(folder, {recursive: true});
    };
    // Two at a time: so many processors has even a small computer.
    const lanes = [0, 1].map(async (first) => {
      for (const [index, moment] of moments.entries())
        if (index % 2 === first) await killOne(moment, `kill ${index}`);
    });
    await Promise.all(lanes);
    console.log(`${args[0]}: ${JSON.stringify(met)} of ${moments.length}, ${Math.round(duration)} ms`);
    // Whoever is never met at work was not tested.
    expect(met.killed).toBeGreaterThan(moments.length / 3);
  },
  isLong ? 2_400_000 : 240_000,
);

/** A copy of the binder, with a temporary folder of its own. */
async function lane(scratch: string, name: string, before: string) {
  const folder = path.join(scratch, name);
  const temporary = path.join(scratch, `${name} temporary`);
  await cp(before, folder, {recursive: true});
  await mkdir(temporary);
  const env = {
    TMPDIR: temporary,
    TEMP: temporary,
    TMP: temporary,
    XDG_CACHE_HOME: path.join(scratch, 'cache'),
  };
  return {folder, temporary, env};
}

/** Comes as soon as something but the lock stirs in the folder, which is when the run writes; or when it has ended. */
async function stirIn(folder: string, ended: Promise<unknown>): Promise<void> {
  let seen = () => {};
  const watcher = watch(folder, {recursive: true}, (_, name) => {
    if (name !== null && name !== 'build' && !name.endsWith('.lock')) seen();
  });
  await Promise.race([
    ended,
    new Promise<void>((resolve) => {
      seen = resolve;
    }),
  ]);
  watcher.close();
}

/** Comes as soon as a lock lies in the build folder, or when the run has ended: then false. */
async function lockIn(folder: string, ended: Promise<unknown>): Promise<boolean> {
  const build = path.join(folder, 'build');
  const isLocked = () => existsSync(build) && readdirSync(build).some((name) => name.endsWith('.lock'));
  let isOver = false;
  void ended.then(() => {
    isOver = true;
  });
  while (!isOver && !isLocked()) await pause(1);
  return !isOver;
}

/** Everything below `folder`, hidden files too. */
function snapshot(folder: string): Snapshot {
  const entries = readdirSync(folder, {recursive: true, withFileTypes: true}).filter((entry) =>
    entry.isFile(),
  );
  const paths = entries.map((entry) => path.join(entry.parentPath, entry.name)).sort();
  return new Map(paths.map((file) => [path.relative(folder, file), readFileSync(file, 'latin1')]));
}

/** Waits until no process names `folder` in its arguments: a browser ends by itself a moment after the program. */
async function nobodyWith(folder: string): Promise<void> {
  if (process.platform !== 'linux') return;
  const named = () =>
    readdirSync('/proc')
      .filter((name) => /^\d+$/.test(name))
      .filter((id) => argumentsOf(id).includes(folder));
  await vi.waitFor(() => expect(named()).toEqual([]), {timeout: 15_000, interval: 50});
}

function argumentsOf(processId: string): string {
  try {
    return readFileSync(`/proc/${processId}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}

/** Numbers from 0 to 1 that follow from the seed (mulberry32, a public domain generator by T. Ettinger). */
function randomNumbers(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
