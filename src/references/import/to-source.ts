import {readDoi, readIsbn, readIssn} from '../identifiers.ts';
import type {Source} from '../source.ts';
import {type CslRecord, isRecord, textOf} from './csl-record.ts';
import {plainText} from './plain-text.ts';
import {readDate} from './read-date.ts';
import {readNames} from './read-names.ts';
import {sourceTypeFor} from './source-types.ts';

/** A source that has no key yet, and what became of the record's fields. */
export interface ReadSource {
  readonly source: Omit<Source, 'id'>;
  /** Fields of the record that left nothing in the source. */
  readonly dropped: readonly string[];
  /** What was changed, a phrase each. */
  readonly changed: readonly string[];
}

const textFields = [
  'title',
  'edition',
  'container-title',
  'collection-title',
  'publisher',
  'publisher-place',
  'volume',
  'issue',
  'page',
  'number-of-pages',
  'medium',
  'genre',
  'language',
  'archive',
  'URL',
  'DOI',
  'ISBN',
  'ISSN',
  'note',
] as const;
const nameFields = ['author', 'editor', 'translator', 'director', 'interviewer'] as const;
const dateFields = ['issued', 'accessed', 'original-date'] as const;
const shelves = ['own', 'library', 'online'] as const;

type TextField = (typeof textFields)[number];

/** The fields of CSL that the library has, without `id`. */
export const sourceFields: ReadonlySet<string> = new Set([
  'type',
  ...textFields,
  ...nameFields,
  ...dateFields,
  'shelf',
]);

/** In UTF-16 units: a long abstract. What is longer is no reference. */
const longestText = 5_000;

/** A record of CSL-JSON in the library's terms: what the library does not have is dropped, what it writes otherwise is changed, and both are said; the type by the name that the file has for it. */
export function toSource(record: CslRecord, writtenType: unknown = record.type): ReadSource {
  const dropped = Object.keys(record).filter((field) => !sourceFields.has(field) && !keyFields.has(field));
  const changed: string[] = [];
  const marked: string[] = [];
  const source: Record<string, unknown> = {};
  for (const field of textFields) {
    if (record[field] === undefined || record[field] === null) continue;
    const {text, hadMarks} = plainText(textIn(record[field]));
    const fit = fitText(field, text, changed);
    if (fit === '') dropped.push(field === 'URL' ? `URL \`${text.slice(0, 80)}\`` : field);
    else source[field] = fit;
    if (hadMarks) marked.push(field);
  }
  for (const field of nameFields) {
    if (record[field] === undefined || record[field] === null) continue;
    const read = readNames(record[field]);
    if (read.names.length > 0) source[field] = read.names;
    if (read.names.length === 0) dropped.push(field);
    else dropped.push(...read.dropped.map((part) => `${field}.${part}`));
    if (read.hadMarks) marked.push(field);
  }
  for (const field of dateFields) {
    if (record[field] === undefined || record[field] === null) continue;
    const read = readDate(record[field]);
    if (read === null) dropped.push(`${field} \`${dateAsWritten(record[field])}\``);
    else source[field] = read.date;
    if (read !== null && read.guessedFrom !== null && read.guessedFrom !== dateInWords(read.date))
      changed.push(`${field} \`${read.guessedFrom.slice(0, 80)}\` was read as ${dateInWords(read.date)}`);
  }
  const shelf = shelves.find((each) => each === record.shelf);
  if (shelf !== undefined) source.shelf = shelf;
  else if (record.shelf !== undefined) dropped.push('shelf');
  const type = sourceTypeFor(record.type, source.URL !== undefined);
  if (type !== record.type) changed.push(typeChange(textIn(writtenType), type));
  if (marked.length > 0) changed.push(`marks were taken out of ${marked.join(', ')}`);
  return {source: {...source, type}, dropped, changed};
}

function typeChange(written: string, type: string): string {
  return written === ''
    ? `it had no type and became \`${type}\``
    : `type \`${written.slice(0, 40)}\` became \`${type}\``;
}

/** What other programs call the key. */
const keyFields = new Set(['id', 'citation-key', 'citekey']);

/** Some programs write a list where CSL has a text; the values stand one after the other. */
function textIn(value: unknown): string {
  if (Array.isArray(value))
    return value
      .map((each) => textOf(each) ?? '')
      .filter(Boolean)
      .join('; ');
  return textOf(value) ?? '';
}

/** The text as the field wants it; empty when it cannot hold it. */
function fitText(field: TextField, text: string, changed: string[]): string {
  if (text.length > longestText) {
    changed.push(`${field} is ${text.length} characters long, of which the library takes ${longestText}`);
    return '';
  }
  if (field === 'URL') return /^https?:\/\/\S+$/i.test(text) ? text : '';
  if (field === 'DOI') return withRead(readDoi(text), text);
  if (field === 'ISBN')
    return oneNumber(text, readIsbn, (rest) => changed.push(`of ISBN \`${rest}\` the first was taken`));
  if (field === 'ISSN')
    return oneNumber(text, readIssn, (rest) => changed.push(`of ISSN \`${rest}\` the first was taken`));
  return text;
}

function withRead(result: ReturnType<typeof readDoi>, written: string): string {
  return result.ok ? result.value : written;
}

/** The text when it is one number, right or wrong; the first right one of several. */
function oneNumber(text: string, read: typeof readIsbn, tellRest: (written: string) => void): string {
  if (read(text).ok) return text;
  const right = text.split(/[\s,;]+|\([^)]*\)/).find((part) => read(part).ok);
  if (right === undefined) return text;
  tellRest(text);
  return right;
}

function dateAsWritten(value: unknown): string {
  const text = isRecord(value) ? (textOf(value.raw) ?? textOf(value.literal)) : textOf(value);
  return (text ?? JSON.stringify(value)).slice(0, 80);
}

function dateInWords(date: NonNullable<Source['issued']>): string {
  const ends = date['date-parts'].map((parts) =>
    parts.map((part) => String(part).padStart(2, '0')).join('-'),
  );
  return `${date.circa ? 'c. ' : ''}${ends.join(' to ')}`;
}
