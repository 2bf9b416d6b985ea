import fc from 'fast-check';
import {expect, test} from 'vitest';
import {readYaml} from '../../src/yaml/read-yaml.ts';

const pieces = fc.constantFrom(
  'a',
  'b: ',
  '- ',
  ': ',
  '\n',
  '\r\n',
  '  ',
  '[',
  ']',
  '{',
  '}',
  ', ',
  '"',
  "'",
  '&x',
  '*x',
  '!t ',
  '|',
  '>',
  '#',
  '---',
  '@',
  '\t',
  '1',
  '<<: ',
  '?',
  '%',
  '\uFEFF',
  '\u2028',
);
const yamlLike = fc.oneof(
  fc.string({unit: 'grapheme'}),
  fc.array(pieces, {maxLength: 60}).map((list) => list.join('')),
);

test('reading never throws, and every problem stands inside the text', () => {
  fc.assert(
    fc.property(yamlLike, (text) => {
      const {problems} = readYaml(text);
      const lines = text.replace(/^\uFEFF/, '').split('\n');
      for (const {place} of problems) {
        expect(place.line).toBeGreaterThan(0);
        expect(place.endLine).toBeLessThanOrEqual(lines.length);
        expect(place.endColumn).toBeLessThanOrEqual((lines[place.endLine - 1] ?? '').length + 1);
      }
    }),
    {numRuns: 500},
  );
});

test('what is written as JSON is read as it is', () => {
  const names = fc
    .string()
    .filter((name) => !['', '__proto__', 'constructor', 'prototype', '<<'].includes(name));
  const values = fc.letrec((tie) => ({
    value: fc.oneof(
      {maxDepth: 4},
      fc.string(),
      fc.integer(),
      fc.boolean(),
      fc.constant(null),
      tie('list'),
      tie('group'),
    ),
    list: fc.array(tie('value'), {maxLength: 4}),
    group: fc.dictionary(names, tie('value'), {maxKeys: 4}),
  })).value;
  fc.assert(
    fc.property(values, (value) => {
      const read = readYaml(JSON.stringify(value));
      expect(read.problems).toEqual([]);
      expect(JSON.stringify(read.value)).toBe(JSON.stringify(value));
    }),
  );
});

test('CRLF and LF give the same value and the same places', () => {
  fc.assert(
    fc.property(
      fc.array(
        pieces.filter((piece) => !piece.includes('\r')),
        {maxLength: 40},
      ),
      (list) => {
        const text = list.join('');
        const [unix, windows] = [readYaml(text), readYaml(text.replaceAll('\n', '\r\n'))];
        expect(JSON.stringify(windows.value)).toBe(JSON.stringify(unix.value));
        expect(windows.problems).toEqual(unix.problems);
      },
    ),
    {numRuns: 300},
  );
});
