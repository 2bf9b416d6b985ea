import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {tellStatus} from '../../src/commands/status/tell-status.ts';
import {formatJson} from '../../src/diagnostics/format-json.ts';
import {formatText} from '../../src/diagnostics/format-text.ts';
import type {ParsedItem} from '../../src/model/parsed-item.ts';
import {assemble, check, loadedFolder, parseFile, type TextFile} from '../../src/pipeline.ts';
import {lookUpTable, tables} from '../../src/tables/index.ts';
import {readYaml, type YamlDocument} from '../../src/yaml/read-yaml.ts';
import {root} from '../support/run-cli.ts';
import {showHtml} from '../support/show-html.ts';
import {requireFindings, requireThat} from './laws.ts';

const base = join(root, 'tests/rules/base/content');
const others = `  - title: Others
    requirements:
      - {id: T-01, kind: pattern, title: A pattern}
      - {id: P-01, kind: project, title: A project}
      - {id: R-01, kind: report, title: A report}
      - {id: L-01, kind: letter, title: A letter}
`;

/** The small binder of the rules' cases, its syllabus with every kind of item. */
const files: ReadonlyMap<string, string> = new Map(
  readdirSync(base, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      const name = `content${path.slice(base.length)}`.replaceAll('\\', '/');
      return [name, `${readFileSync(path, 'utf8')}${name.endsWith('syllabus.yaml') ? others : ''}`] as const;
    }),
);
const photos = new Map([['s-01-front.jpg', {ok: true, format: 'jpeg', width: 1600, height: 1200} as const]]);
const today = '2026-09-28';

/** Files that are not the broken one are read once. */
const parsed = new Map<string, ParsedItem>();
const read = new Map<string, YamlDocument>();
const once =
  <T>(known: Map<string, T>, make: (file: TextFile) => T) =>
  (file: TextFile) => {
    if (files.get(file.path) !== file.text) return make(file);
    const found = known.get(file.path) ?? make(file);
    known.set(file.path, found);
    return found;
  };
const readers = {parse: once(parsed, parseFile), readYaml: once(read, ({text}) => readYaml(text))};

/**
 * Reads and checks the small binder with one file of its own. Its findings keep their law, and no control character or
 * mark of direction comes into what is said about it.
 */
export function binderWith(path: string, text: string): void {
  const texts = new Map([...files, [path, text]]);
  const list = [...texts].map(([name, content]) => ({path: name, text: content}));
  const {binder, findings} = assemble(loadedFolder(list, photos), today, readers);
  const all = binder ? check(binder) : findings;
  const textOf = (file: string) => texts.get(file) ?? null;
  requireFindings(all, textOf);
  const said = [formatText(all.slice(0, 30), textOf)];
  if (binder) said.push(tellStatus(binder, all, {ids: [], tiedTo: null, isJson: false}, 80));
  requireVisible(said.join('\n'));
  JSON.parse(formatJson(all.slice(0, 30)));
}

/** What Unicode calls control characters and bidirectional format characters, but line ends. */
const hidden = /(?!\n)\p{Cc}|\p{Bidi_Control}/u;

function requireVisible(said: string): void {
  const found = hidden.exec(said)?.[0];
  requireThat(found === undefined, `U+${found?.codePointAt(0)?.toString(16)} is shown as it is`);
}

const {binder} = assemble(
  loadedFolder(
    [...files].map(([path, text]) => ({path, text})),
    photos,
  ),
  today,
);
const [item] = binder?.items ?? [];

export const tableNames: readonly string[] = tables.flatMap(({id, attributes}) => [
  id,
  ...(attributes?.names ?? []),
]);

/** Reads a directive, `::spread{from=96 to=108}`, out of a text, and computes and draws what it asks for. */
export function askTable(text: string): void {
  if (!binder || !item) throw new Error('the small binder has no item');
  const {body} = parseFile({path: 'content/a.md', text: `---\nrequirement: S-01\n---\n\n${text}\n`});
  const lookUp = lookUpTable(binder, {...item, body});
  for (const {name, attributes} of body.directives) {
    const table = lookUp(name, attributes);
    for (const {message, hint} of table?.problems ?? [])
      requireThat(message !== '' && hint !== '', `${name} says nothing`);
    if (table) showHtml(table.content);
  }
}
