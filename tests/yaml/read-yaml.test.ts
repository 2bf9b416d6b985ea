import {describe, expect, test} from 'vitest';
import {deepestYaml, largestYaml, readYaml} from '../../src/yaml/read-yaml.ts';
import {savedAs, textAt} from '../support/text-at.ts';

/** What is reported, as `message ← text at its place`. */
function report(text: string): readonly string[] {
  return readYaml(text).problems.map(({message, place}) => `${message} ← ${textAt(text, place)}`);
}

describe('values', () => {
  // YAML 1.2.2, chapter 10.3 (core schema), https://yaml.org/spec/1.2.2/#103-core-schema
  test.each([
    ['2026-03-14', '2026-03-14'],
    ['1:30', '1:30'],
    ['yes', 'yes'],
    ['no', 'no'],
    ['1_000', '1_000'],
    ['0o10', 8],
    ['1e3', 1000],
    ['20.5', 20.5],
    ['true', true],
    ['~', null],
    ['', null],
    ['"010"', '010'],
  ])('`%s` is read as the core schema says', (written, value) => {
    expect(readYaml(`a: ${written}`).value).toEqual({a: value});
  });

  // Here the core schema would make another text of what stands in the file: a candidate's number, a volume.
  test.each(['010', '00', '0417', '1.10', '4.0', '1.'])('`%s` keeps its digits', (written) => {
    expect(readYaml(`a: ${written}`).value).toEqual({a: written});
  });

  test('keys keep the form in which they are written', () => {
    expect(readYaml('01: a\ntrue: b').value).toEqual({'01': 'a', true: 'b'});
  });

  test('groups have no prototype', () => {
    expect(Object.getPrototypeOf(readYaml('a: 1').value)).toBeNull();
  });
});

describe('problems', () => {
  test.each([
    ['a: !!str 3', 'an exclamation mark gives this value a type of its own ← !!str'],
    ['a: !foo {b: 1}', 'an exclamation mark gives this value a type of its own ← !foo'],
    ['a: &x 1', '`&x` gives this value a name of its own ← &x'],
    ['a: *x', '`*x` points to another value ← *x'],
    ['<<: {a: 1}', '`<<` cannot be the name of a field ← <<'],
    ['__proto__: {a: 1}', '`__proto__` cannot be the name of a field ← __proto__'],
    ['b: {constructor: 1}', '`constructor` cannot be the name of a field ← constructor'],
    ['a: 1\nb: 2\na: 3', '`a` is written twice; the first one is used ← a'],
    ['? [a]\n: 1', 'a field has a list instead of a name ← [a]'],
    [': 1', 'a colon stands without a field name before it ← '],
    ['a: @key, p. 5', 'a value cannot begin with this character ← @key'],
    ['a: `x`', 'a value cannot begin with this character ← `x`'],
    ['a: b: c', 'two colons stand on one line, so it is unclear where the value begins ← b:'],
    ['a: "b\nc: d', 'a quotation mark is opened and not closed ← "'],
    ["x: y\na: 'b", "a quotation mark is opened and not closed ← '"],
    ['a: b\n\tc: d', 'a line is indented with a tab ← '],
    ['a: 1\n---\nb: 2', 'a line of three hyphens begins a second set of fields ← '],
    ['a: "\\q"', 'a backslash between double quotes begins a character code that does not exist ← \\q'],
    ['%TAG x\n---\na: 1', 'a line begins with `%` ← %TAG x'],
  ])('%j', (text, problem) => {
    expect(report(text)).toContain(problem);
  });

  test('what is refused is left out, the rest is kept', () => {
    expect(readYaml('a: 1\n__proto__: {polluted: 1}\nb: *a\nc: 3\na: 4').value).toEqual({
      a: 1,
      b: null,
      c: 3,
    });
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });

  test('all of them are reported, in the order of the file', () => {
    expect(report('a: *x\nb: !t 1\nb: 2')).toHaveLength(3);
    expect(readYaml('b: 1\nb: 2\na: *x').problems.map(({place}) => place.line)).toEqual([2, 3]);
  });

  test('a text without a field is empty, and no problem', () => {
    expect(readYaml('').value).toBeNull();
    expect(readYaml('# nothing yet').problems).toEqual([]);
  });
});

describe('places', () => {
  const text = [
    'title: Paired decreases',
    'yarn: {name: "Fellside", weight: 4}',
    'techniques:',
    '  - name: ssk',
    "    cite: ['@ashdown2011, p. 57']",
    'note: |',
    '  Folded text.',
    'colour:',
  ].join('\n');

  describe.each(savedAs)('saved with %s', (_, save) => {
    const file = save(text);
    const {places, problems} = readYaml(file);

    test.each([
      ['value', ['title'], 'Paired decreases'],
      ['key', ['title'], 'title'],
      ['value', ['yarn', 'name'], '"Fellside"'],
      ['value', ['yarn', 'weight'], '4'],
      ['key', ['yarn', 'weight'], 'weight'],
      ['value', ['techniques', 0, 'name'], 'ssk'],
      ['value', ['techniques', 0], "name: ssk\n    cite: ['@ashdown2011, p. 57']"],
      ['value', ['techniques', 0, 'cite', 0], "'@ashdown2011, p. 57'"],
      ['value', ['note'], '|\n  Folded text.'],
      // Nothing is written there: the nearest thing that is.
      ['value', ['colour'], 'colour'],
      ['value', ['yarn', 'fibre'], 'yarn'],
      ['key', ['yarn', 'fibre'], 'yarn'],
      ['value', ['techniques', 0, 'note', 'x'], 'name'],
      ['value', ['measured', 0, 'rows'], ''],
      // One value in the place of a list.
      ['value', ['title', 0], 'Paired decreases'],
      ['value', ['yarn', 0, 'weight'], '4'],
    ] as const)('%s of %j is %j', (what, path, expected) => {
      expect(problems).toEqual([]);
      expect(textAt(file, places[what](path))).toBe(expected);
    });

    test.each([
      [['title'], 7, 16, 'decreases'],
      [['yarn', 'name'], 4, 8, 'side'],
      [['techniques', 0, 'cite', 0], 1, 12, 'ashdown2011'],
      [['title'], 7, 99, 'decreases'],
      // Not a slice of the file.
      [['note'], 0, 3, '|\n  Folded text.'],
      [['yarn', 'fibre'], 0, 3, 'yarn'],
    ] as const)('within %j, %i to %i, stands %j', (path, start, end, expected) => {
      expect(textAt(file, places.within(path, start, end))).toBe(expected);
    });

    test('tells what is there', () => {
      expect(places.has(['techniques', 0, 'cite'])).toBe(true);
      expect(places.has(['techniques', 1])).toBe(false);
      expect(places.has(['colour'])).toBe(true);
    });
  });

  test('count from the line given', () => {
    expect(readYaml('a: 1\nb: *x', 2).problems[0]?.place).toEqual({
      line: 3,
      column: 4,
      endLine: 3,
      endColumn: 6,
    });
  });

  test('an escaped text is shown whole', () => {
    const file = 'a: "b\\u0041c"';
    expect(textAt(file, readYaml(file).places.within(['a'], 1, 2))).toBe('"b\\u0041c"');
  });
});

// The attacks of alias bombs, deep nesting and long inputs that brought other readers down: the stack, not only the time.
describe('hostile input', () => {
  const bomb = [
    'a: &a [x,x,x,x,x,x,x,x,x,x]',
    ...'bcdefghi'.split('').map((name, index) => {
      const before = 'abcdefghi'[index];
      return `${name}: &${name} [${`*${before},`.repeat(9)}*${before}]`;
    }),
  ].join('\n');

  test('an alias bomb stays as small as it is written', () => {
    const {value, problems} = readYaml(bomb);
    expect(JSON.stringify(value).length).toBeLessThan(1000);
    expect(problems.length).toBeGreaterThan(8);
  });

  test.each([
    ['open brackets', '['.repeat(20_000)],
    ['open braces', '{a: '.repeat(10_000)],
    ['nested maps', Array.from({length: 300}, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
    ['nested lists', '- '.repeat(20_000)],
    ['nested keys', '? '.repeat(20_000)],
    ['one level too deep', `${'['.repeat(deepestYaml + 1)}${']'.repeat(deepestYaml + 1)}`],
  ])('%s are a problem, not a crash', (_, text) => {
    expect(readYaml(text)).toMatchObject({
      value: null,
      problems: [
        {message: `lists and keys stand inside each other more than \`${deepestYaml}\` levels deep`},
      ],
    });
  });

  test('the deepest that is allowed is read', () => {
    expect(readYaml(`${'['.repeat(deepestYaml)}${']'.repeat(deepestYaml)}`).problems).toEqual([]);
  });

  test('a text too long is not parsed', () => {
    const {value, problems} = readYaml('a'.repeat(largestYaml + 1));
    expect(value).toBeNull();
    expect(problems.map(({message}) => message)).toEqual([
      `these fields are \`${largestYaml + 1}\` characters long; \`${largestYaml}\` are read`,
    ]);
  });

  test.each([
    ['anchors', '&a '.repeat(20_000)],
    ['tags', '- !a x\n'.repeat(20_000)],
    ['keys of one name', 'a: 1\n'.repeat(20_000)],
  ])('of thousands of faulty %s the first are reported', (_, text) => {
    const {problems} = readYaml(text);
    expect(problems).toHaveLength(200);
    expect(problems[0]?.place.line).toBeLessThan(3);
  });

  test('thousands of keys are read', () => {
    const text = Array.from({length: 6000}, (_, number) => `k${number}: 1`).join('\n');
    expect(Object.keys(readYaml(text).value ?? {})).toHaveLength(6000);
  });
});
