import {existsSync, readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {expect, test} from 'vitest';
import {readingRules} from '../../src/model/reading-rules.ts';
import {rules} from '../../src/rules/index.ts';

const root = path.resolve(import.meta.dirname, '../..');
const rulesFolder = path.join(root, 'src/rules');
const casesFolder = path.join(root, 'tests/rules');

const notRules = ['define-rule.ts', 'index.ts', 'run-rules.ts'];
const ruleFiles = readdirSync(rulesFolder).filter((file) => file.endsWith('.ts') && !notRules.includes(file));
const ids = rules.map((rule) => rule.id);
const textOf = (id: string) => readFileSync(path.join(rulesFolder, `${id}.ts`), 'utf8');

test('every rule file is in the index under its own name, and only once', () => {
  expect([...ids].sort()).toEqual(ruleFiles.map((file) => file.replace(/\.ts$/, '')).sort());
});

test('no rule has the id of something that reading finds', () => {
  expect(readingRules.map((rule) => rule.id).filter((id) => ids.includes(id))).toEqual([]);
});

test('every line of the index says why the rule is there', () => {
  const index = readFileSync(path.join(rulesFolder, 'index.ts'), 'utf8');
  const entries = index.split('\n').filter((line) => /^ {2}\w+(\(.*\))?,/.test(line));
  expect(entries).toHaveLength(rules.length);
  expect(entries.filter((line) => !/, \/\/ [A-Z].*\.$/.test(line))).toEqual([]);
});

test.each(ids)('%s: the law, why and an example stand above it, and its summary is a sentence', (id) => {
  const comment = /\/\*\*([\s\S]*?)\*\/\s*export const (\w+)/.exec(textOf(id));
  expect(comment?.[1]).toMatch(/\n \* Why: /);
  expect(comment?.[1]).toMatch(/\n \* Example: /);
  expect(comment?.[2]?.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)).toBe(id);
  const rule = rules.find((candidate) => candidate.id === id);
  expect(rule?.summary).toMatch(/^[^A-Z].{20,}[^.]$/);
});

test.each(ids)('%s: one case passes, and one fails with a finding of this rule', (id) => {
  const cases = existsSync(path.join(casesFolder, id)) ? readdirSync(path.join(casesFolder, id)) : [];
  const reports = cases
    .filter((name) => !name.startsWith('passing'))
    .map((name) => readFileSync(path.join(casesFolder, id, name, 'expected/report.txt'), 'utf8'));
  expect(cases.filter((name) => name.startsWith('passing'))).not.toEqual([]);
  expect(reports.filter((report) => new RegExp(` (error|warning|info) ${id}\n`).test(report))).not.toEqual(
    [],
  );
});

test('no case belongs to a rule that does not exist', () => {
  const folders = readdirSync(casesFolder, {withFileTypes: true}).filter((entry) => entry.isDirectory());
  expect(folders.map((entry) => entry.name).filter((name) => name !== 'base' && !ids.includes(name))).toEqual(
    [],
  );
});

test('half of the rules take 80 lines or fewer, and none takes more than 120', () => {
  const lengths = ids.map((id) => textOf(id).split('\n').length).sort((a, b) => a - b);
  expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThanOrEqual(80);
  expect(lengths.at(-1)).toBeLessThanOrEqual(120);
});

const pureLayers = 'support knitting references diagnostics model rules tables markdown yaml layout'.split(
  ' ',
);

test.each(pureLayers)('%s knows neither the clock nor chance', (layer) => {
  const files = readdirSync(path.join(root, 'src', layer), {recursive: true, encoding: 'utf8'});
  const guilty = files
    .filter((file) => file.endsWith('.ts'))
    .filter((file) =>
      /Math\.random|\bnew Date\b|\bDate\.|performance\.|crypto/.test(
        readFileSync(path.join(root, 'src', layer, file), 'utf8'),
      ),
    );
  expect(guilty).toEqual([]);
});
