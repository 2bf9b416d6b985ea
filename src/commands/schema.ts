import {type EditorSchema, editorSchemas} from '../model/editor-schemas.ts';
import {type Outcome, type Surroundings, saying} from './command.ts';
import {openFolder} from './open-binder.ts';

const folderOfSchemas = 'build/schemas';

/** Writes a JSON Schema for each sort of file, and says how an editor is told of them. */
export async function runSchema(folder: string, around: Surroundings): Promise<Outcome> {
  const {workspace} = await openFolder(folder, around);
  const schemas = editorSchemas();
  const written: string[] = [];
  for (const each of schemas) {
    await workspace.write(pathOf(each), `${JSON.stringify(each.schema, null, 2)}\n`);
    written.push(pathOf(each));
  }
  return {...saying(howToUse(schemas)), written};
}

function pathOf({name}: EditorSchema): string {
  return `${folderOfSchemas}/${name}.schema.json`;
}

/** The comment and the setting are those of the YAML language server, which many editors use. */
function howToUse(schemas: readonly EditorSchema[]): string {
  const yamlFiles = schemas.filter(({isFrontMatter}) => !isFrontMatter);
  const items = schemas.filter(({isFrontMatter}) => isFrontMatter);
  const setting = {'yaml.schemas': Object.fromEntries(yamlFiles.map((each) => [pathOf(each), each.files]))};
  const width = Math.max(...schemas.map(({files}) => files.length));
  return [
    'An editor with the YAML language server reads the schema that a line at the top of a file names:',
    '',
    ...yamlFiles.map((each) => {
      const up = '../'.repeat(each.files.split('/').length - 1);
      return `  ${each.files.padEnd(width)}  # yaml-language-server: $schema=${up}${pathOf(each)}`;
    }),
    '',
    'or, for all files at once, a setting of the editor, for the folder with `content` in it:',
    '',
    JSON.stringify(setting, null, 2),
    '',
    'For editors that check the fields at the top of a Markdown file, each kind has a schema of its own:',
    '',
    ...items.map((each) => `  ${each.files.padEnd(width)}  ${pathOf(each)}`),
    '',
    'Written:',
    '',
  ].join('\n');
}
