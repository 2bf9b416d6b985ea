import {
  cpSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {afterAll, beforeAll, describe, expect, test, vi} from 'vitest';
import type {Typed} from '../../src/commands/command.ts';
import {commandList} from '../../src/commands/command-list.ts';
import {runCommand} from '../../src/commands/run-command.ts';
import {OperationalError} from '../../src/support/operational-error.ts';
import {UsageError} from '../../src/support/usage-error.ts';
import {callsMade, type Fault, type FileCall, isRemoving, isWriting, resetCalls} from '../io/faulty-files.ts';
import {picture, root, swatchleaf} from '../support/run-cli.ts';
import {testSurroundings} from '../support/surroundings.ts';

vi.mock('node:fs/promises', async (real) => {
  const {faultyFiles} = await import('../io/faulty-files.ts');
  return faultyFiles(await real());
});
/** A disk that is busy is asked again after a pause, which here need not pass. */
vi.mock('node:timers/promises', () => ({setTimeout: async () => {}}));
// What takes time and touches no file of the binder: the browser, its pages, and the citations.
vi.mock('puppeteer-core', () => {
  const browser = {
    version: async () => 'none',
    pages: async () => [],
    close: async () => {},
    process: () => null,
  };
  return {default: {launch: async () => browser}};
});
vi.mock('../../src/commands/print-binder.ts', () => {
  const files = ['binder.pdf', 'tags.pdf', 'check-report.html'].map((name) => [
    `build/${name}`,
    `new ${name}`,
  ]);
  return {printBinder: async () => ({files: new Map(files as [string, string][]), findings: []})};
});
vi.mock('../../src/commands/print-round.ts', () => {
  const files = ['S-01.pdf', 'round-1-letter.pdf'].map((name) => [`build/reprint/${name}`, `new ${name}`]);
  return {printRound: async () => ({files: new Map(files as [string, string][]), findings: []})};
});
/** Eighty files of ours, which every printing command reads in the same way: they have a test of their own. */
vi.mock('../../src/commands/load-layouts.ts', () => ({
  loadLayouts: async () => ({templates: new Map(), fonts: []}),
}));
vi.mock('../../src/compose/compose-binder.ts', () => ({
  composeBinder: async () => ({items: new Map(), references: [], findings: []}),
}));

/** What each file of a folder holds, by path. */
type Snapshot = ReadonlyMap<string, string>;

interface Scenario {
  readonly command: string;
  readonly typed?: Partial<Typed>;
  /** The folder as it is before the command. */
  readonly moment: string;
  /** Whether the command does the same work each time it is called. */
  readonly repeats?: boolean;
}

const scenarios: readonly Scenario[] = [
  {command: 'build', moment: 'built'},
  {command: 'printed', moment: 'printed'},
  {command: 'new', moment: 'in work'},
  {command: 'send', moment: 'begun', typed: {options: {'self-checked': true}}},
  {command: 'answer', moment: 'begun'},
  {command: 'reprint', moment: 'answered'},
  {command: 'import', moment: 'begun', typed: {words: ['shelf.bib']}},
  {command: 'clip', moment: 'begun', typed: {words: ['S-01', 'the slip must be knitwise']}, repeats: true},
  {command: 'init', moment: 'nothing', typed: {options: {name: 'Ann Weaver'}}},
];

/** What a disk may answer to a call. */
const codes: Readonly<Record<string, readonly string[]>> = {
  'open wx': ['ENOSPC', 'EACCES'],
  write: ['ENOSPC', 'EIO'],
  sync: ['EIO', 'ENOSPC'],
  close: ['EIO'],
  rename: ['EBUSY', 'EXDEV', 'EACCES'],
  link: ['EPERM', 'ENOSPC'],
  unlink: ['EBUSY', 'EIO'],
  mkdir: ['ENOSPC', 'EACCES'],
  mkdtemp: ['ENOSPC', 'EACCES'],
  rm: ['EBUSY'],
};
const readingCodes = ['EIO', 'EACCES'];

let scratch = '';
/** Folders at several moments of the year. */
const moment = (name: string) => path.join(scratch, name);

const answer = `round: 0
received: 2026-09-14
results:
  S-01: {result: rework, remark: The edges draw in.}
`;
const shelf = '@book{weir2011, author = {Weir, Hanne}, title = {The Even Edge}, year = {2011}}\n';
const reworked = (text: string) =>
  text
    .replace('status: finished', 'status: rework')
    .replace('measured:', 'rework:\n  - {round: 1, done: Knitted again.}\nmeasured:')
    .replace('on: 2025-09-22', 'on: 2026-09-22');

beforeAll(async () => {
  scratch = mkdtempSync(path.join(tmpdir(), 'swatchleaf-faults-'));
  const temporary = moment('temporary');
  mkdirSync(temporary);
  const content = path.join(moment('begun'), 'content');
  cpSync(path.join(root, 'tests/rules/base/content'), content, {recursive: true});
  mkdirSync(path.join(content, 'photos'));
  writeFileSync(path.join(content, 'photos/s-01-front.jpg'), await picture(1200));
  writeFileSync(path.join(moment('begun'), 'shelf.bib'), shelf);
  // Printed by a browser, once.
  cpSync(moment('begun'), moment('printed'), {recursive: true});
  expect((await swatchleaf(['build', '--only', 'S-01', moment('printed')])).code).toBe(0);
  cpSync(moment('begun'), moment('built'), {recursive: true});
  mkdirSync(path.join(moment('built'), 'build'));
  for (const name of ['binder.pdf', 'tags.pdf', 'only.pdf', 'check-report.html'])
    writeFileSync(path.join(moment('built'), 'build', name), `old ${name}`);
  mkdirSync(moment('nothing'));
  writeFileSync(moment('victim'), 'precious');
  cpSync(moment('begun'), moment('in work'), {recursive: true});
  for (const file of ['questions/q-01.md', 'reviews/b-01.md'])
    rmSync(path.join(moment('in work'), 'content', file));
  cpSync(moment('built'), moment('answered'), {recursive: true});
  mkdirSync(path.join(moment('answered'), 'content/assessments'));
  writeFileSync(path.join(moment('answered'), 'content/assessments/round-0.yaml'), answer);
  const swatch = path.join(moment('answered'), 'content/swatches/s-01.md');
  writeFileSync(swatch, reworked(readFileSync(swatch, 'utf8')));
  vi.stubEnv('TMPDIR', temporary);
}, 120_000);
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(scratch, {recursive: true});
});

/** Everything below `folder`, hidden files too. */
function snapshot(folder: string): Snapshot {
  const entries = readdirSync(folder, {recursive: true, withFileTypes: true});
  return new Map(
    entries
      .filter((entry) => !entry.isDirectory())
      .map((entry) => path.join(entry.parentPath, entry.name))
      .sort()
      .map((file) => [path.relative(folder, file), readFileSync(file, 'latin1')]),
  );
}

async function run({command, typed}: Scenario, folder: string): Promise<'done' | 'refused' | 'machine'> {
  const words = commandList.find(({name}) => name === command);
  if (words === undefined) throw new Error(`there is no command ${command}`);
  const around = testSurroundings({
    currentFolder: folder,
    today: '2026-09-28',
    environment: {XDG_CACHE_HOME: moment('cache')},
  });
  try {
    const {findings, isBroken} = await runCommand(words, {words: [], options: {}, ...typed}, around);
    return findings.some(({severity}) => severity === 'error') || isBroken ? 'refused' : 'done';
  } catch (error) {
    if (error instanceof OperationalError) return 'machine';
    if (error instanceof UsageError) return 'refused';
    throw error;
  }
}

interface Trial {
  /** For messages. */
  readonly name: string;
  readonly fault: (call: FileCall) => Fault | null;
  /** Takes away what the trial itself put into the folder. */
  readonly tidy?: () => void;
}

/** A link to a file of somebody else, at the very name that is to be made. */
function planting(at: number): Trial {
  let planted = '';
  return {
    name: `a link planted before call ${at}`,
    fault: (now) => {
      const plant = () => {
        planted = now.path;
        symlinkSync(moment('victim'), planted);
      };
      return now.at === at ? {plant} : null;
    },
    tidy: () => {
      if (lstatSync(planted, {throwIfNoEntry: false})?.isSymbolicLink()) rmSync(planted);
    },
  };
}

function trialsOf(calls: readonly FileCall[]): readonly Trial[] {
  return calls.flatMap((call) => {
    const {at, name} = call;
    const only = (code: string): Trial => ({
      name: `${code} at call ${at}, ${name}`,
      fault: (now) => (now.at === at ? {code} : null),
    });
    const trials = isWriting(call)
      ? (codes[name] ?? []).map(only)
      : // One of them at each call: they go the same ways.
        [only(readingCodes[at % readingCodes.length] ?? '')];
    if (name === 'write')
      trials.push({
        name: `a short write at call ${at}`,
        fault: (now) => (now.at === at ? {short: true} : null),
      });
    if (name === 'open wx') trials.push(planting(at));
    if (name === 'open wx' || name === 'rename')
      trials.push({
        name: `a disk that is full from call ${at} on`,
        fault: (now) => (now.at >= at && isWriting(now) && !isRemoving(now) ? {code: 'ENOSPC'} : null),
      });
    if (name === 'rename')
      trials.push({
        name: `a file that is never let go, from call ${at} on`,
        fault: (now) => (now.at >= at && now.name === 'rename' ? {code: 'EBUSY'} : null),
      });
    return trials;
  });
}

/** Puts `folder` back to the moment at which the command is called. */
function goBack(folder: string, {moment: name}: Scenario): void {
  rmSync(folder, {recursive: true, force: true});
  cpSync(moment(name), folder, {recursive: true});
}

describe.each(scenarios)('$command, when the k-th call of the disk fails, for every k', (scenario) => {
  test('each file is the old or the whole new one, nothing is left, it is told, and the next run works', async () => {
    const folder = moment('now');
    goBack(folder, scenario);
    const old = snapshot(folder);
    // Once to fill the cache of pictures, which takes other calls the first time.
    expect(await run(scenario, folder)).toBe('done');
    goBack(folder, scenario);
    resetCalls();
    expect(await run(scenario, folder)).toBe('done');
    const trials = trialsOf(callsMade());
    const fresh = snapshot(folder);
    expect(fresh).not.toEqual(old);

    const listeners = process.listeners('exit');
    const seen = new Set<string>();
    const told = {done: 0, machine: 0};
    goBack(folder, scenario);
    for (const {name, fault, tidy} of trials) {
      resetCalls(fault);
      const outcome = await run(scenario, folder).catch((cause: unknown) => {
        throw new Error(`${name}: not told as a fault of the machine`, {cause});
      });
      resetCalls();
      tidy?.();
      const now = snapshot(folder);
      if (outcome === 'refused') throw new Error(`${name}: told as a fault of the candidate's`);
      told[outcome]++;
      if (outcome === 'done') expect(now, name).toEqual(fresh);
      for (const file of new Set([...old.keys(), ...now.keys()]))
        expect([old.get(file), fresh.get(file)], `${name}: ${file}`).toContain(now.get(file));
      // From one state the next run goes one way.
      const state = JSON.stringify([...now]);
      if (!seen.has(state)) {
        seen.add(state);
        await run(scenario, folder);
        const isTwice = scenario.repeats && isSame(now, fresh);
        if (!isTwice) expect(snapshot(folder), `the run after ${name}`).toEqual(fresh);
        goBack(folder, scenario);
      } else if (!isSame(now, old)) goBack(folder, scenario);
    }
    expect(told.machine).toBeGreaterThan(20);
    expect(readFileSync(moment('victim'), 'utf8')).toBe('precious');
    // What could not be removed when its time came goes when the program ends.
    for (const listener of process.listeners('exit')) if (!listeners.includes(listener)) listener(0);
    expect(readdirSync(moment('temporary'))).toEqual([]);
  }, 300_000);
});

test('our layouts and fonts, when any one of them cannot be read: told as a fault of the machine', async () => {
  const {loadLayouts} = await vi.importActual<typeof import('../../src/commands/load-layouts.ts')>(
    '../../src/commands/load-layouts.ts',
  );
  const {createMemoryWorkspace} = await import('../../src/io/memory-workspace.ts');
  resetCalls();
  await loadLayouts(createMemoryWorkspace());
  const files = new Set(callsMade().map((call) => call.path));
  expect(files.size).toBeGreaterThan(50);
  for (const file of files) {
    // By its name: what an earlier turn had begun may still be going on.
    resetCalls((call) => (call.path === file ? {code: 'EIO'} : null));
    const told = await loadLayouts(createMemoryWorkspace()).catch((error: unknown) => error);
    expect(told instanceof OperationalError, file).toBe(true);
  }
  resetCalls();
});

function isSame(one: Snapshot, other: Snapshot): boolean {
  return one.size === other.size && [...one].every(([file, text]) => other.get(file) === text);
}
