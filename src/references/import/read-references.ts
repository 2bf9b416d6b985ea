import type {Problem, Span} from '../../support/result.ts';
import type {Source} from '../source.ts';
import {withParents} from './bib-parents.ts';
import {bibToCsl} from './bib-to-csl.ts';
import {type CitationParsers, loadCitationParsers} from './citation-parsers.ts';
import {type ImportFormat, textOf} from './csl-record.ts';
import {readBib} from './read-bib.ts';
import {readCslJson} from './read-csl-json.ts';
import {readRis} from './read-ris.ts';
import {risToSource} from './ris-to-source.ts';
import {toSource} from './to-source.ts';

/** An entry of another program's file. */
export interface ImportedEntry {
  /** The key that it has there; not always one that can be cited. */
  readonly key: string | null;
  readonly source: Omit<Source, 'id'>;
  /** Fields of the file that left nothing in the source, by the file's names for them. */
  readonly dropped: readonly string[];
  /** What stands otherwise in the source than in the file, a phrase each. */
  readonly changed: readonly string[];
  /** Where it begins. */
  readonly span: Span;
}

export interface ImportedReferences {
  readonly entries: readonly ImportedEntry[];
  /** What could not be read; spans count from the start of the text. */
  readonly problems: readonly Problem[];
}

/** In UTF-16 units: some thousands of references with their abstracts. */
export const largestImport = 2_000_000;
/** A library takes some six hundred sources. */
const mostEntries = 2_000;

/** Reads the references of another program from `text`, which has no byte order mark. Never throws for what it says, and never reaches the network. */
export async function readReferences(text: string, format: ImportFormat): Promise<ImportedReferences> {
  if (text.length > largestImport) return unreadable(tooLarge(text.length, largestImport, 'characters'));
  if (text.trim() === '') return unreadable(nothing);
  const read = readers[format](text);
  const [first] = read.entries;
  if (first === undefined && read.problems.length === 0) return unreadable(noEntry[format]);
  if (read.entries.length > mostEntries)
    return unreadable(tooLarge(read.entries.length, mostEntries, 'references'));
  if (first === undefined) return {entries: [], problems: read.problems};
  const parsers = await loadCitationParsers();
  return {entries: read.entries.map((entry) => entry(parsers)), problems: read.problems};
}

interface Cut {
  readonly entries: readonly ((parsers: CitationParsers) => ImportedEntry)[];
  readonly problems: readonly Problem[];
}

const readers: Readonly<Record<ImportFormat, (text: string) => Cut>> = {
  bib(text) {
    const {entries, problems} = readBib(text);
    // Of two entries with one key the first is meant.
    const byKey = new Map(entries.toReversed().map((entry) => [entry.key ?? '', entry]));
    return {
      problems,
      entries: entries.map((entry) => (parsers) => {
        const {record, dropped, changed} = bibToCsl(withParents(entry, byKey), parsers);
        const read = toSource(record, entry.type);
        return {
          key: entry.key,
          span: entry.span,
          source: read.source,
          dropped: [...dropped, ...read.dropped],
          changed: [...changed, ...read.changed],
        };
      }),
    };
  },
  ris(text) {
    const {records, problems} = readRis(text);
    return {
      problems,
      entries: records.map((record) => (parsers) => ({
        key: record.lines.find(({tag}) => tag === 'ID')?.text || null,
        span: record.span,
        ...risToSource(record, parsers),
      })),
    };
  },
  'csl-json'(text) {
    const read = readCslJson(text);
    if (!read.ok) return {entries: [], problems: read.problems};
    return {
      problems: read.value.problems,
      entries: read.value.items.map(({record, span}) => () => ({
        key: textOf(record.id) ?? textOf(record['citation-key']),
        span,
        ...toSource(record),
      })),
    };
  },
};

const fileStart: Span = {start: 0, end: 0};

const nothing: Problem = {
  message: 'nothing stands in this file',
  hint: 'Save the references anew in the other program.',
  span: fileStart,
};

const noEntry: Readonly<Record<ImportFormat, Problem>> = {
  bib: {
    message: 'no entry stands in this file',
    hint: 'Entries of a `.bib` file begin as in `@book{ashdown2011,`; save the references anew in the other program.',
    span: fileStart,
  },
  ris: {
    message: 'no record stands in this file',
    hint: 'Records of a `.ris` file begin with a line such as `TY  - BOOK`; save the references anew in the other program.',
    span: fileStart,
  },
  'csl-json': {
    message: 'the list of references in this file is empty',
    hint: 'Save the references anew in the other program.',
    span: fileStart,
  },
};

function tooLarge(size: number, most: number, what: string): Problem {
  return {
    message: `this file has ${size} ${what}; ${most} are read at once`,
    hint: 'Save only the references that you need, without abstracts and notes, or in several files.',
    span: fileStart,
  };
}

function unreadable(problem: Problem): ImportedReferences {
  return {entries: [], problems: [problem]};
}
