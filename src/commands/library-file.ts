import type {Finding} from '../diagnostics/finding.ts';
import {libraryPath} from '../model/read-binder-files.ts';
import {readLibrary} from '../model/read-library.ts';
import {readingFinding} from '../model/reading-rules.ts';
import type {Source, SourceDate} from '../references/source.ts';
import {appendLines} from '../support/append-lines.ts';
import {oneLine} from '../yaml/one-line.ts';
import {largestYaml, readYaml} from '../yaml/read-yaml.ts';

/** What the library says; null when it cannot be read at all. */
export interface ReadLibraryFile {
  readonly sources: readonly Source[] | null;
  readonly findings: readonly Finding[];
}

export function readLibraryFile(text: string): ReadLibraryFile {
  const document = readYaml(text);
  const faults = document.problems.map((problem) => ({rule: 'yaml-syntax' as const, ...problem}));
  if (faults.length > 0)
    return {sources: null, findings: faults.map((fault) => readingFinding(libraryPath, fault))};
  // Faults of single entries are for `check` to tell; they stand in nobody's way.
  const {entries} = readLibrary(libraryPath, document);
  return {sources: entries.map(({source}) => source), findings: []};
}

/** The library as it would be, or why it cannot be written. */
export type Appended =
  | {readonly whole: Uint8Array; readonly fault: null}
  | {readonly whole: null; readonly fault: string};

/**
 * The library with `added` at its end below a note; every byte that stood there stays. `before` is null for a new library.
 * Refused when the file does not end with its list of sources, so that lines at its end would not be read as sources, and
 * when it would be longer than what is read.
 */
export function appendToLibrary(before: Uint8Array | null, added: readonly Source[], note: string): Appended {
  const old = before === null ? '' : Buffer.from(before).toString('utf8');
  // A list may be indented as its writer likes, but in one way.
  const indent = /^( *)- /m.exec(old)?.[1] ?? '';
  const lines = [
    ...(before === null ? [...head, ''] : []),
    ...(/^\uFEFF?\s*$|\n\s*\n$/.test(old) ? [] : ['']),
    `# ${note.replace(/\s+/g, ' ')}`,
    ...added.flatMap((source) => ['', ...sourceLines(source)]),
  ].map((line) => (line === '' ? '' : `${indent}${line}`));
  const whole = appendLines(before, lines);
  const text = Buffer.from(whole).toString('utf8');
  if (text.length > largestYaml)
    return refused(`it would be ${text.length} characters long; ${largestYaml} are read`);
  const [was, is] = [readLibraryFile(old).sources ?? [], readLibraryFile(text).sources ?? []];
  const isRead = added.every((source, index) => {
    const read = is[was.length + index];
    return read !== undefined && sourceLines(read).join('\n') === sourceLines(source).join('\n');
  });
  if (isRead && is.length === was.length + added.length) return {whole, fault: null};
  return refused(
    'it does not end with its list of sources; move what stands after the list above it, and write each source on lines of its own',
  );
}

function refused(fault: string): Appended {
  return {whole: null, fault};
}

const head = [
  '# My reference library, CSL in YAML. `shelf` says where I find it again: own, library or online.',
];

/** In the order in which the worked example writes them. */
const fieldOrder = [
  'title',
  'author',
  'container-title',
  'editor',
  'translator',
  'director',
  'interviewer',
  'genre',
  'medium',
  'edition',
  'issued',
  'original-date',
  'accessed',
  'collection-title',
  'volume',
  'issue',
  'page',
  'publisher',
  'publisher-place',
  'number-of-pages',
  'archive',
  'ISBN',
  'ISSN',
  'DOI',
  'URL',
  'language',
  'shelf',
  'note',
] as const satisfies readonly (keyof Source)[];

/** Fields that the library reads from a bare number too. */
const numberFields = new Set<string>(['volume', 'issue', 'page', 'number-of-pages', 'edition']);

function sourceLines(source: Source): readonly string[] {
  const fields = fieldOrder.flatMap((field) => {
    const value = source[field];
    return value === undefined ? [] : fieldLines(field, value);
  });
  return [`- id: ${oneLine(source.id)}`, `  type: ${source.type}`, ...fields];
}

function fieldLines(field: string, value: NonNullable<Source[keyof Source]>): readonly string[] {
  if (typeof value === 'string') {
    const isNumber = numberFields.has(field) && /^[1-9]\d{0,8}$/.test(value);
    return [`  ${field}: ${isNumber ? value : oneLine(value)}`];
  }
  if ('date-parts' in value) return [`  ${field}: ${dateText(value)}`];
  return value.length === 1
    ? [`  ${field}: ${oneLine(value)}`]
    : [`  ${field}:`, ...value.map((name) => `    - ${oneLine(name)}`)];
}

/** `2011`, `2011-05-17` or `c. 1910`; what these cannot say, as CSL has it. */
function dateText(date: SourceDate): string {
  const [start = [], end] = date['date-parts'];
  const [year = 0, ...rest] = start;
  if (end !== undefined || year < 1 || year > 9999) return oneLine(date);
  const written = [year, ...rest.map((part) => String(part).padStart(2, '0'))].join('-');
  return date.circa ? `c. ${written}` : written;
}
