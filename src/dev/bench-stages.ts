import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import * as z from 'zod';
import {inFolder} from './bench-binders.ts';
import {markdownTable} from './bench-table.ts';
import {timeProcess} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/** The part of a `.cpuprofile` that is read (Chrome DevTools Protocol, domain Profiler, type Profile). */
const profile = z.object({
  nodes: z.array(
    z.object({
      id: z.number(),
      callFrame: z.object({
        functionName: z.string(),
        url: z.string(),
        lineNumber: z.number(),
        columnNumber: z.number(),
      }),
      children: z.array(z.number()).optional(),
    }),
  ),
  samples: z.array(z.number()),
  /** Microseconds since the sample before. */
  timeDeltas: z.array(z.number()),
});
export type Profile = z.infer<typeof profile>;
type Frame = Profile['nodes'][number]['callFrame'];

export interface Shares {
  /** Milliseconds by stage, the longest first. */
  readonly stages: readonly (readonly [string, number])[];
  /** Milliseconds by function, the longest first. */
  readonly functions: readonly (readonly [string, number])[];
  readonly total: number;
}

const waiting = 'waiting for the disk, the decoder or the browser';
/** What V8's profiler calls time that belongs to no function. */
const ownWords: ReadonlyMap<string, string> = new Map([
  ['(idle)', waiting],
  ['(program)', 'Node itself, outside JavaScript'],
  ['(garbage collector)', 'collecting garbage'],
]);

/** Where the time of `check` and `build` goes, from a profile of each: the program sets no marks of its own. */
export async function describeStages({root, command, example}: BenchWorld): Promise<string> {
  const {folder} = await example();
  const parts: string[] = [];
  for (const args of [['--version'], ['check', folder], ['build', folder]]) {
    const {stages, functions, total} = await inFolder((profiles) => {
      const whole = command(args);
      // Not the joined program: here each function still stands in the file of its own module.
      const modules = path.join(root, '.compiled/cli.js');
      timeProcess({...whole, args: ['--cpu-prof', '--cpu-prof-dir', profiles, modules, ...args]});
      const [file = ''] = readdirSync(profiles);
      return sharesOf(profile.parse(JSON.parse(readFileSync(path.join(profiles, file), 'utf8'))));
    });
    const asRows = (shares: Shares['stages']) =>
      shares.map(([name, time]) => [name, `${time.toFixed(0)} ms`, `${((100 * time) / total).toFixed(1)} %`]);
    parts.push(
      `\`${args[0]}\`: ${total.toFixed(0)} ms under the profiler`,
      markdownTable(['stage', 'time', 'share'], asRows(stages)).trimEnd(),
      markdownTable(['function by itself', 'time', 'share'], asRows(functions.slice(0, 12))).trimEnd(),
    );
  }
  return parts.join('\n\n');
}

/**
 * Adds up a profile. What a library or Node does counts for the folder of our code that called it; loading modules and
 * what is called by nobody of ours are stages of their own.
 */
export function sharesOf({nodes, samples, timeDeltas}: Profile): Shares {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const parents = new Map(nodes.flatMap(({id, children = []}) => children.map((child) => [child, id])));
  const stages = new Map<string, number>();
  const functions = new Map<string, number>();
  let total = 0;
  const add = (sums: Map<string, number>, name: string, time: number) =>
    sums.set(name, (sums.get(name) ?? 0) + time);
  samples.forEach((sample, index) => {
    const time = (timeDeltas[index] ?? 0) / 1000;
    total += time;
    const frames: Frame[] = [];
    for (let id: number | undefined = sample; id !== undefined; id = parents.get(id)) {
      const node = byId.get(id);
      if (node) frames.push(node.callFrame);
    }
    add(stages, stageOf(frames), time);
    const [own] = frames;
    if (own && own.functionName !== '(idle)')
      add(functions, `${own.functionName || '(unnamed)'} ${shortPlace(own.url)}`.trim(), time);
  });
  const longestFirst = (sums: Map<string, number>) => [...sums].sort(([, a], [, b]) => b - a);
  return {stages: longestFirst(stages), functions: longestFirst(functions), total};
}

/** `frames` from the innermost to the outermost. */
function stageOf(frames: readonly Frame[]): string {
  const special = ownWords.get(frames[0]?.functionName ?? '');
  if (special !== undefined) return special;
  for (const frame of frames) {
    if (isLoading(frame)) return 'loading modules';
    const folder = /\/\.compiled\/([^/]+)/.exec(frame.url)?.[1];
    if (folder !== undefined) return folder.replace(/\.js$/, '');
  }
  return frames.some(({url}) => url.includes('/node_modules/'))
    ? 'libraries, called by nobody of ours'
    : 'Node';
}

/** Node's own loader, or the outermost code of a module, which runs while it is loaded: unnamed, at the very beginning. */
function isLoading({functionName, url, lineNumber, columnNumber}: Frame): boolean {
  if (/^node:internal\/(modules|bootstrap)\//.test(url)) return true;
  return functionName === '' && url.startsWith('file:') && lineNumber === 0 && columnNumber === 0;
}

function shortPlace(url: string): string {
  return url.replace(/^.*\/(node_modules|\.compiled)\//, '');
}
