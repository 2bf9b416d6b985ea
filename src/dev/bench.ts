import {execFileSync} from 'node:child_process';
import {writeFile} from 'node:fs/promises';
import {cpus, loadavg, release, type as systemName, totalmem} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {CommanderError} from 'commander';
import {requireBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {type BenchWishes, enoughRuns, readBenchArguments} from './bench-arguments.ts';
import {inFolder} from './bench-binders.ts';
import {benchCitations} from './bench-citations.ts';
import {benchBuild, benchCheck, benchReprint, benchStartUp, benchThousand} from './bench-commands.ts';
import {rowsOrFault} from './bench-fault.ts';
import {benchFloors} from './bench-floors.ts';
import {benchGrowth} from './bench-growth.ts';
import {keepRun} from './bench-history.ts';
import {benchKnitting} from './bench-knitting.ts';
import {describePeers} from './bench-peers.ts';
import {benchPreview} from './bench-preview.ts';
import {type BenchGroup, type BenchRow, type BenchRun, verdictOf} from './bench-record.ts';
import {describeStages} from './bench-stages.ts';
import {benchLine, benchTable, describeRun} from './bench-table.ts';
import {type BenchWorld, makeWorld, versionsIn} from './bench-world.ts';

/*
 * `npm run bench [-- runs]`: whole commands and single parts, each as a ratio to a floor measured beside it. Times depend
 * on the machine and are never tests; the ratios tell whether a change made something slower.
 */

const groups: Readonly<Record<BenchGroup, (world: BenchWorld) => Promise<readonly BenchRow[]>>> = {
  floors: benchFloors,
  'start-up': benchStartUp,
  check: benchCheck,
  build: benchBuild,
  reprint: benchReprint,
  thousand: benchThousand,
  preview: benchPreview,
  citations: benchCitations,
  knitting: benchKnitting,
  growth: benchGrowth,
};

const root = fileURLToPath(new URL('../..', import.meta.url));
const program = fileURLToPath(new URL('../program/swatchleaf.js', import.meta.url));
const history = path.join(root, 'tests/bench/history.json');
const say = (line: string) => console.error(line);

try {
  await main(readBenchArguments(process.argv.slice(2)));
} catch (error) {
  // Commander has said what it did not understand.
  if (!(error instanceof CommanderError)) throw error;
  process.exitCode = error.exitCode;
}

async function main(wishes: BenchWishes): Promise<void> {
  const browser = requireBrowser({flag: null, setting: null, binderFolder: null}, thisMachine());
  await inFolder(async (scratch) => {
    const world = makeWorld({root, program, runs: wishes.runs, say}, browser, scratch);
    if (wishes.stages) return console.log(await describeStages(world));
    if (wishes.peers) return console.log(await describePeers(world, wishes.peersFrom));
    await report(wishes, await measure(wishes, world, await versionsIn(root, browser)));
  });
}

async function measure(
  {runs, groups: asked}: BenchWishes,
  world: BenchWorld,
  versions: BenchRun['versions'],
): Promise<BenchRun> {
  const before = loadavg()[0] ?? 0;
  say(`Medians of ${runs}${runs < enoughRuns ? `: a quick look, ${enoughRuns} are enough` : ''}.`);
  if (!asked.includes('growth'))
    say('Growth to 1,600 items is left out; `--growth` measures it, in some twenty minutes.');
  if (before >= 1)
    say(`Other work is going on (${before.toFixed(1)} processes want a core): only the ratios count.`);
  const rows: BenchRow[] = [];
  for (const group of asked) {
    // One that fails does not take the others with it.
    const measured = await rowsOrFault({id: group, what: group, target: null}, () => groups[group](world));
    for (const row of measured) say(benchLine(row));
    rows.push(...measured);
  }
  return {
    date: new Date().toISOString(),
    commit: commit(),
    machine: {
      processor: cpus()[0]?.model ?? 'unknown processor',
      cores: cpus().length,
      memory: `${Math.round(totalmem() / 2 ** 30)} GiB`,
      system: `${systemName()} ${release().split('.', 2).join('.')}`,
    },
    versions,
    runs,
    load: {before, after: loadavg()[0] ?? 0},
    rows,
  };
}

async function report({json, table, keep}: BenchWishes, run: BenchRun): Promise<void> {
  const text = `${JSON.stringify(run, null, 2)}\n`;
  if (json === '-') process.stdout.write(text);
  else if (json !== null) await writeFile(json, text);
  if (table) process.stdout.write(benchTable(run));
  if (keep) await keepRun(history, run);
  const verdicts = run.rows.map(verdictOf);
  const count = (verdict: string) => verdicts.filter((each) => each === verdict).length;
  say(describeRun(run));
  say(`${count('reached')} reached, ${count('missed')} missed, ${count('not measured')} not measured.`);
  if (count('not measured') > 0) process.exitCode = 1;
}

/** Short hash of what is checked out, `+` behind it when files differ; `unknown` outside a clone. */
function commit(): string {
  const git = (...args: string[]) =>
    execFileSync('git', args, {cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore']}).trim();
  try {
    return `${git('rev-parse', '--short', 'HEAD')}${git('status', '--porcelain') === '' ? '' : '+'}`;
  } catch {
    return 'unknown';
  }
}
