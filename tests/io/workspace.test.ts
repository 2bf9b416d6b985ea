import {execFileSync} from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {afterEach, beforeEach, describe, expect, test} from 'vitest';
import {openDiskWorkspace} from '../../src/io/disk-workspace.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import {OutsideFolderError, type Workspace} from '../../src/io/workspace.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

let scratch = '';
let root = '';

beforeEach(() => {
  scratch = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  root = join(scratch, 'binder # 1');
  mkdirSync(root);
});
afterEach(() => rmSync(scratch, {recursive: true}));

function put(path: string, content: string): void {
  mkdirSync(dirname(join(root, path)), {recursive: true});
  writeFileSync(join(root, path), content);
}

const decomposed = 'gru\u0308n.md';
const composed = 'gr\u00fcn.md';

const files: Readonly<Record<string, string>> = {
  'content/b.md': 'b',
  'content/a.md': 'a',
  'content/photos/front #1, grün & 50%.jpg': 'picture',
  'content/photos/ribs 1×1.jpg': 'picture',
  [`content/swatches/${decomposed}`]: 'green',
  'binder.yaml': '\uFEFFcandidate:\r\n',
};
const litter = [
  '.DS_Store',
  'content/.a.md.swp',
  'content/.#a.md',
  'content/a.md~',
  'content/#a.md#',
  'content/~$a.docx',
  'content/4913',
  'content/a.md.swp',
  'content/Thumbs.db',
  '.git/config',
  'content/.swatchleaf-cache/x.jpg',
];

const kinds: ReadonlyArray<readonly [string, () => Promise<Workspace>]> = [
  [
    'on disk',
    async () => {
      for (const path of [...Object.keys(files), ...litter]) put(path, files[path] ?? 'litter');
      return openDiskWorkspace(root);
    },
  ],
  [
    'in memory',
    async () =>
      createMemoryWorkspace({...files, ...Object.fromEntries(litter.map((path) => [path, 'litter']))}),
  ],
];

describe.each(kinds)('a workspace %s', (_, open) => {
  test('lists every file below a folder, sorted, and leaves out what editors and systems leave lying about', async () => {
    const workspace = await open();
    expect(await workspace.list('content')).toEqual([
      'content/a.md',
      'content/b.md',
      'content/photos/front #1, grün & 50%.jpg',
      'content/photos/ribs 1×1.jpg',
      `content/swatches/${composed}`,
    ]);
    expect(await workspace.list('')).toHaveLength(6);
    expect(await workspace.list('content/letters')).toEqual([]);
    expect(await workspace.list('binder.yaml')).toEqual([]);
    expect(await workspace.list('bind')).toEqual([]);
  });

  test('reads text as it stands, with its byte order mark and line ends', async () => {
    expect(await (await open()).readText('binder.yaml')).toBe('\uFEFFcandidate:\r\n');
  });

  test.each(['content/c.md', 'content', 'content/a.md/b.md', ''])(
    'reading %j, which is no file, gives null',
    async (path) => {
      const workspace = await open();
      expect(await workspace.readText(path)).toBeNull();
      expect(await workspace.readBytes(path)).toBeNull();
    },
  );

  test('finds a name with accents however they are composed', async () => {
    const workspace = await open();
    expect(await workspace.readText(`content/swatches/${composed}`)).toBe('green');
    expect(await workspace.readText(`content/swatches/${decomposed}`)).toBe('green');
    await workspace.write(`content/swatches/${composed}`, 'greener');
    expect(await workspace.readText(`content/swatches/${decomposed}`)).toBe('greener');
    expect(await workspace.list('content/swatches')).toHaveLength(1);
  });

  test('writes text and bytes, into new folders too, and replaces what was there', async () => {
    const workspace = await open();
    await workspace.write('build/reprint/S-07 ü.pdf', new Uint8Array([0, 255, 10]));
    expect(Buffer.from((await workspace.readBytes('build/reprint/S-07 ü.pdf')) ?? [])).toEqual(
      Buffer.from([0, 255, 10]),
    );
    await workspace.write('content/a.md', 'naïve');
    expect(await workspace.readText('content/a.md')).toBe('naïve');
  });

  test('removes a file, and says whether there was one', async () => {
    const workspace = await open();
    await workspace.write('build/changed ü.pdf', 'old');
    expect(await workspace.remove('build/changed ü.pdf')).toBe(true);
    expect(await workspace.readText('build/changed ü.pdf')).toBeNull();
    expect(await workspace.remove('build/changed ü.pdf')).toBe(false);
    expect(await workspace.remove('nowhere/at/all.pdf')).toBe(false);
  });

  test('makes a new file, and leaves one that is there as it is', async () => {
    const workspace = await open();
    expect(await workspace.create('content/new/c.md', 'c')).toBe(true);
    expect(await workspace.readText('content/new/c.md')).toBe('c');
    expect(await workspace.create('content/a.md', 'other')).toBe(false);
    expect(await workspace.create(`content/swatches/${composed}`, 'other')).toBe(false);
    expect(await workspace.readText('content/a.md')).toBe('a');
    expect(await workspace.readText(`content/swatches/${composed}`)).toBe('green');
  });

  test.each([
    '../secret.md',
    'content/../../secret.md',
    'content/../a.md',
    './binder.yaml',
    'content//a.md',
    'content/',
    '/etc/hostname',
    'content/a.md\0.jpg',
  ])('refuses %j', async (path) => {
    const workspace = await open();
    await expect(workspace.readText(path)).rejects.toThrow(OutsideFolderError);
    await expect(workspace.readBytes(path)).rejects.toThrow(OutsideFolderError);
    await expect(workspace.write(path, 'x')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.remove(path)).rejects.toThrow(OutsideFolderError);
    await expect(workspace.create(path, 'x')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.list(path)).rejects.toThrow(OutsideFolderError);
  });

  test.each(['%2e%2e%2fsecret.md', 'content/%2e%2e/a.md', 'file:///etc/hostname'.replace('///', ':')])(
    'takes %j for a name like any other',
    async (path) => expect(await (await open()).readText(path)).toBeNull(),
  );
});

describe('links', () => {
  beforeEach(() => {
    mkdirSync(join(scratch, 'outside'));
    writeFileSync(join(scratch, 'outside', 'secret.md'), 'secret');
    put('content/a.md', 'a');
  });

  test('a linked file that leads outside is listed and refused', async () => {
    symlinkSync(join(scratch, 'outside', 'secret.md'), join(root, 'content', 'link.md'));
    const workspace = await openDiskWorkspace(root);
    expect(await workspace.list('content')).toEqual(['content/a.md', 'content/link.md']);
    await expect(workspace.readText('content/link.md')).rejects.toThrow(
      '`content/link.md` lies outside the binder folder',
    );
  });

  test('a linked folder that leads outside is refused for listing, reading and writing', async () => {
    symlinkSync(join(scratch, 'outside'), join(root, 'content', 'swatches'));
    const workspace = await openDiskWorkspace(root);
    await expect(workspace.list('content')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.list('content/swatches')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.readText('content/swatches/secret.md')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.write('content/swatches/new.md', 'x')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.remove('content/swatches/secret.md')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.write('content/swatches/deep/er/new.md', 'x')).rejects.toThrow(OutsideFolderError);
    await expect(workspace.create('content/swatches/new.md', 'x')).rejects.toThrow(OutsideFolderError);
    expect(readdirSync(join(scratch, 'outside'))).toEqual(['secret.md']);
  });

  test('a folder whose name begins like the binder is outside', async () => {
    mkdirSync(`${root} copy`);
    writeFileSync(join(`${root} copy`, 'a.md'), 'x');
    symlinkSync(`${root} copy`, join(root, 'copy'));
    await expect((await openDiskWorkspace(root)).readText('copy/a.md')).rejects.toThrow(OutsideFolderError);
  });

  test('links within the binder are followed, in circles only once', async () => {
    symlinkSync(join(root, 'content'), join(root, 'content', 'again'));
    symlinkSync('a.md', join(root, 'content', 'b.md'));
    symlinkSync('nowhere.md', join(root, 'content', 'c.md'));
    const workspace = await openDiskWorkspace(root);
    expect(await workspace.list('content')).toEqual(['content/a.md', 'content/b.md', 'content/c.md']);
    expect(await workspace.readText('content/b.md')).toBe('a');
    expect(await workspace.readText('content/c.md')).toBeNull();
  });

  test('the binder folder may itself be reached through a link', async () => {
    symlinkSync(root, join(scratch, 'shortcut'));
    const workspace = await openDiskWorkspace(join(scratch, 'shortcut'));
    expect(await workspace.readText('content/a.md')).toBe('a');
    await workspace.write('build/x.txt', 'x');
    expect(readFileSync(join(root, 'build', 'x.txt'), 'utf8')).toBe('x');
  });

  test('writing to a link replaces the link, never the file it leads to', async () => {
    symlinkSync(join(scratch, 'outside', 'secret.md'), join(root, 'out.md'));
    await (await openDiskWorkspace(root)).write('out.md', 'new');
    expect(readFileSync(join(scratch, 'outside', 'secret.md'), 'utf8')).toBe('secret');
    expect(readFileSync(join(root, 'out.md'), 'utf8')).toBe('new');
  });
});

describe('trouble of the world', () => {
  test('a binder folder that is not there is told in one line', async () => {
    const missing = join(scratch, 'missing');
    await expect(openDiskWorkspace(missing)).rejects.toThrow(
      new OperationalError(`there is no folder \`${missing}\``),
    );
    writeFileSync(missing, 'a file');
    await expect(openDiskWorkspace(missing)).rejects.toThrow(OperationalError);
  });

  test('a folder in the way of a file, and a file in the way of a folder', async () => {
    const workspace = await openDiskWorkspace(root);
    await workspace.write('build/binder.pdf/x', 'x');
    await expect(workspace.write('build/binder.pdf', 'y')).rejects.toThrow(
      'cannot write `build/binder.pdf`: a folder of that name is in the way',
    );
    await expect(workspace.write('build/binder.pdf/x/y', 'y')).rejects.toThrow(
      'cannot write `build/binder.pdf/x/y`: a file stands where a folder is needed',
    );
    expect(readdirSync(join(root, 'build'))).toEqual(['binder.pdf']);
  });

  test.runIf(process.platform !== 'win32')(
    'a pipe is no file of a binder, and reading it does not wait',
    async () => {
      execFileSync('mkfifo', [join(root, 'pipe.md')]);
      expect(await (await openDiskWorkspace(root)).readText('pipe.md')).toBeNull();
    },
  );

  test('the first write into a folder removes what a killed run left there more than an hour ago', async () => {
    const old = `.swatchleaf-${'0'.repeat(24)}.tmp`;
    const fresh = `.swatchleaf-${'1'.repeat(24)}.tmp`;
    const others = '.swatchleaf-notes.tmp';
    for (const name of [old, fresh, others]) put(`build/${name}`, 'left over');
    const longAgo = new Date('2025-03-01T12:00:00Z');
    utimesSync(join(root, 'build', old), longAgo, longAgo);
    utimesSync(join(root, 'build', others), longAgo, longAgo);
    await (await openDiskWorkspace(root)).write('build/binder.pdf', 'x');
    expect(readdirSync(join(root, 'build')).sort()).toEqual([fresh, others, 'binder.pdf'].sort());
  });

  test.runIf(process.platform !== 'win32')('a read-only output folder', async () => {
    put('build/binder.pdf', 'old');
    for (const path of [scratch, root]) chmodSync(path, 0o755);
    chmodSync(join(root, 'build'), 0o555);
    // The administrator may write everywhere: be nobody for the length of one write.
    const administrator = process.getuid?.() === 0;
    if (administrator) process.seteuid?.(65534);
    try {
      await expect((await openDiskWorkspace(root)).write('build/binder.pdf', 'new')).rejects.toThrow(
        'cannot write `build/binder.pdf`: you have no right to do that there',
      );
    } finally {
      if (administrator) process.seteuid?.(0);
      chmodSync(join(root, 'build'), 0o755);
    }
    expect(readFileSync(join(root, 'build', 'binder.pdf'), 'utf8')).toBe('old');
  });
});
