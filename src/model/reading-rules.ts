import {asWritten} from '../diagnostics/as-written.ts';
import type {Finding, Place, Severity} from '../diagnostics/finding.ts';

/** What reading and composing may find without any rule. Ids are permanent, like those of the rules. */
export interface ReadingRule {
  readonly id: ReadingRuleId;
  /** The law as a sentence, without a full stop. */
  readonly summary: string;
  readonly severity: Severity;
  /** What it means for the author, for `explain`. */
  readonly explanation: string;
}

export type ReadingRuleId =
  | 'missing-file'
  | 'too-long'
  | 'front-matter'
  | 'yaml-syntax'
  | 'unknown-field'
  | 'missing-key'
  | 'field-shape'
  | 'citation-form'
  | 'citation-style'
  | 'clipping-form'
  | 'unknown-kind'
  | 'duplicate-requirement'
  | 'unknown-requirement'
  | 'duplicate-source'
  | 'dead-link'
  | 'unknown-directive'
  | 'computed-table';

export const readingRules: readonly ReadingRule[] = [
  {
    id: 'missing-file',
    summary: 'the binder has the files `content/binder.yaml` and `content/syllabus.yaml`',
    severity: 'error',
    explanation:
      'Without the certificate and the list of what must be sent in, nothing else can be checked. The worked example has both files.',
  },
  {
    id: 'too-long',
    summary: 'files, lines and nesting keep within what can be read in a moment',
    severity: 'error',
    explanation:
      'A file may be 1 MiB long and a line or a paragraph 20 kB; lists and quotes may stand 50 deep inside each other, and ' +
      'one paragraph may hold 400 marks such as `*` and `[`. Text beyond that is a slip, such as a picture pasted as text.',
  },
  {
    id: 'front-matter',
    summary: 'an item begins with its fields between two lines of three hyphens',
    severity: 'error',
    explanation:
      'The fields say which requirement the file answers. They are plain `name: value` lines; no other language is read, ' +
      'and nothing in a file is ever run.',
  },
  {
    id: 'yaml-syntax',
    summary: 'fields are written as `name: value`, lists with hyphens, each name once',
    severity: 'error',
    explanation:
      'Lines that belong together are indented alike, with spaces. A value that begins with `@`, `*`, `&`, `!`, `%` or a ' +
      'bracket, or that contains a colon and a space, goes between quotes.',
  },
  {
    id: 'unknown-field',
    summary: 'every field has a name that its kind of file knows',
    severity: 'error',
    explanation:
      'A misspelt name would otherwise be passed over without a word, and what it says would not be printed.',
  },
  {
    id: 'missing-key',
    summary: 'fields that everything else depends on are filled',
    severity: 'error',
    explanation:
      'An item needs its `requirement`; a requirement needs its id, kind and title; and so on. What the syllabus asks for ' +
      'beyond that is checked by the rules.',
  },
  {
    id: 'field-shape',
    summary: 'every field holds the sort of value it is meant for',
    severity: 'error',
    explanation:
      'A length has a number and a unit, a gauge count says over which length it was counted, a date is written ' +
      'year-month-day, and a list is a list.',
  },
  {
    id: 'citation-form',
    summary: 'a citation can be read: `@key`, a comma, and the place in the source',
    severity: 'error',
    explanation:
      'In running text a citation stands in brackets, as in `[@key, p. 57]`, or in the sentence, as in `@key [p. 57]`. ' +
      'An `@` that is not a citation is written `\\@`.',
  },
  {
    id: 'citation-style',
    summary: 'the style that `csl` names can be used',
    severity: 'error',
    explanation:
      'It is a file in `content` that ends in `.csl`: a whole, independent style of the Citation Style Language with citations ' +
      'and a bibliography. Without it the binder is set in the style that `citation-style` names.',
  },
  {
    id: 'clipping-form',
    summary: 'a line of `content/clippings.md` that begins with a date can be read',
    severity: 'info',
    explanation:
      'A clipping is a list entry with a date, the ids it is kept for, and if known the citation in brackets: ' +
      '`- 2026-03-14 S-07, Q-03 [@key, p. 57] why the slip must be knitwise`. Other lines of the file are yours and are passed over.',
  },
  {
    id: 'unknown-kind',
    summary: 'it is known of every item whether it is a swatch, a question or another kind',
    severity: 'error',
    explanation:
      'The kind comes from the requirement in the syllabus; failing that from the field `kind`; failing that from the folder.',
  },
  {
    id: 'duplicate-requirement',
    summary: 'every id stands once in the syllabus',
    severity: 'error',
    explanation: 'An id is what items, tags and leaf numbers are told apart by. The first one is used.',
  },
  {
    id: 'unknown-requirement',
    summary: 'ids in `tied-to` and in the answers from the assessors stand in the syllabus',
    severity: 'error',
    explanation:
      'A question is tied to swatches and projects, and a remark to an item, by the id of the requirement.',
  },
  {
    id: 'duplicate-source',
    summary: 'every key stands once in the library',
    severity: 'error',
    explanation: 'A citation names a source by its key. The first one is used.',
  },
  {
    id: 'dead-link',
    summary: 'a link leads to the web, to an address of mail or to another item',
    severity: 'warning',
    explanation:
      'A file beside the item cannot be reached from paper, so only the words of such a link are printed.',
  },
  {
    id: 'unknown-directive',
    summary: 'a line such as `::gauge` names a table that can be computed',
    severity: 'error',
    explanation: 'Nothing would be printed in its place. `::pagebreak` begins a new page.',
  },
  {
    id: 'computed-table',
    summary: 'what a computed table needs is there',
    severity: 'error',
    explanation:
      'A table is computed from what the front matter of the item says; without it there is nothing to show.',
  },
];

const severityOf = new Map(readingRules.map(({id, severity}) => [id, severity]));

/** What reading says of one fault, before the file is known. */
export interface ReadingFault {
  readonly rule: ReadingRuleId;
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
  readonly actual?: string;
  readonly expected?: readonly string[];
  readonly related?: Finding['related'];
}

export function readingFinding(file: string, fault: ReadingFault): Finding {
  const {rule, related, ...rest} = fault;
  const severity = severityOf.get(rule) ?? 'error';
  return asWritten({rule, severity, file, ...rest, ...(related ? {related} : {})});
}
