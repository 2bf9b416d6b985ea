import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {validateFields} from '../../src/model/fields/validate-fields.ts';
import {binderSettingsSchema} from '../../src/model/schema/binder-settings.ts';
import {fieldSchemas} from '../../src/model/schema/item-fields.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';
import {textAt} from '../support/text-at.ts';

function validate(text: string) {
  const file = `requirement: S-01\n${text}`;
  const {value, places: written} = readYaml(file);
  const {fields, places, faults} = validateFields(fieldSchemas.swatch, {value, places: written, at: []});
  return {
    fields,
    placed: (path: readonly (string | number)[]) => textAt(file, places.value(path)),
    report: faults.map(({rule, message, place}) => `${rule}: ${message} ← ${textAt(file, place)}`),
    hints: faults.map(({hint}) => hint),
    faults,
  };
}

describe('one mistake is one fault, at its place', () => {
  test.each([
    [
      'titel: x',
      'unknown-field: `titel` is not a field here ← titel',
      'Write `title`, or take the field out.',
    ],
    [
      'yarn:\n  name: F\n  colr: x',
      'unknown-field: `colr` is not a field of `yarn` ← colr',
      'Take it out, or use one of `name`, `fibre`, `weight`, `colour`, `dye-lot` and `put-up`.',
    ],
    [
      'measured:\n  - when: before blocking\n    size: {top: 10 cm, botom: 10 cm}',
      'unknown-field: `botom` is not a field of `size` ← botom',
      'Write `bottom`, or take the field out.',
    ],
    [
      'status: finishd',
      'field-shape: `status` is `finishd`, which is not one of the words that can stand here ← finishd',
      'Write `finished`.',
    ],
    [
      'status: away',
      'field-shape: `status` is `away`, which is not one of the words that can stand here ← away',
      'Write one of `planned`, `in work`, `finished`, `sent`, `passed` or `rework`.',
    ],
    [
      'yarn: {weight: 9}',
      'field-shape: `weight` is `9`, and the most is `7` ← 9',
      "Write the trade's yarn weight number, 0 to 7.",
    ],
    [
      'yarn: {weight: 4.5}',
      'field-shape: `weight` is `4.5`, which is not a whole number ← 4.5',
      "Write the trade's yarn weight number, 0 to 7.",
    ],
    [
      'yarn: {weight: four}',
      'field-shape: `weight` is `four`, which is not a number ← four',
      "Write the trade's yarn weight number, 0 to 7.",
    ],
    [
      'yarn: {colour: 12}',
      'field-shape: `colour` is the bare number `12` ← 12',
      'Put it between quotes: `"12"`.',
    ],
    [
      'needles: 4',
      'field-shape: `needles` is the bare number `4` ← 4',
      'Write needle sizes, such as 4.5 mm, US 7 or UK 7.',
    ],
    [
      'started: 12 March',
      'field-shape: `started` is `12 March`, which is not a date, year-month-day ← 12 March',
      'A date is written year-month-day, such as 2026-03-14.',
    ],
    [
      'started: 2026-02-29',
      'field-shape: `started` is `2026-02-29`, which cannot be ← 2026-02-29',
      'Check the month and the day: there is no such date.',
    ],
    [
      'techniques: ssk',
      'field-shape: `techniques` is `ssk`, which is not a list ← ssk',
      'Write a list: entries between `[` and `]` with commas, or each on a line of its own after a hyphen and a space.',
    ],
    ['techniques:\n  - {cite: "@a"}', 'missing-key: `name` is missing ← cite', 'Add `name:` and its value.'],
    [
      'techniques:\n  - {nam: ssk}',
      'unknown-field: `nam` is not a field of `techniques` ← nam',
      'Write `name`, or take the field out.',
    ],
    [
      'photos: [{fil: a.jpg}]',
      'unknown-field: `fil` is not a field of `photos` ← fil',
      'Write `file`, or take the field out.',
    ],
    ['title: [a, b]', 'field-shape: `title` is a list, which is not text ← title', 'Write text.'],
    [
      'yarn: {name: {a: b}}',
      'field-shape: `name` is a group of fields, which is not text ← name',
      'Write text.',
    ],
  ])('%s', (text, report, hint) => {
    const result = validate(text);
    expect(result.report).toEqual([report]);
    expect(result.hints).toEqual([hint]);
    expect(result.fields?.requirement).toBe('S-01');
  });

  test('within a quantity, the part that is wrong', () => {
    const {faults, report} = validate(
      'measured:\n  - {when: before blocking, stitches: [20 over 10 cm, 20 over 10 parsecs]}',
    );
    expect(faults.map(({rule}) => rule)).toEqual(['field-shape']);
    expect(report[0]).toMatch(/← parsecs$/);
  });
});

describe('the good part is kept', () => {
  test('beside faulty fields and entries, each at its place', () => {
    const {fields, placed, report} = validate(
      [
        'status: finishd',
        'titel: Ribs',
        'colour: x',
        'techniques:',
        '  - {cite: "@a, p. 1"}',
        '  - {name: ssk, cite: ["@b, p. 2", {c: d}, "@e, p. 3"]}',
        '  - {nam: k2tog, note: 5}',
        'measured:',
        '  - {when: now}',
        '  - {when: after blocking, stitches: [20 over 10 cm, twenty, 21 over 10 cm]}',
      ].join('\n'),
    );
    // A group without `source` that holds an unknown field is two of them.
    expect(report).toHaveLength(10);
    expect(fields).toMatchObject({status: 'finished', title: 'Ribs'});
    expect(fields?.techniques).toEqual([
      {name: 'ssk', cite: [{source: '@b, p. 2'}, {source: '@e, p. 3'}]},
      {name: 'k2tog'},
    ]);
    expect(fields?.measured.map(({when, stitches}) => [when, stitches.map(({text}) => text)])).toEqual([
      ['after blocking', ['20 over 10 cm', '21 over 10 cm']],
    ]);
    expect(placed(['title'])).toBe('Ribs');
    expect(placed(['techniques', 0, 'cite', 1])).toBe('"@e, p. 3"');
    expect(placed(['techniques', 1, 'name'])).toBe('k2tog');
    expect(placed(['measured', 0, 'stitches', 1])).toBe('21 over 10 cm');
  });

  test('a field without a value is not filled, and no fault', () => {
    const {fields, report, placed} = validate('title:\nyarn: {name: ~}\nphotos:');
    expect(report).toEqual([]);
    expect(fields).toMatchObject({yarn: [{}], photos: []});
    expect(fields && 'title' in fields).toBe(false);
    expect(placed(['title'])).toBe('title');
  });

  test('what a stub left open is not filled, and no fault', () => {
    const {fields, report} = validate(
      'started: …\nmeasured: [{when: before blocking, stitches: [...]}]\ntitle: …',
    );
    expect(report).toEqual([]);
    expect(fields?.started).toBeUndefined();
    expect(fields?.title).toBe('…');
  });

  test('a known name that is taken is not written over', () => {
    const {fields} = validate('title: Ribs\ntitel: Cables');
    expect(fields?.title).toBe('Ribs');
  });

  test('without what everything depends on there is nothing', () => {
    const {value, places} = readYaml('date: 2026-09-28');
    const {fields, faults} = validateFields(binderSettingsSchema, {value, places, at: []});
    expect(fields).toBeNull();
    expect(faults.map(({message}) => message)).toEqual([
      '`candidate` is missing',
      '`certificate` is missing',
    ]);
  });
});

test('whatever stands in the fields, checking never throws, and what is kept obeys the schema', () => {
  const names = fc.constantFrom(
    'requirement',
    'requirment',
    'title',
    'yarn',
    'techniques',
    'measured',
    'photos',
    'name',
    'cite',
    'when',
    'stitches',
    'size',
    'top',
    'x',
    '…',
  );
  const values = fc.letrec((tie) => ({
    value: fc.oneof(
      {maxDepth: 4},
      fc.constantFrom(
        'S-01',
        '20 over 10 cm',
        'before blocking',
        '10 cm',
        '…',
        '',
        '@a, p. 1',
        5,
        -1.5,
        true,
        null,
      ),
      fc.array(tie('value'), {maxLength: 3}),
      fc.dictionary(names, tie('value'), {maxKeys: 4}),
    ),
  })).value;
  fc.assert(
    fc.property(
      fc.constantFrom(...(['swatch', 'pattern', 'project', 'letter'] as const)),
      values,
      (kind, value) => {
        const {places} = readYaml(JSON.stringify(value));
        const schema = fieldSchemas[kind];
        const result = validateFields(schema, {value, places, at: []});
        if (result.fields === null) expect(result.faults).not.toEqual([]);
        else expect(result.fields).toHaveProperty('requirement');
      },
    ),
    {numRuns: 1000},
  );
});

test('digits keep their zeros as text and lose them as a number', () => {
  const binder = 'candidate: {name: A. Knitter, number: 0417}\ncertificate: {name: A}\ndate: 2026-03-14\n';
  const {value, places} = readYaml(binder);
  const {fields, faults} = validateFields(binderSettingsSchema, {value, places, at: []});
  expect(faults).toEqual([]);
  expect(fields?.candidate.number).toBe('0417');
  expect(validate('yarn: {weight: 04}').fields?.yarn?.map(({weight}) => weight)).toEqual([4]);
});
