import {readFile, rename, rm, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {filesIn, root, smallBinder} from '../support/run-cli.ts';
import {openPreview, seeText, watched} from './watched.ts';

const file = 'content/swatches/s-01.md';
const text = await readFile(path.join(root, 'tests/rules/base', file), 'utf8');
const long = `\n${Array.from({length: 80}, (_, index) => `Paragraph ${index} of a long account.`).join('\n\n')}\n`;

describe('watch', () => {
  test('a save changes the page in the browser and keeps its place; findings stand beside the text', async () => {
    const folder = await smallBinder({[file]: text + long});
    const before = await filesIn(folder);
    const {address} = await watched(folder);
    const page = await openPreview(address);
    await seeText(page, 'S-01');
    // The swatch is shown because it was saved, not because it is the first.
    await writeFile(path.join(folder, file), `${text}${long}\nA line written tonight.\n`);
    await seeText(page, 'A line written tonight.');
    const scroll = `document.getElementById('sheet').contentDocument.documentElement.scrollTop`;
    await page.evaluate(`${scroll} = 500`);
    await writeFile(path.join(folder, file), `${text}${long}\nAnother line, [see](#S-99).\n`);
    await seeText(page, 'Another line');
    expect(await page.evaluate(scroll)).toBe(500);

    await page.waitForFunction(
      `[...document.getElementById('sheet').contentDocument.querySelectorAll('.preview-note')].some(({textContent}) => textContent.includes('S-99'))`,
    );
    const heights = await page.evaluate(`(() => {
      const inner = document.getElementById('sheet').contentDocument;
      const block = [...inner.querySelectorAll('[data-line]')].find(({textContent}) => textContent.startsWith('Another line'));
      const notes = [...inner.querySelectorAll('.preview-note')].filter(({textContent}) => textContent.includes('S-99'));
      return [block, ...notes].map((each) => Math.round(each.getBoundingClientRect().top));
    })()`);
    const [block, note] = heights as number[];
    expect(Math.abs((note ?? 0) - (block ?? Number.NaN))).toBeLessThan(300);
    expect(await filesIn(folder)).toEqual(before);
  });

  test('a hundred quick saves end in the last state', async () => {
    const folder = await smallBinder();
    const {address} = await watched(folder);
    const page = await openPreview(address);
    await seeText(page, 'S-01');
    for (let save = 1; save <= 100; save++) {
      await writeFile(path.join(folder, file), `${text}\nThis is save number ${save}.\n`);
    }
    await seeText(page, 'This is save number 100.');
  });

  test('stays up through syntax errors, renames, deleted files and swap files, and shows the last good page', async () => {
    const folder = await smallBinder();
    const target = path.join(folder, file);
    const {address, said} = await watched(folder);
    const page = await openPreview(address);
    await writeFile(target, `${text}\nStill good.\n`);
    await seeText(page, 'Still good.');

    await writeFile(target, `---\nrequirement: [S-01\n${text.slice(4)}`);
    await page.waitForFunction(`document.getElementById('counts').textContent.includes('error')`);
    await seeText(page, 'Still good.');
    await writeFile(path.join(folder, 'content/swatches/.s-01.md.swp'), 'b0VIM');
    await rm(target);
    await page.waitForFunction(`document.getElementById('trouble').textContent !== ''`);
    await seeText(page, 'Still good.');
    await writeFile(`${target}.new`, `${text}\nWritten aside and renamed.\n`);
    await rename(`${target}.new`, target);
    await seeText(page, 'Written aside and renamed.');
    await page.waitForFunction(`document.getElementById('trouble').textContent === ''`);
    await rename(target, path.join(folder, 'content/swatches/other-name.md'));
    await writeFile(path.join(folder, 'content/swatches/other-name.md'), `${text}\nUnder another name.\n`);
    await seeText(page, 'Under another name.');

    const syllabus = path.join(folder, 'content/syllabus.yaml');
    const sound = await readFile(syllabus, 'utf8');
    await writeFile(syllabus, 'title: [\n');
    await page.waitForFunction(`document.getElementById('elsewhere').textContent.includes('syllabus.yaml')`);
    await seeText(page, 'Under another name.');
    await writeFile(syllabus, sound);
    await page.waitForFunction(`document.getElementById('elsewhere').textContent === ''`);
    expect(said()).toContain('error');
  });

  test('another item is shown when it is chosen', async () => {
    const folder = await smallBinder();
    const {address} = await watched(folder);
    const page = await openPreview(address);
    await page.waitForSelector('nav button');
    const ids = await page.$$eval('nav button', (buttons) => buttons.map(({textContent}) => textContent));
    expect(ids.length).toBeGreaterThan(1);
    await page.evaluate(`[...document.querySelectorAll('nav button')].at(-1).click()`);
    await page.waitForFunction(
      `[...document.querySelectorAll('nav button')].at(-1).getAttribute('aria-current') === 'true'`,
    );
  });

  test('only this machine and only who knows the address can read it; Ctrl-C ends it with 130', async () => {
    const folder = await smallBinder();
    const {address, child, ended} = await watched(folder);
    const {port, origin} = new URL(address);
    expect((await fetch(address)).status).toBe(200);
    expect((await fetch(origin)).status).toBe(404);
    expect((await fetch(`${address}item/..%2f..%2fcontent`)).status).toBe(404);
    // A name of a stranger's that leads to this machine.
    const {request} = await import('node:http');
    const status = await new Promise((resolve, reject) => {
      request(
        {port, host: '127.0.0.1', path: new URL(address).pathname, headers: {host: 'stranger.example'}},
        (response) => resolve(response.statusCode),
      )
        .on('error', reject)
        .end();
    });
    expect(status).toBe(404);
    child.kill('SIGINT');
    expect(await ended).toBe(130);
  });
});
