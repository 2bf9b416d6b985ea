import {spawnSync} from 'node:child_process';
import {cpus} from 'node:os';
import {fileURLToPath} from 'node:url';
import {openDiskWorkspace} from '../io/disk-workspace.ts';
import {noCache} from '../photos/photo-cache.ts';
import {readPhotoFacts} from '../photos/read-photo-facts.ts';
import {load} from '../pipeline.ts';
import {withBrowser} from '../print/browser.ts';
import {requireBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {benchCitations} from './bench-citations.ts';
import {benchGrowth} from './bench-growth.ts';
import {benchKnitting} from './bench-knitting.ts';

/*
 * `npm run bench [-- runs]`: whole commands as processes, each as a ratio to a floor measured in the same run. Times
 * depend on the machine and are never tests; the ratios tell whether a change made something slower.
 */

const root = fileURLToPath(new URL('../..', import.meta.url));
const program = fileURLToPath(new URL('../cli.js', import.meta.url));
const runs = Number(process.argv[2] ?? 7);

const found = requireBrowser({flag: null, setting: null, binderFolder: null}, thisMachine());
const version = await withBrowser(found, async (browser) => browser.version);
console.log(
  `${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}, ${version}, medians of ${runs}\n`,
);

const node = ['-e', '0'];
const barePrint = ['--input-type=module', '-e', bareScript(found.path)];
run([program, 'build', root]);

const rows = [
  {what: 'start-up: --version', floor: 'node -e 0', args: [program, '--version'], floorArgs: node},
  {what: 'check, cold', floor: 'node -e 0', args: [program, 'check', root], floorArgs: node},
  {
    what: 'build, cold',
    floor: 'bare print of binder.html',
    args: [program, 'build', root],
    floorArgs: barePrint,
  },
  {
    what: 'reprint S-06, cold',
    floor: 'bare print of binder.html',
    args: [program, 'reprint', 'S-06', root],
    floorArgs: barePrint,
  },
];
for (const {what, floor, args, floorArgs} of rows) {
  const times: number[] = [];
  const floors: number[] = [];
  // One after the other in turn, so that a busy moment of the machine meets both.
  for (let index = 0; index < runs; index++) {
    floors.push(run(floorArgs));
    times.push(run(args));
  }
  const [time, bare] = [median(times), median(floors)];
  console.log(
    `${what.padEnd(22)} ${time.toFixed(0).padStart(7)} ms = ${(time / bare).toFixed(2).padStart(6)} × ${floor} (${bare.toFixed(0)} ms)`,
  );
}

const workspace = await openDiskWorkspace(root);
const example = await load(workspace, (bytes) => readPhotoFacts(bytes, noCache));
for (const line of benchKnitting(runs, example, '2026-09-28')) console.log(line);
for (const line of await benchCitations(runs)) console.log(line);
for (const line of benchGrowth(root, program)) console.log(line);

function run(args: readonly string[]): number {
  const start = performance.now();
  spawnSync(process.execPath, args, {cwd: root, stdio: 'ignore'});
  return performance.now() - start;
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** The same page printed once by the bare browser library with the same options: what no program of ours can undercut. */
function bareScript(executablePath: string): string {
  const html = JSON.stringify(fileURLToPath(new URL('../../build/binder.html', import.meta.url)));
  return `
    import {readFile} from 'node:fs/promises';
    import puppeteer from 'puppeteer-core';
    const browser = await puppeteer.launch({
      executablePath: ${JSON.stringify(executablePath)}, headless: ${found.isShell ? "'shell'" : 'true'}, pipe: true,
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    });
    const page = await browser.newPage();
    await page.setContent(await readFile(${html}, 'utf8'));
    await page.pdf({preferCSSPageSize: true, printBackground: true, outline: true, tagged: true, timeout: 0});
    await browser.close();`;
}
