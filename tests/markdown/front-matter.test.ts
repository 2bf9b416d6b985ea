import {existsSync, mkdtempSync, readdirSync, readFileSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {afterAll, describe, expect, test} from 'vitest';
import {splitFrontMatter} from '../../src/markdown/front-matter.ts';
import {parseItem} from '../../src/markdown/parse-item.ts';
import {savedAs, textAt} from '../support/text-at.ts';

const file = 'content/swatches/a.md';

describe('splitting', () => {
  test.each([
    ['---\na: 1\n---\nBody', 'a: 1', '\nBody'],
    ['---\r\na: 1\r\nb: 2\r\n---\r\nBody', 'a: 1\r\nb: 2', '\r\nBody'],
    ['---  \na: 1\n---\t\nBody', 'a: 1', '\nBody'],
    ['---\n---\nBody', '', '\nBody'],
    ['---\na: 1\n---', 'a: 1', ''],
    ['---\n# none yet\n---\n\n---\nBody', '# none yet', '\n\n---\nBody'],
    ["---\na: 'x --- y'\n---\nBody\n---\nmore", "a: 'x --- y'", '\nBody\n---\nmore'],
  ])('%j', (text, yaml, body) => {
    const split = splitFrontMatter(text);
    expect(split.problem).toBeNull();
    expect(split.yaml).toBe(yaml);
    expect(text.slice(split.bodyStart)).toBe(body);
  });

  test.each([
    ['Body only', 'the file does not begin with a line of three hyphens', 'Body only', 'Body only'],
    ['\n---\na: 1\n---\n', 'the file does not begin with a line of three hyphens', '', '\n---\na: 1\n---\n'],
    [
      '----\na: 1\n----\n',
      'the file does not begin with a line of three hyphens',
      '----',
      '----\na: 1\n----\n',
    ],
    ['', 'the file does not begin with a line of three hyphens', '', ''],
    ['---\na: 1\n\nBody', 'the fields begin with three hyphens and never end', '---', 'a: 1\n\nBody'],
    [
      '---\na: 1\n--- x\nBody',
      'the fields begin with three hyphens and never end',
      '---',
      'a: 1\n--- x\nBody',
    ],
    [
      '---\na: 1\n---- x\nb: 2\n---\nBody',
      'a line among the fields begins with three hyphens and goes on',
      '---- x',
      '\nBody',
    ],
  ])('%j is reported, and nothing is swallowed', (text, message, actual, body) => {
    const split = splitFrontMatter(text);
    expect(split.problem?.message).toBe(message);
    expect(textAt(text, split.problem?.place ?? {line: 9, column: 1, endLine: 9, endColumn: 1})).toBe(actual);
    expect(text.slice(split.bodyStart)).toBe(body);
    expect(split.yaml).toBe('');
  });

  test('fields without end are not looked for through the whole of a long file', () => {
    const text = `---\na: 1\n${'Body.\n'.repeat(20_000)}`;
    expect(splitFrontMatter(text).problem?.message).toBe(
      'no second line of three hyphens follows within `64000` characters',
    );
  });

  test('more lines than any item needs are refused', () => {
    const {problem, yaml} = splitFrontMatter(`---\n${'\n'.repeat(3000)}---\n`);
    expect(problem?.message).toBe('the fields take more than `2000` lines');
    expect(yaml).toBe('');
  });
});

// gray-matter runs JavaScript in front matter unless every engine is replaced; these are the ways in that are known.
describe('front matter in another language', () => {
  const folder = mkdtempSync(join(tmpdir(), 'front-matter-'));
  afterAll(() => rmSync(folder, {recursive: true}));
  const marker = join(folder, 'ran');
  const code = `require('node:fs').writeFileSync(${JSON.stringify(marker)}, '')`;
  const languages = [
    'js',
    'javascript',
    ' js',
    'JS',
    'JavaScript',
    'json',
    'coffee',
    'cson',
    'toml',
    'yaml',
    ' yaml',
  ];

  describe.each(savedAs)('saved with %s', (_, save) => {
    test.each(languages)('`---%s` is refused on line 1 and never run', (language) => {
      const text = save(`---${language}\n{requirement: ${code}, title: (() => ${code})()}\n---\nBody.\n`);
      const {findings, yaml, body} = parseItem(file, text);
      expect(existsSync(marker)).toBe(false);
      expect(findings).toMatchObject([{rule: 'front-matter', place: {line: 1, column: 1}}]);
      expect(textAt(text, findings[0]?.place ?? {line: 9, column: 1, endLine: 9, endColumn: 1})).toBe(
        `---${language}`,
      );
      expect(yaml.value).toBeNull();
      expect(body.words).toBe(1);
    });
  });

  test('a second block in the text is text', () => {
    const {findings, body} = parseItem(file, `---\na: 1\n---\n---js\n{a: ${code}}\n---\n`);
    expect(existsSync(marker)).toBe(false);
    expect(findings).toEqual([]);
    expect(body.words).toBeGreaterThan(0);
  });

  test('gray-matter is called in one place, with its options, and never writes', () => {
    const sources = readdirSync('src', {recursive: true, encoding: 'utf8'})
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(join('src', name), 'utf8'));
    const calls = sources.flatMap((source) =>
      [...source.matchAll(/\bmatter(?:\.\w+)?\([^)]*\)/g)].map(([call]) => call),
    );
    expect(calls).toEqual(["matter(block, {language: 'yaml', engines: noEngines})"]);
  });
});
