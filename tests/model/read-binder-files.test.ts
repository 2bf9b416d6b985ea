import {describe, expect, test} from 'vitest';
import {readingRules} from '../../src/model/reading-rules.ts';
import {savedAs} from '../support/text-at.ts';
import {readFiles, settings, syllabus} from './read-files.ts';

const swatch = '---\nrequirement: S-01\n---\nWorked as told [@a, p. 2].\n';

describe('the binder', () => {
  const {binder, findings} = readFiles({
    'content/swatches/b ribs #1.md': '---\nrequirement: S-02\ntitle: Own title\n---\n',
    'content/questions/q.md': '---\nrequirement: Q-01\n---\n',
    'content/swatches/a.md': swatch,
    'content/swatches/z second.md': swatch,
    'content/reports/unknown.md': '---\nrequirement: R-09\n---\n',
    'content/assessments/round-1.yaml': 'round: 1\nreceived: 2026-12-01\nresults: {}\n',
    'content/assessments/round-0.yaml': 'round: 0\nreceived: 2026-09-14\nresults: {S-01: {result: passed}}\n',
    'content/library.yaml': '- {id: a, type: book, title: A}\n',
    'content/notes.yaml': 'not: read',
  });

  test('is read without findings', () => {
    expect(findings).toEqual([]);
  });

  test('has its items in the order of the syllabus, then the others by file name', () => {
    expect(binder?.items.map(({id, file, kind}) => [id, file.split('/').at(-1), kind])).toEqual([
      ['S-01', 'a.md', 'swatch'],
      ['S-02', 'b ribs #1.md', 'swatch'],
      ['Q-01', 'q.md', 'question'],
      ['R-09', 'unknown.md', 'report'],
      ['S-01', 'z second.md', 'swatch'],
    ]);
  });

  test('binds items to requirements', () => {
    expect(binder?.items.map(({title, requirement}) => [title, requirement?.title ?? null])).toEqual([
      ['Garter stitch', 'Garter stitch'],
      ['Own title', 'Ribs'],
      ['Why block?', 'Why block?'],
      ['R-09', null],
      ['Garter stitch', 'Garter stitch'],
    ]);
  });

  test('numbers its sections', () => {
    expect(binder?.syllabus.sections.map(({number, title, tab}) => [number, title, tab])).toEqual([
      [1, 'Swatches', 'Swatches'],
      [2, 'Questions', 'Answers'],
    ]);
  });

  test('has answers by round, and today', () => {
    expect(binder?.assessments.map(({round}) => round)).toEqual([0, 1]);
    expect(binder?.today).toBe('2026-10-01');
  });

  test('has settings with their defaults', () => {
    expect(binder?.settings).toMatchObject({
      paper: 'A4',
      rings: 2,
      sides: 'single',
      units: 'metric',
      language: 'en-GB',
    });
  });
});

describe('the kind of an item', () => {
  test.each([
    ['from the syllabus', 'content/reports/a.md', 'requirement: S-01', 'swatch'],
    ['from the field', 'content/swatches/a.md', 'requirement: X-01\nkind: letter', 'letter'],
    ['from the folder', 'content/projects/big/a.md', 'requirement: X-01', 'project'],
  ])('comes %s', (_, file, fields, kind) => {
    const {binder, findings} = readFiles({[file]: `---\n${fields}\n---\n`});
    expect(binder?.items.map((item) => item.kind)).toEqual([kind]);
    expect(findings).toEqual([]);
  });

  test('that is not known is a finding', () => {
    const {binder, report} = readFiles({'content/a.md': '---\nrequirement: X-01\n---\n'});
    expect(report).toEqual(['unknown-kind: it is not known what kind of item this is ← X-01']);
    expect(binder?.items).toEqual([]);
  });

  test('that differs from the syllabus is a finding; the syllabus counts', () => {
    const {binder, report} = readFiles({'content/a.md': '---\nrequirement: S-01\nkind: report\n---\n'});
    expect(report).toEqual([
      'unknown-kind: `kind` is `report`, and the syllabus says that `S-01` is a swatch ← report',
    ]);
    expect(binder?.items[0]?.kind).toBe('swatch');
  });
});

describe('limits', () => {
  test("are those of the kind under the requirement's own", () => {
    const text = `${syllabus}defaults:
  swatch: {words: {from: 100, to: 200}, fields: [yarn.name], references: {at-least: 2, books: 1}, pattern: required}
`.replace('title: Ribs', 'title: Ribs, limits: {words: {to: 50}, fields: [needles], photos: {at-least: 1}}');
    const {binder, findings} = readFiles({'content/syllabus.yaml': text});
    expect(findings).toEqual([]);
    expect(binder?.syllabus.sections[0]?.requirements.map(({limits}) => limits)).toEqual([
      {
        words: {from: 100, to: 200},
        fields: ['yarn.name'],
        references: {'at-least': 2, books: 1},
        pattern: 'required',
      },
      {
        words: {from: 100, to: 50},
        fields: ['needles'],
        references: {'at-least': 2, books: 1},
        pattern: 'required',
        photos: {'at-least': 1},
      },
    ]);
    expect(binder?.syllabus.sections[1]?.requirements[0]?.limits).toEqual({});
  });
});

describe('severities and tolerances', () => {
  test('of the binder file stand over those of the syllabus', () => {
    const {binder, findings} = readFiles({
      'content/syllabus.yaml': `${syllabus}rules: {raw-html: warning, gauge-spread: {severity: info, percent: 4}}\n`,
      'content/binder.yaml': `${settings}rules: {raw-html: off}\n`,
    });
    expect(findings).toEqual([]);
    expect(binder?.ruleSettings).toEqual({'raw-html': 'off', 'gauge-spread': {severity: 'info', percent: 4}});
  });
});

describe.each(savedAs)('mistakes, saved with %s', (_, save) => {
  test.each<[string, Record<string, string | null>, readonly string[]]>([
    [
      'no binder file',
      {'content/binder.yaml': null},
      ['missing-file: there is no file `content/binder.yaml` ← '],
    ],
    [
      'a syllabus that is not one',
      {'content/syllabus.yaml': 'title: [x'},
      ['yaml-syntax: this line is not indented like its neighbours, or a bracket above it is not closed ← '],
    ],
    [
      'a kind that does not exist',
      {'content/syllabus.yaml': syllabus.replace('kind: question', 'kind: sock')},
      ['field-shape: `kind` is `sock`, which is not one of the words that can stand here ← sock'],
    ],
    [
      'two requirements with one id',
      {'content/syllabus.yaml': syllabus.replace('S-02', 'S-01')},
      ['duplicate-requirement: `S-01` stands twice in the syllabus; the first one is used ← S-01'],
    ],
    [
      'a question tied to nothing',
      {'content/syllabus.yaml': syllabus.replace('[S-01]', '[S-01, S-1]')},
      ['unknown-requirement: the syllabus has no requirement `S-1` ← S-1'],
    ],
    [
      'an answer about nothing',
      {'content/assessments/a.yaml': 'round: 0\nreceived: 2026-09-14\nresults:\n  S-12: {result: passed}\n'},
      ['unknown-requirement: the syllabus has no requirement `S-12` ← S-12'],
    ],
    [
      'a required field that no item can have',
      {
        'content/syllabus.yaml': `${syllabus}defaults: {swatch: {fields: [yarn.nme, measured.size.top, techniques.cite, colour]}}\n`,
      },
      [
        'unknown-field: `nme` is not a field of a swatch ← yarn.nme',
        'unknown-field: `colour` is not a field of a swatch ← colour',
      ],
    ],
    [
      'a source twice, and one that is none',
      {
        'content/library.yaml':
          'references:\n  - {id: a, type: book}\n  - {id: a, type: book}\n  - {id: b, type: bok}\n  - {type: book}\n',
      },
      [
        'duplicate-source: the key `a` stands twice in the library; the first one is used ← a',
        'field-shape: `type` is `bok`, which is not one of the words that can stand here ← bok',
        'missing-key: `id` is missing ← type',
      ],
    ],
    [
      'a library that is no list',
      {'content/library.yaml': 'title: x\n'},
      ['field-shape: the library is not a list of sources ← '],
    ],
    [
      'an item without front matter',
      {'content/swatches/a.md': 'Text only'},
      ['front-matter: the file does not begin with a line of three hyphens ← Text only'],
    ],
    [
      'an item without a requirement',
      {'content/swatches/a.md': '---\ntitle: x\n---\n'},
      ['missing-key: `requirement` is missing ← '],
    ],
    [
      'a citation that cannot be read',
      {
        'content/swatches/a.md':
          '---\nrequirement: S-01\ntechniques:\n  - {name: ssk, cite: "@a @b"}\n---\n[@c, p.]\n',
      },
      [
        'citation-form: `p.` has no number after it ← p.',
        'citation-form: A second source, `@b`, stands in the citation of `a` ← @b',
      ],
    ],
  ])('%s', (_, files, report) => {
    expect(readFiles(files, save).report.map((line) => line.replace(': a second', ': A second'))).toEqual(
      report,
    );
  });
});

test('all mistakes of all files appear in one run, also without a syllabus', () => {
  const {binder, report} = readFiles({
    'content/binder.yaml': 'candidate: {nme: x}\ndate: 2026-02-30\n',
    'content/syllabus.yaml': null,
    'content/library.yaml': '- {id: a, type: bok}\n',
    'content/swatches/a.md': '---\nrequirement: S-01\nstatus: finishd\n---\n',
    'content/swatches/b.md': '---\nrequirement: S-02\nneedles: 4\n---\n[x](y.md)\n',
  });
  expect(binder).toBeNull();
  const ids = [
    'dead-link',
    'field-shape',
    'field-shape',
    'field-shape',
    'field-shape',
    'missing-file',
    'missing-key',
  ];
  expect(report.map((line) => line.split(':')[0]).sort()).toEqual([...ids, 'unknown-field']);
});

test('a file of another name is recognised', () => {
  const {findings} = readFiles({'content/binder.yaml': null, 'content/binder.yml': settings});
  expect(findings[0]?.hint).toBe('Rename `content/binder.yml` to `content/binder.yaml`.');
});

test('every rule of reading has its own id, and a law without a full stop', () => {
  expect(new Set(readingRules.map(({id}) => id)).size).toBe(readingRules.length);
  for (const {summary} of readingRules) expect(summary).toMatch(/[^.]$/);
});
