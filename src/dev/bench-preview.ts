import {type ChildProcess, spawn} from 'node:child_process';
import {readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {setTimeout as pause} from 'node:timers/promises';
import puppeteer, {type Page} from 'puppeteer-core';
import type {FoundBrowser} from '../print/find-browser.ts';
import {copyExample, inFolder} from './bench-binders.ts';
import {rowsOrFault} from './bench-fault.ts';
import type {BenchRow} from './bench-record.ts';
import {timeRow} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/** Milliseconds between two saves: long enough for all that follows the first, as between two of a writer's. */
const breath = 1500;
const patience = 60_000;

/** From just before a file is written until its words stand in the page of a real browser and a frame was drawn. */
export async function benchPreview(world: BenchWorld): Promise<readonly BenchRow[]> {
  const {browser} = await world.example();
  // The example's own copy: the built one must stay as it was built.
  return inFolder(async (folder) => {
    copyExample(world.root, folder);
    const from = 'save → changed preview';
    const cases = [
      {
        words: {id: 'preview', what: `${from}: a swatch of the example`, target: 150},
        binder: () => folder,
        file: 'content/swatches/s-07-double-decreases.md',
      },
      {
        words: {id: 'preview-vest', what: `${from}: the vest, its longest item`, target: 150},
        binder: () => folder,
        file: 'content/projects/p-01-v-neck-vest.md',
      },
      {
        words: {id: 'preview-1000', what: `${from}: a swatch among 1,000 items`, target: 300},
        binder: () => world.grown(1000),
        file: 'content/swatches/AA-07.md',
      },
    ];
    const rows: BenchRow[] = [];
    for (const {words, binder, file} of cases) {
      const measure = async () => [timeRow(words, await saves(world, browser, binder(), file))];
      rows.push(...(await rowsOrFault(words, measure)));
    }
    return rows;
  });
}

/** Milliseconds of each of the saves after a first one, which loads and compiles. */
async function saves(
  {command, runs}: BenchWorld,
  found: FoundBrowser,
  folder: string,
  file: string,
): Promise<readonly number[]> {
  const {args, cwd, env} = command(['watch', folder]);
  const watch = spawn(process.execPath, args, {cwd, env, stdio: ['ignore', 'ignore', 'pipe']});
  try {
    const address = await addressOf(watch);
    const browser = await puppeteer.launch({
      executablePath: found.path,
      headless: found.isShell ? 'shell' : true,
      pipe: true,
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
    });
    try {
      const page = await browser.newPage();
      await page.setViewport({width: 1200, height: 700});
      await page.goto(address);
      const times: number[] = [];
      for (let save = 0; save <= runs; save++) {
        const time = await timeSave(page, path.join(folder, file), `Saved as number ${save}.`);
        if (save > 0) times.push(time);
        await pause(breath);
      }
      return times;
    } finally {
      await browser.close();
    }
  } finally {
    const ended = new Promise((resolve) => watch.once('close', resolve));
    watch.kill('SIGKILL');
    await ended;
  }
}

function addressOf(watch: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    watch.stderr?.on('data', (part) => {
      said += part;
      const address = /http:\S+/.exec(said)?.[0];
      if (address !== undefined) resolve(address);
    });
    watch.once('close', () => reject(new Error(`\`watch\` ended: ${said.trim()}`)));
  });
}

async function timeSave(page: Page, file: string, line: string): Promise<number> {
  const text = readFileSync(file, 'utf8');
  const waiting = page.evaluate(waitFor(line));
  // The page looks from frame to frame before anything is saved.
  await page.evaluate('new Promise((resolve) => requestAnimationFrame(resolve))');
  const start = performance.now();
  writeFileSync(file, `${text.replace(/\n*Saved as number \d+\.\n*$/, '\n')}\n${line}\n`);
  if (!(await waiting))
    throw new Error(`a save did not come to the preview within ${patience / 1000} seconds`);
  return performance.now() - start;
}

/** Runs in the page: true in the frame after the one in which the item's sheet says `line`. */
function waitFor(line: string): string {
  return `new Promise((resolve) => {
    const end = performance.now() + ${patience};
    const look = () => {
      const body = document.getElementById('sheet').contentDocument?.body;
      if (body?.textContent.includes(${JSON.stringify(line)})) return requestAnimationFrame(() => resolve(true));
      if (performance.now() > end) return resolve(false);
      requestAnimationFrame(look);
    };
    look();
  })`;
}
