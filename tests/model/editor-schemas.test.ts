import path from 'node:path';
import {Ajv} from 'ajv';
import {Ajv2020} from 'ajv/dist/2020.js';
import {describe, expect, test} from 'vitest';
import {starterFiles} from '../../src/commands/starter-files.ts';
import {openDiskWorkspace} from '../../src/io/disk-workspace.ts';
import {type EditorSchema, editorSchemas} from '../../src/model/editor-schemas.ts';
import {contentKind} from '../../src/pipeline.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';

const root = path.resolve(import.meta.dirname, '../..');
const schemas = editorSchemas();
const workspace = await openDiskWorkspace(root);
const workedExample = await Promise.all(
  (await workspace.list('content'))
    .filter((file) => ['item', 'yaml'].includes(contentKind(file) ?? ''))
    .map(async (file) => ({file, text: (await workspace.readText(file)) ?? ''})),
);
const starter = [
  ...(await starterFiles(
    {name: 'Ann Weaver', paper: 'Letter', rings: '3', units: 'inch', style: 'note'},
    '2026-03-01',
  )),
].map(([file, text]) => ({file, text}));

function schemaOf(file: string): EditorSchema | undefined {
  return schemas.find(({files}) =>
    new RegExp(`^${files.replaceAll('.', '\\.').replaceAll('*', '[^/]+')}$`).test(file),
  );
}

/** What is checked: the whole of a YAML file, the fields at the top of a Markdown file. */
function checkedPart({file, text}: {file: string; text: string}): unknown {
  const yaml = file.endsWith('.md') ? (/^---\n([\s\S]*?)\n---\n/.exec(text)?.[1] ?? '') : text;
  return readYaml(yaml).value;
}

const ajv = new Ajv({allErrors: true, allowUnionTypes: true});
const validators = new Map(schemas.map(({name, schema}) => [name, ajv.compile(schema)]));

function faultsOf({name}: EditorSchema, value: unknown): string[] {
  const validate = validators.get(name);
  if (!validate) throw new Error(`no schema ${name}`);
  validate(value);
  return (validate.errors ?? []).map(({instancePath, message}) => `${instancePath} ${message}`);
}

describe.each(schemas)('the schema $name', ({schema, name}) => {
  test('is a JSON Schema of draft 07 and, word for word, of draft 2020-12', () => {
    expect(new Ajv().validateSchema(schema)).toBe(true);
    const {$schema, ...rest} = schema;
    expect($schema).toBe('http://json-schema.org/draft-07/schema#');
    expect(new Ajv2020().validateSchema(rest)).toBe(true);
    expect(() => new Ajv2020({strictTypes: false}).compile(rest)).not.toThrow();
    // These mean something else, or nothing, in one of the two.
    expect(JSON.stringify(schema)).not.toMatch(
      /"(definitions|\$defs|\$ref|dependencies|prefixItems|additionalItems)":/,
    );
  });

  test('says what a field is for', () => {
    expect(JSON.stringify(schema)).toContain('"description":');
    expect(schema.title).toMatch(/^content\//);
    expect(name).toMatch(/^[a-z-]+$/);
  });
});

describe.each([...workedExample, ...starter])('$file', (written) => {
  test('is accepted by the schema for it', () => {
    const schema = schemaOf(written.file);
    expect(schema).toBeDefined();
    if (schema) expect(faultsOf(schema, checkedPart(written))).toEqual([]);
  });

  test('is refused with a misspelt name', () => {
    const schema = schemaOf(written.file);
    const value = checkedPart(written);
    const [top] = Array.isArray(value) ? value : [value];
    if (!schema || typeof top !== 'object' || top === null) throw new Error('nothing to misspell');
    const [name = ''] = Object.keys(top);
    const misspelt = {...top, [`${name}s`]: 1};
    expect(faultsOf(schema, Array.isArray(value) ? [misspelt] : misspelt).join('\n')).toContain(
      'must NOT have additional properties',
    );
  });
});

test.each([
  ['binder', {candidate: {name: 'A'}, certificate: {name: 'B'}, date: '2026-03-01', paper: 'A5'}],
  ['binder', {candidate: {name: 'A'}, certificate: {}, date: '2026-03-01'}],
  [
    'syllabus',
    {title: 'A', sections: [{title: 'B', requirements: [{id: 's-1', kind: 'swatch', title: 'C'}]}]},
  ],
  ['swatch', {requirement: 'S-01', yarn: {weight: 9}}],
  ['swatch', {requirement: 'S-01', started: '1 March'}],
  ['swatch', {requirement: 'S-01', measured: [{when: 'while blocking'}]}],
  ['letter', {requirement: 'L-01', needles: '4.5 mm'}],
  ['library', [{id: 'a', type: 'books'}]],
  ['assessment', {round: 0, received: '2026-03-01', results: {'S-01': {result: 'fine'}}}],
])('the schema %s refuses %j', (name, value) => {
  const schema = schemas.find((each) => each.name === name);
  expect(schema && faultsOf(schema, value)).not.toEqual([]);
});

test.each([
  [
    'swatch',
    {requirement: 'S-01', title: null, started: null, yarn: {name: '…', weight: '…'}, measured: null},
  ],
  ['library', {references: [{id: 'a', type: 'book'}], 'suppress-bibliography': true}],
  ['print-ledger', {leaves: []}],
])('the schema %s accepts %j, which is not filled yet or written another way', (name, value) => {
  const schema = schemas.find((each) => each.name === name);
  expect(schema && faultsOf(schema, value)).toEqual([]);
});
