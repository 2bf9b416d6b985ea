import {existsSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {afterEach, beforeEach, expect, test} from 'vitest';
import {withBrowser} from '../../src/print/browser.ts';
import {foundBrowser} from './shared-browser.ts';

const home = process.cwd();
let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
});
afterEach(() => {
  process.chdir(home);
  rmSync(folder, {recursive: true});
});

// The names under which puppeteer looks for its configuration in the current folder and those above it.
test('a configuration of puppeteer that came with a binder is not run', async () => {
  const marker = join(folder, 'it ran');
  const code = `require('node:fs').writeFileSync(${JSON.stringify(marker)}, ''); module.exports = {};`;
  for (const name of ['.puppeteerrc.cjs', '.puppeteerrc.js', 'puppeteer.config.cjs', 'puppeteer.config.js']) {
    writeFileSync(join(folder, name), code);
  }
  process.chdir(folder);
  await withBrowser(foundBrowser, async () => {});
  expect(existsSync(marker)).toBe(false);
});
