import {createHash} from 'node:crypto';
import {chmod, mkdir, readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {emptyFolder, filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatch = await readFile(path.join(root, 'tests/rules/base/content/swatches/s-01.md'), 'utf8');

const outputs = [
  'build/binder.html',
  'build/binder.pdf',
  'build/check-report.html',
  'build/check-report.pdf',
  'build/packing-list.pdf',
  'build/self-check.pdf',
  'build/tags.pdf',
];

async function digests(folder: string, files: readonly string[]): Promise<Readonly<Record<string, string>>> {
  const entries = files.map(async (file) => {
    const digest = createHash('sha256').update(await readFile(path.join(folder, file)));
    return [file, digest.digest('hex')] as const;
  });
  return Object.fromEntries(await Promise.all(entries));
}

describe('build', () => {
  test('a sound binder: every output, named on standard output; twice the same bytes, on another day too', async () => {
    const folder = await smallBinder();
    const content = (await filesIn(folder)).filter((file) => file.startsWith('content/'));
    const before = await digests(folder, content);
    const first = await swatchleaf(['build'], {cwd: folder});
    expect(first.code).toBe(0);
    expect(first.out.trim().split('\n').toSorted()).toEqual(outputs);
    expect((await filesIn(folder)).filter((file) => !file.startsWith('content/'))).toEqual(outputs);
    const once = await digests(folder, outputs);

    const second = await swatchleaf(['build', folder], {env: {SOURCE_DATE_EPOCH: '1800000000'}});
    expect(second.code).toBe(0);
    expect(await digests(folder, outputs)).toEqual(once);
    expect(await digests(folder, content)).toEqual(before);
  });

  test('while an error stands: a draft on every leaf, exit 1', async () => {
    const folder = await smallBinder({'content/swatches/s-01.md': swatch.replace('4.5 mm', '4.6 mm')});
    const {code, err} = await swatchleaf(['build', folder]);
    expect(code).toBe(1);
    expect(err).toContain('unknown-needle-size');
    const html = await readFile(path.join(folder, 'build/binder.html'), 'utf8');
    expect(html).toMatch(/Draft: 1 error stands/);
  });

  test('a broken syllabus: exit 2, and the last good binder stays', async () => {
    const folder = await smallBinder({'content/syllabus.yaml': 'title: [\n'});
    await mkdir(path.join(folder, 'build'));
    await writeFile(path.join(folder, 'build/binder.pdf'), 'the last good one');
    const {code, out, err} = await swatchleaf(['build', folder]);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(/content\/syllabus\.yaml:\d+:\d+ error yaml-syntax/);
    expect(await readFile(path.join(folder, 'build/binder.pdf'), 'utf8')).toBe('the last good one');
  });

  test('no browser: exit 3, one line that says what to do, and the last good binder stays', async () => {
    const folder = await smallBinder();
    await mkdir(path.join(folder, 'build'));
    await writeFile(path.join(folder, 'build/binder.pdf'), 'the last good one');
    const {code, out, err} = await swatchleaf([
      'build',
      folder,
      '--browser',
      path.join(folder, 'no-browser'),
    ]);
    expect({code, out}).toEqual({code: 3, out: ''});
    expect(err).toMatch(/^swatchleaf: [^\n]*browser[^\n]*\n$/);
    expect(await readFile(path.join(folder, 'build/binder.pdf'), 'utf8')).toBe('the last good one');
  });

  test('an output folder that cannot be written: exit 3, one line', async () => {
    const folder = await smallBinder();
    // A file in the place of the folder refuses writing to everyone, the administrator included.
    await writeFile(path.join(folder, 'build'), 'a file');
    const {code, out, err} = await swatchleaf(['build', folder]);
    expect({code, out}).toEqual({code: 3, out: ''});
    expect(err.trim().split('\n').at(-1)).toMatch(/^swatchleaf: cannot write `build\/[^`]+`: /);
  });

  test.skipIf(process.getuid?.() === 0)('a read-only output folder: exit 3, one line', async () => {
    const folder = await smallBinder();
    await mkdir(path.join(folder, 'build'), {mode: 0o500});
    const {code, err} = await swatchleaf(['build', folder]);
    await chmod(path.join(folder, 'build'), 0o700);
    expect(code).toBe(3);
    expect(err.trim().split('\n').at(-1)).toMatch(/^swatchleaf: cannot write `build\/[^`]+`: /);
  });

  test("a candidate's own layout stands in the place of ours; a misspelt name in it stops the build as their fault", async () => {
    const title = await readFile(path.join(root, 'layouts/sheets/title-page.hbs'), 'utf8');
    const own = await smallBinder({
      'layouts/sheets/title-page.hbs': title.replace('<h1', '<p>Knitted by lamplight</p><h1'),
    });
    expect((await swatchleaf(['build', own])).code).toBe(0);
    expect(await readFile(path.join(own, 'build/binder.html'), 'utf8')).toContain('Knitted by lamplight');

    const misspelt = await smallBinder({
      'layouts/sheets/title-page.hbs': title.replace('<h1', '{{#if cerificate}}x{{/if}}<h1'),
    });
    const {code, out, err} = await swatchleaf(['build', misspelt]);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(/title-page\.hbs/);
    expect(err).toMatch(/cerificate/);
  });
});

describe('reprint', () => {
  const reworked = swatch
    .replace('status: finished', 'status: rework')
    .replace(
      'measured:',
      'rework:\n  - {round: 1, done: Knitted again., before: {stitches: [21 over 10 cm]}}\nmeasured:',
    )
    .replace('on: 2025-09-22', 'on: 2026-09-22');
  const answer =
    'round: 0\nreceived: 2026-09-14\nresults:\n  S-01: {result: rework, remark: The edges draw in.}\n';
  const files = {'content/swatches/s-01.md': reworked, 'content/assessments/round-0.yaml': answer};

  test.each([
    ['one item by its id', ['s-01']],
    ['all that wait', []],
  ])(
    '%s: one file an item with remark, answer, item and tag; letter, packing list and label with all',
    async (_, ids) => {
      const folder = await smallBinder(files);
      const {out} = await swatchleaf(['reprint', ...ids, folder]);
      const envelope = ['letter', 'packing-list', 'label'].map((name) => `build/reprint/round-1-${name}.pdf`);
      const expected = ['build/reprint/S-01.pdf', ...(ids.length === 0 ? envelope : [])];
      expect(out.trim().split('\n')).toEqual(expected);
      expect((await filesIn(folder)).filter((file) => file.startsWith('build/'))).toEqual(
        expected.toSorted(),
      );
    },
  );

  test.each([
    ['an id that no item answers', ['S-10'], /no item answers `S-10`; did you mean `S-01`\?/],
    ['nothing that waits', [], /no item waits to be sent again/],
  ])('%s: exit 2', async (_, ids, message) => {
    const {code, out, err} = await swatchleaf(['reprint', ...ids], {cwd: await smallBinder()});
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(message);
  });

  test('no binder: exit 2', async () => {
    expect((await swatchleaf(['reprint', 'S-01'], {cwd: await emptyFolder()})).code).toBe(2);
  });
});

describe('a signal', () => {
  test.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ] as const)(
    '%s while printing: exit %i, nothing half-written, no profile folder left',
    async (signal, code) => {
      const folder = await smallBinder();
      const temporary = await emptyFolder();
      const ran = await swatchleaf(['build', folder], {
        env: {TMPDIR: temporary, TEMP: temporary, TMP: temporary},
        // The first line of progress comes when the binder is printed and the rest is not.
        interrupt: {signal, when: /Binder: /},
      });
      expect(ran.code).toBe(code);
      expect((await filesIn(folder)).filter((file) => !file.startsWith('content/'))).toEqual([]);
      expect(await filesIn(temporary)).toEqual([]);
    },
  );
});
