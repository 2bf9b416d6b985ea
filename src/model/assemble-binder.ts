import type {Finding} from '../diagnostics/finding.ts';
import type {Places} from '../yaml/places.ts';
import type {
  Assessment,
  Binder,
  Clippings,
  Item,
  LibraryEntry,
  PrintLedger,
  Requirement,
  SentRound,
  Syllabus,
} from './binder.ts';
import {buildItem} from './build-item.ts';
import {buildSyllabus} from './build-syllabus.ts';
import type {ParsedItem} from './parsed-item.ts';
import {type ReadingFault, readingFinding} from './reading-rules.ts';
import type {BinderSettings} from './schema/binder-settings.ts';
import type {SyllabusData} from './schema/syllabus.ts';
import {unknownRequirement} from './unknown-requirement.ts';

interface TypedFile<Data> {
  readonly file: string;
  readonly data: Data;
  readonly places: Places;
}

export interface BinderParts {
  /** Null when the file is missing or cannot be used. */
  readonly settings: TypedFile<BinderSettings> | null;
  readonly syllabus: TypedFile<SyllabusData> | null;
  readonly library: readonly LibraryEntry[];
  readonly clippings: Clippings;
  readonly ownStyle: Binder['ownStyle'];
  readonly items: readonly ParsedItem[];
  readonly assessments: readonly Assessment[];
  readonly sentRounds: readonly SentRound[];
  readonly ledger: PrintLedger;
  readonly photos: Binder['photos'];
  /** Year-month-day. */
  readonly today: string;
}

/**
 * Binds items to requirements, numbers and orders them. Items are checked against the schema of their kind even when
 * there is no binder for want of settings or a syllabus, so that one run shows all mistakes.
 */
export function assembleBinder(parts: BinderParts): {
  readonly binder: Binder | null;
  readonly findings: readonly Finding[];
} {
  const findings: Finding[] = [];
  const report = (file: string, faults: readonly ReadingFault[]) => {
    for (const fault of faults) findings.push(readingFinding(file, fault));
  };

  const syllabus = parts.syllabus && builtSyllabus(parts.syllabus, report);
  const requirements = requirementsById(syllabus);
  const items: Item[] = [];
  for (const parsed of parts.items) {
    const {item, faults} = buildItem(parsed, requirements);
    report(parsed.file, faults);
    if (item) items.push(item);
  }
  if (!syllabus || !parts.settings) return {binder: null, findings};

  for (const {file, results, places} of parts.assessments) {
    for (const id of Object.keys(results)) {
      if (!requirements.has(id))
        report(file, [unknownRequirement(id, requirements.keys(), places.key(['results', id]))]);
    }
  }
  const {file: settingsFile, data: settings, places: settingsPlaces} = parts.settings;
  const binder: Binder = {
    settings,
    settingsFile,
    settingsPlaces,
    syllabus,
    items: inOrder(items, [...requirements.keys()]),
    library: parts.library,
    clippings: parts.clippings,
    ownStyle: parts.ownStyle,
    assessments: [...parts.assessments].sort((a, b) => a.round - b.round),
    sentRounds: [...parts.sentRounds].sort((a, b) => a.round - b.round),
    ledger: parts.ledger,
    photos: parts.photos,
    ruleSettings: {...parts.syllabus?.data.rules, ...settings.rules},
    today: parts.today,
    readFindings: findings,
  };
  return {binder, findings};
}

function builtSyllabus(
  {file, data, places}: TypedFile<SyllabusData>,
  report: (file: string, faults: readonly ReadingFault[]) => void,
): Syllabus {
  const {syllabus, faults} = buildSyllabus(file, data, places);
  report(file, faults);
  return syllabus;
}

function requirementsById(syllabus: Syllabus | null): ReadonlyMap<string, Requirement> {
  const requirements = syllabus?.sections.flatMap((section) => section.requirements) ?? [];
  return new Map(requirements.map((requirement) => [requirement.id, requirement]));
}

/** The first item of each requirement in the order of the syllabus; then all others by file name. */
function inOrder(items: readonly Item[], ids: readonly string[]): readonly Item[] {
  const byFile = [...items].sort((a, b) => (a.file < b.file ? -1 : 1));
  const first = new Map<string, Item>();
  for (const item of byFile) if (item.requirement && !first.has(item.id)) first.set(item.id, item);
  const leading = ids.flatMap((id) => first.get(id) ?? []);
  return [...leading, ...byFile.filter((item) => first.get(item.id) !== item)];
}
