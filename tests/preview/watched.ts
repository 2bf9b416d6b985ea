import {type ChildProcess, spawn} from 'node:child_process';
import {mkdtemp, rm} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';
import puppeteer, {type Page} from 'puppeteer-core';
import {onTestFinished} from 'vitest';
import {foundBrowser} from '../print/shared-browser.ts';
import {root} from '../support/run-cli.ts';

export interface Watched {
  readonly address: string;
  readonly child: ChildProcess;
  /** What was said on standard error. */
  readonly said: () => string;
  /** The exit code, once the program has ended. */
  readonly ended: Promise<number | null>;
}

/** `swatchleaf watch` in `folder`, ended after the test. */
export async function watched(folder: string): Promise<Watched> {
  const child = spawn(
    process.execPath,
    [path.join(root, '.compiled/program/swatchleaf.js'), 'watch', folder],
    {
      env: {...process.env, SOURCE_DATE_EPOCH: '1790553600'},
    },
  );
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  onTestFinished(async () => {
    child.kill('SIGKILL');
    await ended;
  });
  let said = '';
  const address = await new Promise<string>((resolve, reject) => {
    child.stderr.on('data', (part) => {
      said += part;
      const found = /http:\S+/.exec(said)?.[0];
      if (found !== undefined) resolve(found);
    });
    child.on('close', (code) => reject(new Error(`watch ended with ${code}: ${said}`)));
  });
  return {address, child, said: () => said, ended};
}

/** A real browser that shows the preview; closed after the test. Scripts run, as in the candidate's own browser. */
export async function openPreview(address: string): Promise<Page> {
  const profile = await mkdtemp(path.join(tmpdir(), 'swatchleaf-preview-'));
  const browser = await puppeteer.launch({
    executablePath: foundBrowser.path,
    headless: foundBrowser.isShell ? 'shell' : true,
    pipe: true,
    userDataDir: profile,
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  onTestFinished(async () => {
    await browser.close();
    await rm(profile, {recursive: true, force: true, maxRetries: 5});
  });
  const page = await browser.newPage();
  await page.setViewport({width: 1200, height: 700});
  await page.goto(address);
  return page;
}

/** Waits until the item's sheet in the frame says `text`. */
export async function seeText(page: Page, text: string): Promise<void> {
  await page.waitForFunction(
    `document.getElementById('sheet').contentDocument?.body?.textContent.includes(${JSON.stringify(text)})`,
    {polling: 10, timeout: 10_000},
  );
}
