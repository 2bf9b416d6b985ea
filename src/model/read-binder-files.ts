import type * as z from 'zod';
import {type Finding, fileStart} from '../diagnostics/finding.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {YamlDocument} from '../yaml/read-yaml.ts';
import {assembleBinder} from './assemble-binder.ts';
import type {Assessment, Binder, LibraryEntry, PrintLedger, SentRound} from './binder.ts';
import {readClippings} from './clippings.ts';
import {validateFields} from './fields/validate-fields.ts';
import {ownStyleOf} from './own-style.ts';
import type {ParsedItem} from './parsed-item.ts';
import {readLibrary} from './read-library.ts';
import {type ReadingFault, readingFinding} from './reading-rules.ts';
import {assessmentSchema} from './schema/assessment.ts';
import {binderSettingsSchema} from './schema/binder-settings.ts';
import {printLedgerSchema} from './schema/print-ledger.ts';
import {sentRoundSchema} from './schema/sent-round.ts';
import {syllabusSchema} from './schema/syllabus.ts';

export const settingsPath = 'content/binder.yaml';
export const syllabusPath = 'content/syllabus.yaml';
export const libraryPath = 'content/library.yaml';
export const assessmentsFolder = 'content/assessments/';
/** Scraps of reading, kept for items that are still to be written; no item itself. */
export const clippingsPath = 'content/clippings.md';
export const ledgerPath = 'content/print-ledger.yaml';
/** What was sent, a folder a round; the texts in it are copies and no items. */
export const roundsFolder = 'content/rounds/';
export const sentRoundFile = /^content\/rounds\/[^/]+\/sent\.yaml$/;

export interface BinderFiles {
  /** The YAML files of the content folder, paths within the binder folder. Those that no one reads are passed over. */
  readonly yamlFiles: readonly {readonly path: string; readonly text: string}[];
  readonly items: readonly ParsedItem[];
  /** The text of the file of clippings; empty when there is none. */
  readonly clippings: string;
  /** Citation styles of the candidate's own. */
  readonly styles: readonly {readonly path: string; readonly text: string}[];
  readonly photos: Binder['photos'];
  readonly today: string;
  readonly readYaml: (file: {readonly path: string; readonly text: string}) => YamlDocument;
}

export interface ReadBinder {
  /** Null when the binder file or the syllabus is missing or cannot be read: then nothing can be checked. */
  readonly binder: Binder | null;
  /** All findings of reading; the same as the binder's `readFindings` when there is a binder. */
  readonly findings: readonly Finding[];
}

/** From texts to the binder that rules, tables and layouts see. Reports all faults of all files, and never throws for them. */
export function readBinderFiles({
  yamlFiles,
  items,
  clippings: clippingsText,
  styles,
  photos,
  today,
  readYaml,
}: BinderFiles): ReadBinder {
  const texts = new Map(yamlFiles.map(({path, text}) => [path, text]));
  const findings: Finding[] = [];
  const report = (file: string, faults: readonly ReadingFault[]) => {
    for (const fault of faults) findings.push(readingFinding(file, fault));
  };

  function read(path: string, text: string): YamlDocument {
    const document = readYaml({path, text});
    report(
      path,
      document.problems.map((problem) => ({rule: 'yaml-syntax', ...problem})),
    );
    return document;
  }

  /** Null when the file is missing, or so faulty that nothing can be built on it. */
  function readRequired<Schema extends z.ZodType>(path: string, schema: Schema) {
    const text = texts.get(path);
    if (text === undefined) {
      report(path, [missingFile(path, texts.keys())]);
      return null;
    }
    const document = read(path, text);
    if (document.problems.length > 0) return null;
    const {fields, places, faults} = validateDocument(schema, document);
    report(path, faults);
    return fields && {data: fields, places};
  }

  const settings = readRequired(settingsPath, binderSettingsSchema);
  const syllabus = readRequired(syllabusPath, syllabusSchema);
  const library: LibraryEntry[] = [];
  const assessments: Assessment[] = [];
  const sentRounds: SentRound[] = [];
  let ledger: PrintLedger = {
    entries: [],
    file: ledgerPath,
    places: readYaml({path: ledgerPath, text: ''}).places,
  };
  for (const [path, text] of texts) {
    if (path === libraryPath) {
      const {entries, faults} = readLibrary(path, read(path, text));
      library.push(...entries);
      report(path, faults);
    } else if (path.startsWith(assessmentsFolder)) {
      const document = read(path, text);
      const {fields, places, faults} = validateDocument(assessmentSchema, document);
      report(path, faults);
      if (fields) assessments.push({...fields, file: path, places});
    } else if (path === ledgerPath) {
      const {fields, places, faults} = validateDocument(printLedgerSchema, read(path, text));
      report(path, faults);
      if (fields) ledger = {entries: fields.leaves, file: path, places};
    } else if (sentRoundFile.test(path)) {
      const {fields, places, faults} = validateDocument(sentRoundSchema, read(path, text));
      report(path, faults);
      if (fields) sentRounds.push({...fields, file: path, places});
    }
  }
  for (const item of items) for (const finding of item.findings) findings.push(finding);
  const {clippings, faults: clippingFaults} = readClippings(clippingsText);
  report(clippingsPath, clippingFaults);
  const own = settings
    ? ownStyleOf(settings.data.csl, settings.places, new Map(styles.map(({path, text}) => [path, text])))
    : {style: null, faults: []};
  report(settingsPath, own.faults);
  const assembled = assembleBinder({
    settings: settings && {file: settingsPath, ...settings},
    syllabus: syllabus && {file: syllabusPath, ...syllabus},
    library,
    clippings: {file: clippingsPath, entries: clippings},
    ownStyle: own.style,
    assessments,
    sentRounds,
    ledger,
    items,
    photos,
    today,
  });
  const all = [...findings, ...assembled.findings];
  return {binder: assembled.binder && {...assembled.binder, readFindings: all}, findings: all};
}

/** What a file says, typed, with the places of its fields. */
function validateDocument<Schema extends z.ZodType>(schema: Schema, {value, places}: YamlDocument) {
  return validateFields(schema, {value: value ?? {}, places, at: []});
}

function missingFile(path: string, others: Iterable<string>): ReadingFault {
  const near = nearestName(path, others);
  return {
    rule: 'missing-file',
    place: fileStart,
    message: `there is no file \`${path}\``,
    hint: near
      ? `Rename \`${near}\` to \`${path}\`.`
      : 'Write it; the worked example shows what stands in it.',
  };
}
