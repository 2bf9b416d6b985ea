import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {editorSchemas} from '../../src/model/editor-schemas.ts';
import {filesIn, smallBinder, swatchleaf} from '../support/run-cli.ts';

test('a schema for each sort of file in `build/schemas`, and how an editor is told of them', async () => {
  const folder = await smallBinder();
  const before = await filesIn(folder);
  const {code, out, err} = await swatchleaf(['schema', folder]);
  expect({code, err}).toEqual({code: 0, err: ''});
  const made = (await filesIn(folder)).filter((file) => !before.includes(file));
  expect(made).toEqual(
    editorSchemas()
      .map(({name}) => `build/schemas/${name}.schema.json`)
      .toSorted(),
  );
  for (const {name, schema} of editorSchemas()) {
    const text = await readFile(path.join(folder, `build/schemas/${name}.schema.json`), 'utf8');
    expect(JSON.parse(text)).toEqual(schema);
  }

  // The line for the top of a file leads from that file to its schema.
  const lines = [...out.matchAll(/^ {2}(content\/\S+) +# yaml-language-server: \$schema=(\S+)$/gm)];
  expect(lines).toHaveLength(editorSchemas().filter(({isFrontMatter}) => !isFrontMatter).length);
  for (const [, file = '', schema = ''] of lines) {
    expect(made).toContain(path.posix.join(path.posix.dirname(file), schema));
  }
  const setting = JSON.parse(/^\{[\s\S]*?^\}$/m.exec(out)?.[0] ?? '');
  for (const [schema, files] of Object.entries(setting['yaml.schemas'])) {
    expect(made).toContain(schema);
    expect(lines.map(([, file]) => file)).toContain(files);
  }
});
