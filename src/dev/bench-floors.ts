import {fileURLToPath} from 'node:url';
import type {FoundBrowser} from '../print/find-browser.ts';
import {bareTexts, parseBare} from './bench-floor-remark.ts';
import type {BenchRow} from './bench-record.ts';
import {type Command, inTurn, timeProcess, timeRow, timeWork} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/*
 * What no program of this kind can undercut, each measured beside what is compared with it:
 * N, an empty Node; P, the bare browser library printing the same HTML; M, remark alone parsing the same Markdown.
 */

export function nodeFloor(root: string): Command {
  return {args: ['-e', '0'], cwd: root};
}

/** Prints the HTML file once with the options the program uses: launching, reading and writing included. */
export function printFloor(root: string, browser: FoundBrowser, html: string, pdf: string): Command {
  return {args: ['--input-type=module', '-e', printScript(browser, html, pdf)], cwd: root};
}

/** The same work as `parseBare` in a process of its own. */
export function remarkFloor(root: string, content: string): Command {
  return {args: [fileURLToPath(new URL('./bench-floor-remark.js', import.meta.url)), content], cwd: root};
}

/** Parses all Markdown of `content` in this process; warm once it has run a few times. */
export function warmRemark(content: string): () => void {
  const texts = bareTexts(content);
  return () => parseBare(texts);
}

export function printScript({path, isShell}: FoundBrowser, html: string, pdf: string): string {
  return `
    import {readFile, writeFile} from 'node:fs/promises';
    import puppeteer from 'puppeteer-core';
    const browser = await puppeteer.launch({
      executablePath: ${JSON.stringify(path)}, headless: ${isShell ? "'shell'" : 'true'}, pipe: true,
      args: process.getuid?.() === 0 ? ['--no-sandbox'] : [], protocolTimeout: 0,
    });
    const page = await browser.newPage();
    await page.setContent(await readFile(${JSON.stringify(html)}, 'utf8'), {timeout: 0});
    await writeFile(${JSON.stringify(pdf)}, await page.pdf({
      preferCSSPageSize: true, printBackground: true, outline: true, tagged: true, timeout: 0,
    }));
    await browser.close();`;
}

/** How many times something runs before it counts as warm. */
export const warmUps = 5;

/** The floors as times, so that a reader sees what the ratios are multiples of. */
export async function benchFloors({root, runs, example}: BenchWorld): Promise<readonly BenchRow[]> {
  const {folder, html, browser} = await example();
  const warm = warmRemark(`${folder}/content`);
  for (let index = 0; index < warmUps; index++) warm();
  const {n, p, cold, m} = await inTurn(runs, {
    n: () => timeProcess(nodeFloor(root)),
    cold: () => timeProcess(remarkFloor(root, `${folder}/content`)),
    m: () => timeWork(warm),
    p: () => timeProcess(printFloor(root, browser, html, `${folder}/floor.pdf`)),
  });
  return [
    timeRow({id: 'floor-n', what: 'N: `node -e 0`', target: null}, n),
    timeRow(
      {id: 'floor-p', what: 'P: the bare browser library prints the example’s `binder.html`', target: null},
      p,
      'launch and writing included',
    ),
    timeRow(
      {id: 'floor-m', what: 'M: remark alone parses the example’s Markdown, warm', target: null},
      m,
      `in one process, after ${warmUps} times`,
    ),
    timeRow({id: 'floor-m-cold', what: 'the same as a process, cold', target: null}, cold),
  ];
}
