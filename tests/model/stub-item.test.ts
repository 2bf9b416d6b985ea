import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {Binder, Requirement} from '../../src/model/binder.ts';
import {type Kind, kinds} from '../../src/model/kinds.ts';
import {fieldSchemas} from '../../src/model/schema/item-fields.ts';
import {stubItem, stubPath} from '../../src/model/stub-item.ts';
import {assemble, check, load} from '../../src/pipeline.ts';

const settings = {
  candidate: {name: 'Ann Weaver'},
  certificate: {name: 'Level One'},
  date: '2026-03-01',
};

/** Every limit there is. */
const limits = {
  references: {'at-least': 3, books: 2, locator: 'required', 'per-technique': 2},
  words: {from: 150, to: 1400},
  size: {width: '10 cm', height: '4 in'},
  photos: {'at-least': 2},
  gauge: {places: 3, spread: 5, when: ['before blocking', 'after blocking']},
  evenness: {sides: '5 mm', ends: '8 mm'},
  pattern: 'required',
  parts: ['needles', 'gauge', 'finishing'],
  'self-check': ['Are the ends woven in?'],
};

interface Written {
  readonly kind: Kind;
  readonly title?: string;
  readonly asks?: string;
  readonly limits?: object;
}

/** The binder of one requirement whose item is its stub, with the stub and all that is found. */
async function withStub(written: Written, change = (text: string) => text) {
  const syllabus = {
    title: 'Level One',
    sections: [{title: 'All', requirements: [{id: 'X-07', title: 'A title', ...written}]}],
  };
  // JSON is YAML too.
  const files = {
    'content/binder.yaml': JSON.stringify(settings),
    'content/syllabus.yaml': JSON.stringify(syllabus),
  };
  const read = async (more: Readonly<Record<string, string>>) => {
    const loaded = await load(createMemoryWorkspace({...files, ...more}), () => {
      throw new Error('there are no pictures');
    });
    const {binder} = assemble(loaded, '2026-03-01');
    if (binder === null) throw new Error('no binder');
    return binder;
  };
  const requirement = requirementOf(await read({}));
  const [path, text] = [stubPath(requirement), stubItem(requirement, 'metric')];
  const binder = await read({[path]: change(text)});
  return {path, text, binder, item: binder.items[0], findings: check(binder)};
}

function requirementOf(binder: Binder): Requirement {
  const requirement = binder.syllabus.sections[0]?.requirements[0];
  if (!requirement) throw new Error('no requirement');
  return requirement;
}

/** Names of the fields at the left margin of the front matter, in order. */
function fieldNames(text: string): readonly string[] {
  const [, frontMatter = ''] = text.split('---\n');
  return [...frontMatter.matchAll(/^([a-z-]+):/gm)].map(([, name]) => name ?? '');
}

describe.each(kinds)('the stub of a %s', (kind) => {
  const allFields = fieldNamesOf(kind);

  test.each([
    ['nothing is limited', {}],
    ['all is limited', limits],
    ['every field must be filled', {...limits, fields: allFields}],
  ])('is read without a finding but that it is planned, where %s', async (_, limited) => {
    const {item, findings} = await withStub({kind, limits: limited});
    expect(item).toMatchObject({id: 'X-07', kind, fields: {status: 'planned'}});
    expect(findings.map(({rule}) => rule)).toEqual(['unfinished-item']);
  });

  test('has a place for every field of its kind', async () => {
    const {text} = await withStub({kind, limits});
    // A kind is the syllabus's to say; rework and attempts come with what they are about.
    const later = ['kind', 'rework', 'attempts'];
    const fields = Object.keys(fieldSchemas[kind].shape).filter((name) => !later.includes(name));
    expect(fieldNames(text).toSorted()).toEqual(fields.toSorted());
  });

  test('holds nothing that a finished item may keep: each `…` is found', async () => {
    const {text, findings} = await withStub({kind, limits: {fields: allFields}}, (stub) =>
      stub.replace('status: planned', 'status: finished'),
    );
    const lines = text
      .split('\n')
      .flatMap((line, index) => (/(: |\[|- )…|^…$/.test(line) ? [index + 1] : []));
    expect(lines.length).toBeGreaterThan(0);
    const isFound = (line: number) => findings.some(({place}) => place.line <= line && line <= place.endLine);
    expect(lines.filter((line) => !isFound(line))).toEqual([]);
  });
});

/** What a syllabus can name under `fields`, entries of groups included. */
function fieldNamesOf(kind: Kind): readonly string[] {
  const names = Object.keys(fieldSchemas[kind].shape);
  const yarn = ['name', 'fibre', 'weight', 'colour', 'dye-lot', 'put-up'].map((name) => `yarn.${name}`);
  return [
    ...names.filter((name) => name !== 'kind' && name !== 'rework'),
    ...(names.includes('yarn') ? yarn : []),
  ];
}

test('what the work meets first stands first', async () => {
  const order = async (kind: Kind) => fieldNames((await withStub({kind, limits})).text);
  expect(await order('swatch')).toEqual(
    'requirement title status started yarn needles cast-on techniques bind-off finished blocking measured photos'.split(
      ' ',
    ),
  );
  expect((await order('review')).slice(0, 4)).toEqual(['requirement', 'title', 'status', 'reviews']);
});

test('the limits stand as notes, beside the fields that they are about', async () => {
  const {text} = await withStub({kind: 'swatch', asks: 'Three decreases.', limits});
  for (const note of [
    '# X-07: A title',
    '# Asked for: Three decreases.',
    '150 to 1,400 words of text',
    'at least 3 sources, 2 of them books and each cited with',
    'written rows and the parts needles, gauge and finishing',
    '# Look over: Are the ends woven in?',
    'techniques: # one entry for each; 2 sources for each technique',
    'stitches: […, …, …] # counted at 3 places and at most 5 % apart; such as 20 over 10 cm',
    'size: # at least 10 cm wide and at least 4 in high',
    'top: … # within 8 mm of the bottom',
    'left: … # within 5 mm of the right',
    'photos: # at least 2; pictures lie in content/photos',
  ]) {
    expect(text.replaceAll('\n#   ', ' ')).toContain(note);
  }
  expect(text).toMatch(/\n~~~rows\n~~~\n$/);
  const bare = await withStub({kind: 'swatch'});
  expect(bare.text).not.toMatch(/Limits|Asked|~~~|\[…/);
});

test('inches stand in the examples of a binder in inches', () => {
  const requirement: Requirement = {
    id: 'S-01',
    kind: 'swatch',
    title: 'Ribs',
    asks: null,
    tiedTo: [],
    limits: {gauge: {places: 1}},
    place: {line: 1, column: 1, endLine: 1, endColumn: 1},
    path: [],
  };
  const text = stubItem(requirement, 'inch');
  expect(text).toContain('such as 20 over 4 in');
  expect(text).not.toMatch(/\d (cm|mm|m)\b/);
});

test.each([
  ['Double decreases', 'x-07-double-decreases'],
  ['Größe & Naht: 1/2 „Öse“', 'x-07-grosse-naht-1-2-ose'],
  ["What's a k2tog?", 'x-07-whats-a-k2tog'],
  ['Ærø ½', 'x-07-aero-1-2'],
  ['編み物', 'x-07'],
  ['../../etc/passwd', 'x-07-etc-passwd'],
  [
    'A title of so many words that nobody would ever want the whole of it as the name of a file',
    'x-07-a-title-of-so-many-words-that-nobody-would-ever-want-the',
  ],
])('the stub of %j is called %s.md', async (title, name) => {
  expect((await withStub({kind: 'swatch', title})).path).toBe(`content/swatches/${name}.md`);
});

test('whatever a syllabus says, its stub is read as what it is, and its name is plain', async () => {
  const text = fc
    .string({
      unit: fc.oneof(
        fc.constantFrom('\n', '---\n', '#', ': ', "'", '"', '\u2028', '\u0085', '\r', 'é'),
        fc.string({unit: 'binary', maxLength: 1}),
      ),
    })
    .filter((value) => value.trim() !== '');
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...kinds), text, text, async (kind, title, asks) => {
      const {path, item, findings} = await withStub({kind, title, asks, limits: {'self-check': [asks]}});
      expect(path).toMatch(/^content\/[a-z]+\/x-07(-[a-z0-9]+)*\.md$/);
      expect(item?.id).toBe('X-07');
      expect(findings.map(({rule}) => rule)).toEqual(['unfinished-item']);
    }),
    {numRuns: 60},
  );
});
