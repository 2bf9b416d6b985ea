import {readFile, rm, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {emptyFolder, filesIn, smallBinder, swatchleaf} from '../support/run-cli.ts';

const library = 'content/library.yaml';

/** The small binder with `shelf` beside it, as someone would have saved it there. */
async function binderWith(shelf: string | Uint8Array, name = 'shelf.bib') {
  const folder = await smallBinder();
  await writeFile(path.join(folder, name), shelf);
  const before = await readFile(path.join(folder, library));
  return {folder, before, now: () => readFile(path.join(folder, library), 'utf8')};
}

const good = `@book{caulfeild1882,
  author = {Caulfeild, Sophia Frances Anne and Saward, Blanche C.},
  title = {The Dictionary of Needlework}, year = 1882, publisher = {L. Upcott Gill}, address = {London}, file = {a.pdf}
}
`;

test('what comes is written at the end in the style of the library, which `check` reads without a fault', async () => {
  const {folder, before, now} = await binderWith(good);
  const checked = await swatchleaf(['check', folder]);
  const ran = await swatchleaf(['import', 'shelf.bib'], {cwd: folder});
  expect(ran).toEqual({
    code: 0,
    out: `Added 1 source:\n  caulfeild1882: without file\n${library}\n`,
    err: '',
  });
  const after = await now();
  expect(after.startsWith(before.toString('utf8'))).toBe(true);
  expect(after.slice(before.length)).toBe(`
# From shelf.bib, imported 2026-09-28

- id: caulfeild1882
  type: book
  title: The Dictionary of Needlework
  author:
    - {family: Caulfeild, given: Sophia Frances Anne}
    - {family: Saward, given: Blanche C.}
  issued: 1882
  publisher: L. Upcott Gill
  publisher-place: London
`);
  // A source that nothing cites may be told of; nothing else is new.
  const again = await swatchleaf(['check', folder]);
  expect(again.code).toBe(checked.code);
  expect(again.out + again.err).not.toMatch(/library\.yaml:\d+:\d+ error/);
});

test('a second time everything is there already, and the file stays as it is', async () => {
  const {folder, now} = await binderWith(good);
  await swatchleaf(['import', path.join(folder, 'shelf.bib'), folder]);
  const first = await now();
  const ran = await swatchleaf(['import', path.join(folder, 'shelf.bib'), folder]);
  expect(ran).toEqual({
    code: 0,
    out: 'Nothing added.\nLeft out 1 entry:\n  caulfeild1882: the library has a source of this key\n',
    err: '',
  });
  expect(await now()).toBe(first);
});

test('what cannot be read is told with its place, and the rest is added', async () => {
  const {folder, now} = await binderWith(
    `${good}@book{torn,\n  title = {Torn,\n  year = 1890\n\n@book{b, title={Whole}}`,
  );
  const {code, out, err} = await swatchleaf(['import', 'shelf.bib'], {cwd: folder});
  expect(code).toBe(1);
  expect(out).toMatch(/^Added 2 sources:\n/);
  expect(err).toMatch(
    /^shelf\.bib:6:11 error imported-file\n {2}`\{` is opened and not closed .*\n {4}6 \| {3}title = \{Torn,\n {6}\| {11}\^\n {2}→ Write the `\}`/,
  );
  expect(await now()).toContain('- id: b\n');
  const explained = await swatchleaf(['explain', 'imported-file']);
  expect(explained.code).toBe(0);
});

test('--dry-run says the same and changes nothing', async () => {
  const {folder, before, now} = await binderWith(good);
  const files = await filesIn(folder);
  const {code, out} = await swatchleaf(['import', 'shelf.bib', '--dry-run'], {cwd: folder});
  expect({code, out}).toEqual({code: 0, out: 'Would add 1 source:\n  caulfeild1882: without file\n'});
  expect(await now()).toBe(before.toString('utf8'));
  expect(await filesIn(folder)).toEqual(files);
});

describe('the library', () => {
  test('is made when there is none', async () => {
    const {folder, now} = await binderWith('TY  - BOOK\nTI  - Welts\nPY  - 1992\nER  - \n', 'shelf.ris');
    await rm(path.join(folder, library));
    expect((await swatchleaf(['import', 'shelf.ris'], {cwd: folder})).code).toBe(0);
    expect(await now()).toMatch(
      /^# My reference library.*\n\n# From shelf\.ris, .*\n\n- id: welts1992\n {2}type: book\n {2}title: Welts\n {2}issued: 1992\n$/,
    );
  });

  test.each([
    [
      'with CRLF, a byte order mark and no end of its last line',
      '\ufeff- id: a\r\n  type: book',
      '\r\n\r\n# From shelf.bib, imported 2026-09-28\r\n\r\n- id: caulfeild1882\r\n',
    ],
    [
      'as a list under `references`',
      'references:\n  - id: a\n    type: book\n',
      '\n  # From shelf.bib, imported 2026-09-28\n\n  - id: caulfeild1882\n    type: book\n',
    ],
    [
      'with nothing but a remark',
      '# nothing yet\n',
      '\n# From shelf.bib, imported 2026-09-28\n\n- id: caulfeild1882\n',
    ],
  ])('%s keeps its bytes and its ways', async (_, text, added) => {
    const {folder, now} = await binderWith(good);
    await writeFile(path.join(folder, library), text);
    expect((await swatchleaf(['import', 'shelf.bib'], {cwd: folder})).code).toBe(0);
    expect((await now()).startsWith(text + added)).toBe(true);
  });

  test.each([
    ['between brackets', '[{id: a, type: book}]\n', 2, /does not end with its list of sources/],
    [
      'with something after the list',
      'references:\n  - id: a\n    type: book\nnotes: none\n',
      2,
      /does not end with its list/,
    ],
    ['that cannot be read', '- id: [\n', 1, /content\/library\.yaml:\d+:\d+ error yaml-syntax/],
  ])('%s is left as it is', async (_, text, code, message) => {
    const {folder, now} = await binderWith(good);
    await writeFile(path.join(folder, library), text);
    const ran = await swatchleaf(['import', 'shelf.bib'], {cwd: folder});
    expect(ran.code).toBe(code);
    expect(ran.err).toMatch(message);
    expect(await now()).toBe(text);
  });

  test('that would grow beyond what is read is left as it is', async () => {
    const entries = Array.from(
      {length: 1500},
      (_, index) => `@book{k${index}, title={Title ${index} ${'stitch '.repeat(30)}}}`,
    );
    const {folder, before, now} = await binderWith(entries.join('\n'));
    const {code, err} = await swatchleaf(['import', 'shelf.bib'], {cwd: folder});
    expect(code).toBe(2);
    expect(err).toMatch(
      /^swatchleaf: nothing was imported into `content\/library\.yaml`: .* 256000 are read\n$/,
    );
    expect(await now()).toBe(before.toString('utf8'));
  });
});

test.each([
  ['Windows-1252', Buffer.from('@book{k, title={Tricot \u00e0 la fran\u00e7aise}}', 'latin1')],
  ['UTF-16', Buffer.from('\ufeff@book{k, title={Tricot \u00e0 la fran\u00e7aise}}', 'utf16le')],
])('a file in %s is read and said to be that', async (encoding, bytes) => {
  const {folder, now} = await binderWith(bytes);
  const {code, out} = await swatchleaf(['import', 'shelf.bib'], {cwd: folder});
  expect(code).toBe(0);
  expect(out).toContain(`shelf.bib is not UTF-8; it was read as ${encoding}.\n`);
  expect(await now()).toContain('title: Tricot à la française\n');
});

describe('nothing is written when nothing can be read', () => {
  test.each([
    [
      'an empty file',
      '',
      'shelf.bib',
      1,
      /^shelf\.bib:1:1 error imported-file\n {2}nothing stands in this file/,
    ],
    [
      'broken JSON',
      '[\n  {"id": "a",}\n]',
      'shelf.json',
      1,
      /^shelf\.json:2:14 error imported-file\n {2}this is no JSON/,
    ],
    [
      'another sort of file',
      'PK\u0003\u0004',
      'shelf.zip',
      1,
      /^shelf\.zip:1:1 error imported-file\n {2}this is none of the files/,
    ],
    ['five megabytes', 'x'.repeat(5_000_000), 'shelf.bib', 1, /5000000 characters; 2000000 are read at once/],
    ['nine megabytes', 'x'.repeat(9_000_000), 'shelf.bib', 2, /has 9 MB, too much for references/],
  ])('%s', async (_, text, name, code, message) => {
    const {folder, before, now} = await binderWith(text, name);
    const ran = await swatchleaf(['import', name], {cwd: folder});
    expect(ran.code).toBe(code);
    expect(ran.err).toMatch(message);
    expect(await now()).toBe(before.toString('utf8'));
  });

  test.each([
    ['no such file', ['none.bib'], /there is no file `none\.bib`/],
    ['a folder', ['content'], /`content` is no file/],
  ])('%s', async (_, args, message) => {
    const {folder} = await binderWith(good);
    const ran = await swatchleaf(['import', ...args], {cwd: folder});
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(message);
  });
});

test('whatever stands in the file, no connection is opened and no program is started', async () => {
  const guards = await emptyFolder();
  const guard = path.join(guards, 'guard.cjs');
  await writeFile(
    guard,
    `const refuse = () => { process.stderr.write('REACHED OUT\\n'); throw new Error('refused'); };
require('node:net').Socket.prototype.connect = refuse;
require('node:dns').lookup = refuse;
const programs = require('node:child_process');
for (const name of ['spawn', 'spawnSync', 'execFile', 'execFileSync', 'fork', 'exec', 'execSync']) programs[name] = refuse;
globalThis.fetch = refuse;
require('node:module').syncBuiltinESMExports();
`,
  );
  const hostile = [
    [
      'shelf.bib',
      '@online{a, title={https://127.0.0.1:9/x.json}, url={http://127.0.0.1:9/}, doi={10.1234/a}, file={http://127.0.0.1:9/}}\nhttps://doi.org/10.1234/a',
    ],
    [
      'shelf.ris',
      'TY  - ELEC\nTI  - https://doi.org/10.1234/a\nUR  - http://127.0.0.1:9/\nDO  - 10.1234/a\nER  - \n',
    ],
    [
      'shelf.json',
      '[{"id": "Q42", "type": "webpage", "title": "https://doi.org/10.1234/b", "URL": "http://127.0.0.1:9/"}, "http://127.0.0.1:9/", "10.1234/a", "Q42"]',
    ],
    ['shelf.txt', 'https://doi.org/10.1234/a\n'],
  ] as const;
  for (const [name, text] of hostile) {
    const {folder} = await binderWith(text, name);
    const {err} = await swatchleaf(['import', name], {
      cwd: folder,
      env: {NODE_OPTIONS: `--require ${JSON.stringify(guard)}`},
    });
    expect(err).not.toContain('REACHED OUT');
    expect(err).not.toContain('fault in the program');
  }
  // The guard itself works.
  const {folder} = await binderWith(good);
  const probe = path.join(guards, 'probe.cjs');
  await writeFile(probe, "try { require('node:net').connect(9, '127.0.0.1'); } catch {}\n");
  const {err} = await swatchleaf(['import', 'shelf.bib', '--dry-run'], {
    cwd: folder,
    env: {NODE_OPTIONS: `--require ${JSON.stringify(guard)} --require ${JSON.stringify(probe)}`},
  });
  expect(err).toContain('REACHED OUT');
});
