import {cpSync, mkdtempSync, readFileSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {afterEach, beforeEach, expect, test} from 'vitest';
import {writeNewRule} from '../../src/dev/new-rule.ts';

const root = path.resolve(import.meta.dirname, '../..');
let copy = '';

beforeEach(() => {
  copy = mkdtempSync(path.join(tmpdir(), 'swatchleaf-new-rule-'));
  for (const part of ['src/rules/index.ts', 'tests/rules/base']) {
    cpSync(path.join(root, part), path.join(copy, part), {recursive: true});
  }
});

afterEach(() => rmSync(copy, {recursive: true, force: true}));

const textOf = (file: string) => readFileSync(path.join(copy, file), 'utf8');

test('a new rule gets its file, a passing and a failing case and its line in the index', () => {
  const before = textOf('src/rules/index.ts').split('\n');
  expect(writeNewRule(copy, 'loose-ends')).toEqual([
    'src/rules/loose-ends.ts',
    'src/rules/index.ts',
    'tests/rules/loose-ends/passing/content/questions/q-01.md',
    'tests/rules/loose-ends/failing/content/questions/q-01.md',
  ]);
  expect(textOf('src/rules/loose-ends.ts')).toContain(
    "export const looseEnds: Rule = {\n  id: 'loose-ends',",
  );
  const after = textOf('src/rules/index.ts').split('\n');
  expect(after.filter((line) => !before.includes(line))).toEqual([
    "import {looseEnds} from './loose-ends.ts';",
    '  looseEnds, // The reason, in one line.',
  ]);
  const imports = after.filter((line) => line.startsWith('import')).map((line) => line.split("'./")[1]);
  expect(imports).toEqual([...imports].sort());
  expect(textOf('tests/rules/loose-ends/failing/content/questions/q-01.md')).not.toBe(
    textOf('tests/rules/loose-ends/passing/content/questions/q-01.md'),
  );
});

test.each([
  ['gauge-spread', 'an existing rule'],
  ['yaml-syntax', 'what reading may find'],
])('`%s` is refused: %s has it', (id) => {
  const before = textOf('src/rules/index.ts');
  expect(() => writeNewRule(copy, id)).toThrow('is taken');
  expect(textOf('src/rules/index.ts')).toBe(before);
});

test('an id is refused a second time', () => {
  writeNewRule(copy, 'loose-ends');
  expect(() => writeNewRule(copy, 'loose-ends')).toThrow('is taken');
});

test.each(['Loose-Ends', 'loose', '../loose-ends', 'loose_ends', ''])('`%s` is no rule id', (id) => {
  expect(() => writeNewRule(copy, id)).toThrow('is not a rule id');
});
