import {execFileSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {emptyFolder, filesIn, picture, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatch = readFileSync(path.join(root, 'tests/rules/base/content/swatches/s-01.md'), 'utf8');
const syllabus = readFileSync(path.join(root, 'tests/rules/base/content/syllabus.yaml'), 'utf8');

describe('check', () => {
  test('a sound binder: nothing found, exit 0, nothing written', async () => {
    const folder = await smallBinder();
    const before = await filesIn(folder);
    const {code, out, err} = await swatchleaf(['check'], {cwd: folder});
    expect({code, out, err}).toEqual({code: 0, out: 'nothing found\n', err: ''});
    expect(await filesIn(folder)).toEqual(before);
  });

  test('the folder may be named, also as its content folder', async () => {
    const folder = await smallBinder();
    expect((await swatchleaf(['check', folder])).code).toBe(0);
    expect((await swatchleaf(['check', path.join(folder, 'content')])).code).toBe(0);
  });

  test('an error: exit 1, with place, line and remedy', async () => {
    const folder = await smallBinder({
      'content/swatches/s-01.md': swatch.replace('needles: 4.5 mm', 'needles: 4.6 mm'),
    });
    const {code, out} = await swatchleaf(['check', folder]);
    expect(code).toBe(1);
    expect(out).toMatch(/^content\/swatches\/s-01\.md:7:10 error unknown-needle-size\n/);
    expect(out).toContain('    7 | needles: 4.6 mm\n      |          ^^^^^^\n');
    expect(out).toMatch(/\n {2}→ .+\n\n1 error\n$/);
  });

  test('all mistakes of all files appear in one run, sorted, the same in text and JSON', async () => {
    const folder = await smallBinder({
      'content/swatches/s-01.md': swatch
        .replace('needles: 4.5 mm', 'needels: 4.5 mm')
        .replace('19.5 over 10 cm', 'twenty over 10 cm')
        .replace('[@ashdown2011, p. 57]', '[@ashdown2012, p. 57]'),
      'content/reviews/b-01.md': '---\nrequirement: B-1\n---\n<b>Good.</b>\n',
    });
    const text = await swatchleaf(['check', folder]);
    const json = await swatchleaf(['check', folder, '--format', 'json']);
    const {schemaVersion, findings} = JSON.parse(json.out);
    expect(schemaVersion).toBe(1);
    const fromText = [...text.out.matchAll(/^(content\S+):(\d+):(\d+) \w+ ([a-z-]+)$/gm)].map((match) =>
      match.slice(1).join(' '),
    );
    const fromJson = findings.map((finding: Record<string, unknown>) =>
      [finding.file, finding.line, finding.column, finding.rule].join(' '),
    );
    expect(fromText).toEqual(fromJson);
    const rules = findings.map((finding: {rule: string}) => finding.rule);
    expect(rules).toEqual(
      expect.arrayContaining([
        'unknown-field',
        'field-shape',
        'unknown-source',
        'raw-html',
        'item-without-requirement',
      ]),
    );
    const order = (finding: {file: string; line: number; column: number}) =>
      `${finding.file}:${String(finding.line).padStart(6)}:${String(finding.column).padStart(6)}`;
    expect(findings.map(order)).toEqual(findings.map(order).toSorted());
  });

  test('SARIF: one log of version 2.1.0 with the same finding', async () => {
    const folder = await smallBinder({
      'content/swatches/s-01.md': swatch.replace('needles: 4.5 mm', 'needles: 4.6 mm'),
    });
    const {code, out} = await swatchleaf(['check', folder, '--format', 'sarif']);
    expect(code).toBe(1);
    const log = JSON.parse(out);
    expect(log.version).toBe('2.1.0');
    expect(log.runs[0].results).toHaveLength(1);
    expect(log.runs[0].results[0].ruleId).toBe('unknown-needle-size');
  });

  test('CRLF, a byte order mark, umlauts, blanks and a hash in file names change nothing', async () => {
    const dressed = `\uFEFF${swatch.replaceAll('\n', '\r\n')}`;
    const folder = await smallBinder({
      'content/swatches/s-01.md': null,
      'content/swatches/Grüße #1 – glatt rechts.md': dressed.replace('4.5 mm', '4.6 mm'),
    });
    const {out} = await swatchleaf(['check', folder]);
    expect(out).toMatch(/^content\/swatches\/Grüße #1 – glatt rechts\.md:7:10 error unknown-needle-size\n/);
    expect(out).toContain('1 error\n');
  });
});

describe('bad input gives a finding with a place and what to do, and a sound exit code', () => {
  test.each<[string, Readonly<Record<string, string | Uint8Array | null>>, number, RegExp]>([
    [
      'broken YAML',
      {'content/swatches/s-01.md': swatch.replace('needles: 4.5 mm', 'needles: [4.5 mm')},
      1,
      /s-01\.md:\d+:\d+ error yaml-syntax/,
    ],
    [
      'front matter in JavaScript',
      {'content/swatches/s-01.md': swatch.replace('---', '---js')},
      1,
      /s-01\.md:1:\d+ error front-matter/,
    ],
    [
      'an alias bomb',
      {'content/swatches/s-01.md': swatch.replace('blocking:', 'started: &a [x]\nblocking: [*a, *a]\n#')},
      1,
      /error yaml-syntax/,
    ],
    [
      'a photo that is not there',
      {'content/photos/s-01-front.jpg': null},
      1,
      /s-01\.md:\d+:\d+ error missing-photo/,
    ],
    ['an empty photo', {'content/photos/s-01-front.jpg': ''}, 1, /error unreadable-photo/],
    [
      'a syllabus with a kind that does not exist',
      {'content/syllabus.yaml': syllabus.replace('kind: question', 'kind: quesiton')},
      1,
      /syllabus\.yaml:\d+:\d+ error/,
    ],
    ['two files with one id', {'content/swatches/again.md': swatch}, 1, /error duplicate-item/],
    [
      'a broken binder file',
      {'content/binder.yaml': 'candidate: [\n'},
      2,
      /binder\.yaml:\d+:\d+ error yaml-syntax/,
    ],
    ['no syllabus', {'content/syllabus.yaml': null}, 2, /syllabus\.yaml:1:1 error missing-file/],
  ])('%s', async (_, files, code, finding) => {
    const folder = await smallBinder(files);
    const ran = await swatchleaf(['check', folder]);
    expect(ran.out).toMatch(finding);
    expect(ran.out).toMatch(/→ \S/);
    expect(ran.code).toBe(code);
  });

  test('a photo of 40 megapixels is no trouble', async () => {
    const folder = await smallBinder({'content/photos/s-01-front.jpg': await picture(6400)});
    expect((await swatchleaf(['check', folder])).out).toBe('nothing found\n');
  });

  test.each([
    ['an empty folder', [], /^swatchleaf: .*has no `content` folder.*\n$/],
    ['a folder that is not there', ['nowhere'], /^swatchleaf: there is no folder `nowhere`\n$/],
  ])('%s: one line, exit 2', async (_, more, message) => {
    const ran = await swatchleaf(['check', ...more], {cwd: await emptyFolder()});
    expect(ran).toEqual({code: 2, out: '', err: expect.stringMatching(message)});
  });
});

describe('the command line', () => {
  test('help and version go to standard output with exit 0; every command has examples', async () => {
    const {version} = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
    expect(await swatchleaf(['--version'])).toEqual({code: 0, out: `${version}\n`, err: ''});
    const help = await swatchleaf(['--help']);
    expect(help.code).toBe(0);
    const commands = [...help.out.matchAll(/^ {2}([a-z]+) \[/gm)].map((match) => match[1] ?? '');
    expect(commands).toEqual(expect.arrayContaining(['check', 'build', 'reprint', 'explain']));
    for (const command of commands.filter((name) => name !== 'help')) {
      expect((await swatchleaf(['help', command])).out).toContain('Examples:\n');
    }
  });

  test.each([
    ['a command that is nearly right', ['chekc'], /Did you mean check\?/],
    ['an option that is nearly right', ['check', '--fromat', 'json'], /Did you mean --format\?/],
    ['a format there is not', ['check', '--format', 'xml'], /text, json, sarif/],
    ['two folders for one binder', ['reprint', 'one', 'two'], /cannot both be the binder folder/],
    ['a rule there is not', ['explain', 'too-many-word'], /did you mean `too-many-words`\?/],
  ])('%s: exit 2', async (_, args, message) => {
    const {code, out, err} = await swatchleaf(args);
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(message);
  });

  test('explain prints law, reason and what can be set; alone, every rule', async () => {
    const one = await swatchleaf(['explain', 'uneven-edges']);
    expect(one.out).toMatch(/^uneven-edges \(\w+\)\n/);
    expect(one.out).toContain('Why:');
    expect(one.out).toContain('severity:');
    const list = await swatchleaf(['explain']);
    const rules = execFileSync(
      'git',
      ['ls-files', '--cached', '--others', '--exclude-standard', 'src/rules/*.ts'],
      {cwd: root, encoding: 'utf8'},
    );
    for (const file of rules.split('\n').filter((name) => /^src\/rules\/[a-z-]+\.ts$/.test(name))) {
      const id = path.basename(file, '.ts');
      if (!['index', 'define-rule', 'run-rules'].includes(id))
        expect(list.out).toMatch(new RegExp(`^${id} `, 'm'));
    }
  });
});
