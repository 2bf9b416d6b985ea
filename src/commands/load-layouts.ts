import {readdir, readFile} from 'node:fs/promises';
import {createRequire} from 'node:module';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {explainFailure} from '../io/explain-failure.ts';
import type {Workspace} from '../io/workspace.ts';
import {type FontFile, fontFiles} from '../layout/font-files.ts';
import type {FontFace} from '../layout/layout-input.ts';
import {OperationalError} from '../support/operational-error.ts';

const ownLayouts = fileURLToPath(new URL('../../layouts/', import.meta.url));
const require = createRequire(import.meta.url);

export interface Layouts {
  readonly templates: ReadonlyMap<string, string>;
  readonly fonts: readonly FontFace[];
}

/** Our layouts, with the candidate's file in the place of ours wherever their `layouts` folder has one of the same name. */
export async function loadLayouts(workspace: Workspace): Promise<Layouts> {
  const [own, theirs, fonts] = await Promise.all([
    readOwnTemplates(),
    readTheirTemplates(workspace),
    Promise.all(fontFiles.map(loadFont)),
  ]);
  return {templates: new Map([...own, ...theirs]), fonts};
}

async function readOwnTemplates(): Promise<[string, string][]> {
  try {
    const files = await readdir(ownLayouts, {recursive: true, withFileTypes: true});
    const paths = files.filter((file) => file.isFile()).map((file) => path.join(file.parentPath, file.name));
    return await Promise.all(
      paths.filter(isLayout).map(async (file): Promise<[string, string]> => {
        const name = path.relative(ownLayouts, file).split(path.sep).join('/');
        return [name, await readFile(file, 'utf8')];
      }),
    );
  } catch (error) {
    throw explainFailure('read', ownLayouts, error);
  }
}

async function readTheirTemplates(workspace: Workspace): Promise<[string, string][]> {
  const files = (await workspace.list('layouts')).filter(isLayout);
  return Promise.all(
    files.map(async (file): Promise<[string, string]> => {
      return [file.slice('layouts/'.length), (await workspace.readText(file)) ?? ''];
    }),
  );
}

function isLayout(file: string): boolean {
  return file.endsWith('.hbs') || file.endsWith('.css');
}

async function loadFont(font: FontFile): Promise<FontFace> {
  try {
    const file = path.join(path.dirname(require.resolve(`${font.package}/package.json`)), font.path);
    const content = await readFile(file);
    return {...font, source: `data:font/woff2;base64,${content.toString('base64')}`};
  } catch (cause) {
    throw new OperationalError(
      `the font file \`${font.package}/${font.path}\` is missing; install Swatchleaf again (\`npm ci\` in a clone)`,
      {cause},
    );
  }
}
