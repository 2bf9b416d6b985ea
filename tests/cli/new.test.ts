import {mkdir, readFile, symlink, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {starterFiles} from '../../src/commands/starter-files.ts';
import {kinds} from '../../src/model/kinds.ts';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import {emptyFolder, filesIn, smallBinder, swatchleaf} from '../support/run-cli.ts';

/** The starter's syllabus, which has every kind, without any item. */
async function binderWithoutItems(): Promise<string> {
  const folder = await emptyFolder();
  const settings = {name: 'Ann Weaver', paper: 'A4', rings: '2', units: 'metric', style: 'author-date'};
  for (const [file, text] of await starterFiles(settings, '2026-03-01')) {
    if (file.endsWith('.md')) continue;
    await mkdir(path.dirname(path.join(folder, file)), {recursive: true});
    await writeFile(path.join(folder, file), text);
  }
  return folder;
}

const stubs = [
  'content/letters/l-01-covering-letter.md',
  'content/reports/r-01-what-blocking-does.md',
  'content/swatches/s-01-garter-stitch-and-stockinette.md',
  'content/questions/q-01-why-does-stockinette-curl.md',
  'content/patterns/t-01-a-pattern-of-your-own.md',
  'content/projects/p-01-a-small-finished-piece.md',
  'content/reviews/b-01-review-of-a-technical-book.md',
];

test('a stub for every requirement; sheets and tags are printed from them before the knitting starts', async () => {
  const folder = await binderWithoutItems();
  const ran = await swatchleaf(['new'], {cwd: folder});
  expect(ran).toEqual({code: 0, out: `${stubs.join('\n')}\n`, err: ''});
  expect(stubs).toHaveLength(kinds.length);

  const built = await swatchleaf(['build', folder]);
  expect(built.code).toBe(1);
  const found = [...built.err.matchAll(/^content\/\S+:\d+:\d+ (.+)$/gm)].map(([, finding]) => finding);
  expect(found).toEqual(stubs.map(() => 'error unfinished-item'));
  const [binder, tags] = await Promise.all(
    ['binder', 'tags'].map(async (name) =>
      readPdfFacts(await readFile(path.join(folder, `build/${name}.pdf`))),
    ),
  );
  const labels = binder?.pages.map(({label}) => label?.split(' ')[0]);
  expect(labels).toEqual(expect.arrayContaining(['L-01', 'R-01', 'S-01', 'Q-01', 'T-01', 'P-01', 'B-01']));
  expect(tags?.pages).toHaveLength(1);
  const html = await readFile(path.join(folder, 'build/binder.html'), 'utf8');
  expect(html).toContain('Two fabrics in one piece, with even edges.');
});

test('asked again it makes nothing; only what is named or missing is made', async () => {
  const folder = await binderWithoutItems();
  expect((await swatchleaf(['new', 's-01', 'B-01'], {cwd: folder})).out.split('\n').toSorted()).toEqual(
    ['', stubs[2], stubs[6]].toSorted(),
  );
  const mine = path.join(folder, 'content/swatches/mine.md');
  await writeFile(mine, '---\nrequirement: Q-01\n---\nText.\n');
  const rest = await swatchleaf(['new', folder]);
  expect(rest.out.trim().split('\n')).toEqual([stubs[0], stubs[1], stubs[4], stubs[5]]);
  const before = await filesIn(folder);
  expect(await swatchleaf(['new', folder])).toEqual({
    code: 0,
    out: '',
    err: 'No file was to be made: every requirement has its item.\n',
  });
  const named = await swatchleaf(['new', 'Q-01', folder]);
  expect(named).toMatchObject({code: 0, out: ''});
  expect(named.err).toContain('Q-01 has its item: content/swatches/mine.md\n');
  expect(await filesIn(folder)).toEqual(before);
});

describe('what is there is never touched', () => {
  test('a file in the way is named and stays; the other stubs are made', async () => {
    const folder = await binderWithoutItems();
    const [file = '', link = ''] = [stubs[2], stubs[3]];
    const outside = await emptyFolder();
    for (const each of [file, link]) await mkdir(path.dirname(path.join(folder, each)), {recursive: true});
    await writeFile(path.join(folder, file), 'a shopping list');
    await symlink(path.join(outside, 'nowhere.md'), path.join(folder, link));
    const {code, out, err} = await swatchleaf(['new'], {cwd: folder});
    expect(code).toBe(1);
    expect(out.trim().split('\n')).toEqual(stubs.filter((each) => each !== file && each !== link));
    expect(err).toContain(`${file}:1:1 error requirement-without-item\n`);
    expect(err).toContain(`${link}:1:1 error requirement-without-item\n`);
    expect(await readFile(path.join(folder, file), 'utf8')).toBe('a shopping list');
    expect(await filesIn(outside)).toEqual([]);
  });

  test('an item that cannot be read is not given a second file', async () => {
    const folder = await binderWithoutItems();
    await mkdir(path.join(folder, 'content/swatches'), {recursive: true});
    const broken =
      '---\nrequirement: S-01\nneedles: 4.5 mm\n\nMonths of work, and no second line of hyphens.\n';
    await writeFile(path.join(folder, 'content/swatches/mine.md'), broken);
    const {code, out, err} = await swatchleaf(['new'], {cwd: folder});
    expect(code).toBe(1);
    expect(err).toMatch(
      /^content\/swatches\/mine\.md:1:1 error requirement-without-item\n {2}it seems to answer `S-01`/,
    );
    expect(out).not.toContain('s-01');
  });
});

test.each([
  [
    'an id that the syllabus does not have',
    ['S-10'],
    /^swatchleaf: the syllabus has no `S-10`; did you mean `S-01`\?\n$/,
  ],
  ['two', ['X-01', 'Y-01'], /^swatchleaf: the syllabus has no `X-01` and `Y-01`\n$/],
])('%s: exit 2, nothing made', async (_, ids, message) => {
  const folder = await smallBinder();
  const before = await filesIn(folder);
  const {code, out, err} = await swatchleaf(['new', ...ids, folder]);
  expect({code, out}).toEqual({code: 2, out: ''});
  expect(err).toMatch(message);
  expect(await filesIn(folder)).toEqual(before);
});

test('a broken syllabus: exit 2, and why', async () => {
  const folder = await smallBinder({'content/syllabus.yaml': 'title: [\n'});
  const {code, err} = await swatchleaf(['new', folder]);
  expect(code).toBe(2);
  expect(err).toMatch(/syllabus\.yaml:\d+:\d+ error yaml-syntax/);
});
