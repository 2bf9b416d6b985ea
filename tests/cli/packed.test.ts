import {execFile} from 'node:child_process';
import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {promisify} from 'node:util';
import {beforeAll, expect, test} from 'vitest';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import {emptyFolder, filesIn, root} from '../support/run-cli.ts';

// The package as a user gets it: packed, installed into an empty folder, run from there. It needs npm's registry, or a
// cache that holds the dependencies. Nothing here may fetch a browser.

const run = promisify(execFile);
const isWindows = process.platform === 'win32';

/** The environment of somebody who types at a prompt, not of a script that npm runs. */
const environment = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => !/^(npm_(?!config_)|INIT_CWD|NODE_ENV|VITEST)/i.test(name)),
);

interface Packed {
  readonly filename: string;
  readonly files: readonly {readonly path: string}[];
}

async function npm(program: 'npm' | 'npx', args: readonly string[], cwd: string): Promise<string> {
  const {stdout} = await run(program, args, {cwd, env: environment, shell: isWindows, maxBuffer: 1e8});
  return stdout;
}

async function pack(folder: string): Promise<Packed> {
  const [packed]: readonly (Packed | undefined)[] = JSON.parse(
    await npm('npm', ['pack', '--json', '--silent', '--pack-destination', folder], root),
  );
  if (!packed) throw new Error('npm packed nothing');
  return packed;
}

let files: readonly string[] = [];
beforeAll(async () => {
  const listed: readonly Packed[] = JSON.parse(
    await npm('npm', ['pack', '--json', '--silent', '--dry-run'], root),
  );
  files = (listed[0]?.files ?? []).map((file) => file.path);
}, 120_000);

test('the package holds what is needed, and nothing that only developers need', () => {
  for (const needed of [
    '.compiled/program/swatchleaf.js',
    'layouts/document.hbs',
    'layouts/starter/syllabus.yaml',
    'content/binder.yaml',
    'content/photos/hat.jpg',
    'README.md',
    'package.json',
  ])
    expect(files).toContain(needed);
  expect(
    files.filter((file) =>
      /^(src|tests|build)\/|^\.compiled\/(dev\/|\.)|\.ts$|(^|\/)\.(?!compiled)/.test(file),
    ),
  ).toEqual([]);
});

test('no dependency of the package fetches a browser while it is installed', async () => {
  const {dependencies} = JSON.parse(await readFile(path.join(root, 'package.json'), 'utf8'));
  // `puppeteer-core` runs the browser; `puppeteer` is the same and a download of 200 MB.
  expect(Object.keys(dependencies)).not.toContain('puppeteer');
});

test('installed in an empty folder, it gives a first printed binder', async () => {
  const folder = await emptyFolder();
  const {filename} = await pack(folder);
  const install = ['install', '--prefer-offline', '--no-audit', '--no-fund', `./${filename}`];
  try {
    await npm('npm', install, folder);
  } catch (cause) {
    throw new Error("the package could not be installed; this test needs npm's registry or a filled cache", {
      cause,
    });
  }
  const laid = await npm('npx', ['swatchleaf', 'init', 'my', '--name', 'Ann Weaver'], folder);
  expect(laid).toContain('npx swatchleaf build my ');
  expect(await npm('npx', ['swatchleaf', 'check', 'my'], folder)).toBe('nothing found\n');
  const built = await npm('npx', ['swatchleaf', 'build', 'my'], folder);
  expect(built).toMatch(/^build\/binder\.pdf$/m);
  const facts = readPdfFacts(await readFile(path.join(folder, 'my/build/binder.pdf')));
  expect(facts.title).toBe('Binder: Ann Weaver');
  expect(facts.pages[0]?.width).toBeCloseTo(210, 0);
  expect(facts.fonts.every(({embedded}) => embedded)).toBe(true);
  expect(facts.fonts.length).toBeGreaterThan(3);

  await npm('npx', ['swatchleaf', 'init', 'example', '--example'], folder);
  expect(await filesIn(path.join(folder, 'example/content'))).toEqual(
    files
      .filter((file) => file.startsWith('content/'))
      .map((file) => file.slice('content/'.length))
      .toSorted(),
  );
}, 300_000);
