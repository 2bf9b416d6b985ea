import {plural} from '../../support/plural.ts';
import type {BibField} from './bib-body.ts';
import {bibDate, yearAndMonth} from './bib-dates.ts';
import {bibNames} from './bib-names.ts';
import type {CitationParsers} from './citation-parsers.ts';
import {type CslRecord, textOf} from './csl-record.ts';
import type {BibEntry} from './read-bib.ts';
import {longestTex, prepareTex, texText} from './tex-text.ts';
import {sourceFields} from './to-source.ts';

/** An entry in CSL's terms. */
export interface ReadBibEntry {
  readonly record: CslRecord;
  readonly dropped: readonly string[];
  readonly changed: readonly string[];
}

/**
 * A BibTeX or BibLaTeX entry as CSL-JSON. Titles, names, dates, numbers and addresses are put together here (BibLaTeX
 * manual 3.20, sections 2.2.2 and 2.3; BibTeX writes `year` and `month`); every other field is what citation-js takes it for.
 */
export function bibToCsl(entry: BibEntry, parsers: CitationParsers): ReadBibEntry {
  const fields = new Map(entry.fields.map(({name, text}) => [name, text]));
  const record: Record<string, unknown> = {};
  const dropped = new Set(entry.repeated);
  const changed = new Set(
    entry.unknownMacros.map((name) => `\`${name}\` is no @string and was taken as text`),
  );
  const used = new Set(['crossref']);
  const take = (name: string) => {
    used.add(name);
    return fields.get(name);
  };
  const text = (tex: string | undefined) => (tex === undefined ? '' : texText(tex, parsers).trim());
  const put = (field: string, value: unknown) => {
    if (value !== undefined && value !== '' && record[field] === undefined) record[field] = value;
  };

  put('title', joined(text(take('title')), text(take('subtitle'))));
  for (const stem of containersOf(entry.type)) {
    if (record['container-title'] === undefined)
      put('container-title', joined(text(take(`${stem}title`) ?? take(stem)), text(take(`${stem}subtitle`))));
  }
  for (const [field, name] of dateFields) put(field, bibDate(take(name)));
  put('issued', bibDate(yearAndMonth(take('year'), take('month'), take('day'))));
  for (const name of verbatimFields) {
    const value = take(name.toLowerCase());
    if (value !== undefined) put(name, verbatim(value));
  }
  for (const name of nameFields) {
    const written = take(name);
    if (written === undefined) continue;
    const {names, isOpen, left} = bibNames(written, parsers);
    const isDirector = name === 'editor' && /^\s*director\s*$/i.test(take('editortype') ?? '');
    if (names.length > 0) put(isDirector ? 'director' : name, names);
    else dropped.add(name);
    if (left > 0) dropped.add(`${plural(left, 'name')} of ${name}`);
    if (isOpen) changed.add(`${name} ends in “and others”, which was left out`);
  }
  const base = parsers.bibField(entry.type, 'title', 'x') ?? {};
  put('type', ownType(entry.type, text(fields.get('entrysubtype'))) ?? base.type);
  if (record.type !== base.type) used.add('entrysubtype');
  for (const {name, text: tex} of byPrecedence(entry.fields).slice(0, mostFields)) {
    if (used.has(name)) continue;
    const said = Object.entries(fieldInCsl(entry.type, name, tex, parsers)).filter(
      ([field]) => sourceFields.has(field) && field !== 'type' && record[field] === undefined,
    );
    if (said.length === 0) dropped.add(name);
    for (const [field, value] of said) put(field, value);
  }
  if (entry.fields.length > mostFields) dropped.add(`the fields after the first ${mostFields}`);
  put('genre', base.genre);
  if (typeof record.genre === 'string') record.genre = genres[record.genre] ?? record.genre;
  const texed = entry.fields.filter(({name, text: tex}) => !dropped.has(name) && /[\\$]/.test(tex));
  if (texed.length > 0) changed.add(`TeX became plain text in ${texed.map(({name}) => name).join(', ')}`);
  return {record, dropped: [...dropped], changed: [...changed]};
}

/** BibLaTeX knows some 150. */
const mostFields = 200;

const dateFields = [
  ['issued', 'date'],
  ['accessed', 'urldate'],
  ['original-date', 'origdate'],
] as const;
/** Read as they are, without TeX (BibLaTeX manual, section 2.2.1), bar the backslashes that other programs put in. */
const verbatimFields = ['URL', 'DOI', 'ISBN', 'ISSN'] as const;
const nameFields = ['author', 'editor', 'translator'] as const;

/** BibLaTeX's keys for kinds of theses and reports, in words (manual, section 4.9.2.13). */
const genres: Readonly<Record<string, string>> = {
  mathesis: 'MA thesis',
  phdthesis: 'PhD thesis',
  bathesis: 'BA thesis',
  candthesis: 'candidate thesis',
  techreport: 'technical report',
  resreport: 'research report',
};

/** Types that BibLaTeX sets as it sets `inbook`, `incollection` and `article` (manual, section 2.1.1). */
const partTypes: Readonly<Record<string, string>> = {
  bookinbook: 'chapter',
  suppbook: 'chapter',
  suppcollection: 'chapter',
  suppperiodical: 'article-journal',
};

/** The fields that name what the entry stands in: `journaltitle`, or BibTeX's `journal`, before `booktitle`. */
function containersOf(type: string): readonly string[] {
  return type.startsWith('in') || type === 'conference' || partTypes[type] === 'chapter'
    ? ['book', 'main', 'journal']
    : ['journal', 'book'];
}

/** BibTeX's booklet has no publisher's name: a pamphlet. Magazines and newspapers are told by `entrysubtype`. */
function ownType(type: string, subtype: string): string | null {
  if (type === 'booklet') return 'pamphlet';
  if (type === 'inreference') return 'entry-encyclopedia';
  if (type === 'audio' || type === 'music') return 'broadcast';
  const isPeriodical = type === 'article' && /^(?:magazine|newspaper)$/i.test(subtype);
  return isPeriodical ? `article-${subtype.toLowerCase()}` : (partTypes[type] ?? null);
}

function joined(title: string, subtitle: string): string {
  if (title === '' || subtitle === '') return title || subtitle;
  return /[:?!.…]$/.test(title) ? `${title} ${subtitle}` : `${title}: ${subtitle}`;
}

function verbatim(text: string): string {
  const inner = /^\s*\\url\s*\{(.*)\}\s*$/s.exec(text)?.[1] ?? text;
  return inner
    .replace(/\\([_&%#$~{}])/g, '$1')
    .replace(/[{}]/g, '')
    .trim();
}

/** Fields that say something only where an earlier one does not. */
const lastFields = ['school', 'organization', 'howpublished', 'issue', 'addendum', 'annotation', 'annote'];

function byPrecedence(fields: readonly BibField[]): readonly BibField[] {
  const rank = ({name}: BibField) => lastFields.indexOf(name);
  return [...fields].sort((a, b) => rank(a) - rank(b));
}

function fieldInCsl(type: string, name: string, tex: string, parsers: CitationParsers): CslRecord {
  if (name === 'annotation' || name === 'annote') return {note: texText(tex, parsers)};
  const isSound = tex.length <= longestTex;
  const sound = isSound ? parsers.bibField(type, name, prepareTex(tex, parsers)) : null;
  const said = sound ?? unsound(type, name, tex, parsers);
  const lists = Object.entries(said ?? {}).map(([field, value]) =>
    Array.isArray(value) ? [field, value.map((each) => textOf(each) ?? '').join(' and ')] : [field, value],
  );
  return Object.fromEntries(lists);
}

/** The field with text that is no sound TeX: what a plain word would say there is said by the text. */
function unsound(type: string, name: string, tex: string, parsers: CitationParsers): CslRecord {
  const said = Object.entries(parsers.bibField(type, name, 'word') ?? {});
  return Object.fromEntries(
    said.filter(([, value]) => value === 'word').map(([field]) => [field, texText(tex, parsers)]),
  );
}
