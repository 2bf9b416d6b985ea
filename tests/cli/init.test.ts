import {mkdir, readFile, rm, symlink, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {kinds} from '../../src/model/kinds.ts';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import {emptyFolder, filesIn, root, swatchleaf} from '../support/run-cli.ts';

const textIn = (folder: string, file: string) => readFile(path.join(folder, file), 'utf8');
const name = ['--name', 'Ann "Nan" Weaver: knitter'];

describe.each([
  ['A4', 'metric'],
  ['A4', 'inch'],
  ['Letter', 'metric'],
  ['Letter', 'inch'],
])('a new binder on %s, %s', (paper, units) => {
  test('has an item of every kind, and nothing is found in it', async () => {
    const folder = await emptyFolder();
    const ran = await swatchleaf(['init', 'my binder', ...name, '--paper', paper, '--units', units], {
      cwd: folder,
    });
    expect({code: ran.code, err: ran.err}).toEqual({code: 0, err: ''});
    const files = await filesIn(path.join(folder, 'my binder'));
    for (const file of files) expect(ran.out).toContain(path.join('my binder', file));
    expect(ran.out).toContain('swatchleaf build "my binder"');
    const texts = await Promise.all(files.map((file) => textIn(folder, `my binder/${file}`)));
    expect(texts.join('')).not.toMatch(/<<|>>|\bundefined\b/);
    const syllabus = await textIn(folder, 'my binder/content/syllabus.yaml');
    for (const kind of kinds) expect(syllabus).toContain(`kind: ${kind}\n`);
    const items = texts.filter((text) => text.startsWith('---\n'));
    expect(items).toHaveLength(kinds.length);
    const measures = items.join('').match(/\bover (10 cm|4 in)\b/g) ?? [];
    expect(new Set(measures)).toEqual(new Set([units === 'inch' ? 'over 4 in' : 'over 10 cm']));

    expect(await swatchleaf(['check', 'my binder'], {cwd: folder})).toEqual({
      code: 0,
      out: 'nothing found\n',
      err: '',
    });
  });
});

// On A4 it is printed from the packed package, in packed.test.ts.
test('a new binder on Letter is printed at once, without a draft mark', async () => {
  const folder = await emptyFolder();
  await swatchleaf(['init', ...name, '--paper', 'Letter'], {cwd: folder});
  const settings = await textIn(folder, 'content/binder.yaml');
  for (const line of ['paper: Letter ', 'rings: 3 ', 'units: inch ', 'date: 2026-09-28 ']) {
    expect(settings).toContain(`\n${line}`);
  }
  const {code} = await swatchleaf(['build'], {cwd: folder});
  expect(code).toBe(0);
  const facts = readPdfFacts(await readFile(path.join(folder, 'build/binder.pdf')));
  expect(facts.title).toBe('Binder: Ann "Nan" Weaver: knitter');
  for (const page of facts.pages) {
    expect(page.width).toBeCloseTo(215.9, 0);
    expect(page.height).toBeCloseTo(279.4, 0);
  }
  const labels = facts.pages.map(({label}) => label?.split(' ')[0]);
  expect(labels).toEqual(expect.arrayContaining(['L-01', 'R-01', 'S-01', 'Q-01', 'T-01', 'P-01', 'B-01']));
  expect(await textIn(folder, 'build/binder.html')).not.toContain('Draft:');
});

test('without a terminal and a name, the name is left to be written, and check says so', async () => {
  const folder = await emptyFolder();
  const {code, out} = await swatchleaf(['init'], {cwd: folder});
  expect(code).toBe(0);
  expect(out).toContain('your name');
  const checked = await swatchleaf(['check'], {cwd: folder});
  expect(checked.code).toBe(1);
  expect(checked.out).toMatch(
    /^content\/binder\.yaml:4:9 error stub-text\n {2}`…` still stands in `candidate\.name`\n/,
  );
  expect(checked.out).toContain('\n1 error\n');
});

describe('what is there already', () => {
  test('stays as it is, and is named; a run that was cut short can be started again', async () => {
    const folder = await emptyFolder();
    await swatchleaf(['init', ...name], {cwd: folder});
    const files = await filesIn(folder);
    const mine = path.join(folder, 'content/library.yaml');
    await writeFile(mine, '- {id: mine, type: book}\n');
    const again = await swatchleaf(['init', ...name], {cwd: folder});
    expect({code: again.code, out: again.out}).toEqual({code: 2, out: ''});
    expect(again.err).toMatch(/^swatchleaf: `\.` is a binder already: it has `content\/binder\.yaml`/);

    const other = await emptyFolder();
    await swatchleaf(['init', ...name], {cwd: other});
    const notes = path.join(other, 'content/swatches/s-01-garter-stitch-and-stockinette.md');
    await writeFile(notes, 'mine');
    const settings = path.join(other, 'content/binder.yaml');
    await rm(settings);
    const resumed = await swatchleaf(['init', ...name], {cwd: other});
    expect(resumed.code).toBe(0);
    const [made = '', left = ''] = resumed.out.split('Left as it was');
    expect(made.trim()).toBe(`Made:\n  ${path.join('content', 'binder.yaml')}`);
    for (const file of files.filter((each) => each !== 'content/binder.yaml'))
      expect(left).toContain(path.normalize(file));
    expect(await readFile(notes, 'utf8')).toBe('mine');
    expect(await readFile(mine, 'utf8')).toBe('- {id: mine, type: book}\n');
  });

  test('a link is not followed, even one that leads nowhere', async () => {
    const folder = await emptyFolder();
    const outside = await emptyFolder();
    await mkdir(path.join(folder, 'content'));
    await symlink(path.join(outside, 'nowhere'), path.join(folder, 'content/library.yaml'));
    const {code, out} = await swatchleaf(['init', ...name], {cwd: folder});
    expect(code).toBe(0);
    expect(out.split('Left as it was')[1]).toContain('library.yaml');
    expect(await filesIn(outside)).toEqual([]);
  });

  test('a content folder of a binder, and a file, are refused', async () => {
    const folder = await emptyFolder();
    await swatchleaf(['init', ...name], {cwd: folder});
    const before = await filesIn(folder);
    for (const place of ['content', 'content/binder.yaml']) {
      const {code, out} = await swatchleaf(['init', place], {cwd: folder});
      expect({code, out}).toEqual({code: 2, out: ''});
    }
    expect(await filesIn(folder)).toEqual(before);
  });
});

describe('the worked example', () => {
  test('is copied byte for byte', async () => {
    const folder = await emptyFolder();
    const {code, out} = await swatchleaf(['init', 'example', '--example'], {cwd: folder});
    expect(code).toBe(0);
    const own = (await filesIn(path.join(root, 'content'))).filter((file) => !/(^|\/)\./.test(file));
    expect(await filesIn(path.join(folder, 'example/content'))).toEqual(own);
    for (const file of own) {
      const [copy, original] = await Promise.all([
        readFile(path.join(folder, 'example/content', file)),
        readFile(path.join(root, 'content', file)),
      ]);
      expect(copy.equals(original), file).toBe(true);
    }
    expect(out).toContain(`${own.length} files`);
  });

  test('brings its own settings', async () => {
    const folder = await emptyFolder();
    const {code, err} = await swatchleaf(['init', '--example', '--paper', 'Letter'], {cwd: folder});
    expect(code).toBe(2);
    expect(err).toMatch(/the worked example has a `paper` of its own/);
    expect(await filesIn(folder)).toEqual([]);
  });
});

test.each([
  ['--paper', 'A5', 'A4, Letter'],
  ['--rings', '5', '2, 3, 4'],
  ['--units', 'ell', 'metric, inch'],
  ['--style', 'footnote', 'author-date, note, numeric'],
])('%s %s is refused with what can be', async (option, value, choices) => {
  const folder = await emptyFolder();
  const {code, err} = await swatchleaf(['init', option, value], {cwd: folder});
  expect(code).toBe(2);
  expect(err).toContain(choices);
  expect(await filesIn(folder)).toEqual([]);
});
