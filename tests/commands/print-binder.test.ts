import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {openBinder} from '../../src/commands/open-binder.ts';
import {prepareLayout} from '../../src/commands/prepare-layout.ts';
import {printBinder} from '../../src/commands/print-binder.ts';
import type {PrintBrowser, PrintPage} from '../../src/print/browser.ts';
import {sharedBrowser} from '../print/shared-browser.ts';
import {smallBinder} from '../support/run-cli.ts';
import {testSurroundings} from '../support/surroundings.ts';

const browser = sharedBrowser();

/** Builds the binder in `folder` as the command does; says what was printed, and on how many pages of the browser. */
async function build(folder: string) {
  const around = testSurroundings({environment: {XDG_CACHE_HOME: path.join(folder, 'cache')}});
  const opened = await openBinder(folder, around);
  if (opened.binder === null) throw new Error('the small binder can be read');
  const pages = new Set<PrintPage>();
  let lent = 0;
  const watched: PrintBrowser = {
    version: browser().version,
    withPage: (run, deadline) =>
      browser().withPage((page) => {
        lent++;
        pages.add(page);
        return run(page);
      }, deadline),
  };
  const {files} = await printBinder(
    watched,
    opened,
    await prepareLayout(opened, opened.binder),
    around.progress,
  );
  for (const [file, content] of files) await opened.workspace.write(file, content);
  return {files, lent, pages: pages.size, said: around.said.map((line) => line.replace(/:.*/, ''))};
}

test('each document is printed as often as its numbers need, on two pages', {timeout: 60_000}, async () => {
  const folder = await smallBinder();
  const beside = ['Tags', 'Self-check', 'Packing list', 'Check report'];

  const first = await build(folder);
  // The binder for its counts and for good; the packing list once more, since it says these counts.
  expect(first.lent).toBe(2 + beside.length + 1);
  expect(first.pages).toBe(2);
  expect(first.said.filter((name) => name === 'Binder')).toHaveLength(1);

  const again = await build(folder);
  expect(again.lent).toBe(1 + beside.length);
  expect(again.pages).toBe(2);
  expect(again.said.toSorted()).toEqual(['Binder', ...beside, 'Check'].toSorted());
  expect(again.files).toEqual(first.files);
});

test('a binder whose pages have become more: it and its packing list are printed again, and nothing else', {
  timeout: 60_000,
}, async () => {
  const folder = await smallBinder();
  const before = await build(folder);
  const item = path.join(folder, 'content/swatches/s-01.md');
  const text = await readFile(item, 'utf8');
  await writeFile(item, `${text}\n${'Every edge was knitted again and measured once more.\n\n'.repeat(60)}`);
  const after = await build(folder);
  expect(after.lent).toBe(before.lent);
  const numbersOf = ({files}: typeof after) => files.get('build/packing-list.pdf');
  expect(numbersOf(after)).not.toEqual(numbersOf(before));
});
