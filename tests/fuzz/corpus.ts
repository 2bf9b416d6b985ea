import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {root} from '../support/run-cli.ts';

const folders = [
  'content',
  'layouts/starter',
  'tests/rules',
  'tests/tables',
  'tests/status',
  'tests/published',
];

/** Every text that is written for the program to read: the worked example, the starter, the tests' cases. Path first. */
const files: readonly (readonly [string, string])[] = folders.flatMap((folder) =>
  readdirSync(join(root, folder), {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile() && /\.(?:md|ya?ml|csl|json)$/.test(entry.name))
    .filter((entry) => !entry.parentPath.includes('expected'))
    .map((entry) => join(entry.parentPath, entry.name).replaceAll('\\', '/'))
    .sort()
    .map((path) => [path, readFileSync(path, 'utf8')] as const),
);

/** The texts whose path ends as asked, each once. Throws when there is none. */
export function textsAt(path: RegExp): readonly string[] {
  return atLeastOne([...new Set(files.filter(([name]) => path.test(name)).map(([, text]) => text))], path);
}

export const items = textsAt(/\/content\/(?!clippings|rounds).*\.md$|starter\/.*\.md$/);

/** The fields between the lines of three hyphens, without them. */
export const fields = items.map((text) => /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '');

/** What stands in fenced blocks of one language. Throws when there is none. */
export function blocks(language: string): readonly string[] {
  const pattern = new RegExp(String.raw`^(~~~|\`\`\`) ?${language}\n([\s\S]*?)^\1`, 'gm');
  const found = files.flatMap(([, text]) => [...text.matchAll(pattern)].map((match) => match[2] ?? ''));
  return atLeastOne([...new Set(found)], pattern);
}

/** Directives with their braces, as they are written. */
export const directives = atLeastOne(
  [...new Set(files.flatMap(([, text]) => text.match(/^::[a-z-]+(?:\{.*\})?$/gm) ?? []))],
  /::/,
);

/** What stands between the brackets of citations. */
export const citations = atLeastOne(
  [
    ...new Set(
      files.flatMap(([, text]) =>
        [...text.matchAll(/\[([^\]\n]*@[^\]\n]*)\]/g)].map(([, inside = '']) => inside),
      ),
    ),
  ],
  /@/,
);

function atLeastOne(list: readonly string[], what: RegExp): readonly string[] {
  if (list.length === 0) throw new Error(`nothing to break for ${what}`);
  return list;
}
