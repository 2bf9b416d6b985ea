import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {parse} from 'yaml';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {fileStart} from '../../src/diagnostics/finding.ts';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import type {PageCounts, Printable} from '../../src/layout/printable.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderChangedSlip} from '../../src/layout/render-changed-slip.ts';
import {renderCheckReport} from '../../src/layout/render-check-report.ts';
import {renderInserts} from '../../src/layout/render-inserts.ts';
import {renderLeaves} from '../../src/layout/render-leaves.ts';
import {renderLetter} from '../../src/layout/render-letter.ts';
import {renderPackingList} from '../../src/layout/render-packing-list.ts';
import {renderReprint} from '../../src/layout/render-reprint.ts';
import {renderRoundEnvelope} from '../../src/layout/render-round-envelope.ts';
import {renderSelfCheck} from '../../src/layout/render-self-check.ts';
import {renderStatus} from '../../src/layout/render-status.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import type {Item, Requirement} from '../../src/model/binder.ts';
import type {ComposedItem, ListedPhoto, SafeHtml} from '../../src/model/composed.ts';
import {assessmentSchema} from '../../src/model/schema/assessment.ts';
import {binderSettingsSchema} from '../../src/model/schema/binder-settings.ts';
import {syllabusSchema} from '../../src/model/schema/syllabus.ts';
import {type SampleItem, sampleBinder} from '../support/sample-binder.ts';

/** What a case's `case.yaml` may say; everything but `document` may be left out. */
interface CaseFile {
  readonly document:
    | 'binder'
    | 'leaves'
    | 'tags'
    | 'inserts'
    | 'letter'
    | 'packing-list'
    | 'check-report'
    | 'status'
    | 'self-check'
    | 'reprint'
    | 'round-letter'
    | 'round-packing-list'
    | 'postal-label'
    | 'changed-slip';
  readonly settings?: object;
  readonly sections?: readonly object[];
  readonly items?: readonly CaseItem[];
  readonly references?: readonly {
    readonly key: string;
    readonly html: string;
    readonly 'used-in': readonly string[];
  }[];
  readonly assessments?: readonly object[];
  readonly findings?: readonly Partial<Finding>[];
  readonly draft?: number;
  readonly counts?: Readonly<Record<string, number>>;
  /** For leaves: the errors of each sheet, by its name. */
  readonly errors?: Readonly<Record<string, number>>;
  /** For the slip: leaf numbers. */
  readonly changes?: {readonly 'take-out': readonly string[]; readonly 'put-in': readonly string[]};
  /** The ids of the items to print again, and the round in which they are. */
  readonly reprint?: readonly string[];
  readonly round?: number;
  /** The anchors of the sheets whose HTML is compared; all when left out. */
  readonly show?: readonly string[];
  /** Whether the `@page` rules are compared too. */
  readonly 'show-page-rules'?: boolean;
}

/** A citation under a technique. */
interface CaseCitation {
  readonly key: string;
  readonly technique: string;
  readonly as?: string;
}

interface CaseItem {
  readonly 'front-matter': Omit<SampleItem, 'kind'>;
  readonly words?: number;
  readonly citations?: readonly (string | CaseCitation)[];
  readonly 'begins-with-heading'?: boolean;
  /** What the composition would have made of it. */
  readonly composed?: Partial<
    Record<'body' | 'gauge' | 'size' | 'attempts' | 'references' | 'reviewed', string>
  > & {
    readonly techniques?: readonly {
      readonly name: string;
      readonly citations?: string;
      readonly note?: string;
    }[];
    readonly photos?: readonly (readonly ListedPhoto[])[];
    readonly notes?: readonly string[];
  };
}

export interface LayoutCase {
  readonly input: LayoutInput;
  readonly printable: Printable;
  readonly show: readonly string[] | null;
  readonly showsPageRules: boolean;
}

/** Our own layout files, as the program loads them. */
export const layoutFiles: ReadonlyMap<string, string> = new Map(
  readdirSync('layouts', {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [path.replaceAll('\\', '/').slice('layouts/'.length), readFileSync(path, 'utf8')];
    }),
);

export function readLayoutCase(folder: string): LayoutCase {
  // The shape of the case files is ours; a slip shows in the golden file.
  const file = parse(readFileSync(join(folder, 'case.yaml'), 'utf8')) as CaseFile;
  const input = layoutInput(file);
  return {
    input,
    printable: render(file, input),
    show: file.show ?? null,
    showsPageRules: file['show-page-rules'] ?? false,
  };
}

export function layoutInput(file: Omit<CaseFile, 'document'>): LayoutInput {
  const syllabus = sampleSyllabus(file.sections ?? []);
  const requirements = syllabus.flatMap((section) => section.requirements);
  const items = (file.items ?? []).map((item) => ({item, model: caseItem(item, requirements)}));
  const blank = sampleBinder({items: []});
  return {
    binder: {
      ...blank,
      settings: binderSettingsSchema.parse({...defaultSettings, ...file.settings}),
      syllabus: {...blank.syllabus, sections: syllabus},
      items: items.map(({model}) => model),
      assessments: (file.assessments ?? []).map((assessment) => ({
        ...assessmentSchema.parse(assessment),
        file: 'content/assessments/round-0.yaml',
        places: blank.syllabus.places,
      })),
    },
    composed: new Map(items.map(({item, model}) => [model.id, composedItem(item, model)])),
    references: (file.references ?? []).map(({key, html, 'used-in': usedIn}) => ({
      key,
      html: safe(html),
      usedIn,
    })),
    templates: layoutFiles,
    fonts: [],
    draft: file.draft === undefined ? null : {errors: file.draft},
    findings: (file.findings ?? []).map((finding) => ({...defaultFinding, ...finding})),
    gaugeInWords: ({stitches, rows}) =>
      stitches.length + rows.length === 0 ? null : `mean of ${stitches.length} and ${rows.length} counts`,
  };
}

const defaultSettings = {
  candidate: {name: 'Marit Haldane-Roe', number: 'FG-2-0417', address: ['3 Weir Cottages', 'Sallow Bridge']},
  certificate: {
    name: 'Certificate in Hand Knitting',
    part: 'Part Two: Garment Techniques',
    guild: 'The Fellgate Guild of Hand Knitters',
    address: ['The Assessors, Part Two', 'Tithe Barn', 'Fellgate'],
  },
  date: '2026-09-28',
};

const defaultFinding: Finding = {
  rule: 'word-limit',
  severity: 'error',
  file: 'content/syllabus.yaml',
  place: {...fileStart, line: 3, column: 5},
  message: 'the answer has `412` words, but at most `350` are asked',
  hint: 'Take out `62` words.',
};

function render(file: CaseFile, input: LayoutInput): Printable {
  const counts: PageCounts = file.counts ? new Map(Object.entries(file.counts)) : null;
  const rendered = {
    binder: () => renderBinder(input, counts),
    leaves: () => renderLeaves(input, new Map(Object.entries(file.errors ?? {})), counts),
    tags: () => renderTags(input),
    inserts: () => renderInserts(input),
    letter: () => renderLetter(input, counts),
    'packing-list': () => renderPackingList(input, counts),
    'check-report': () => renderCheckReport(input),
    status: () => renderStatus(input),
    'self-check': () => renderSelfCheck(input),
    reprint: () => renderReprint(input, file.reprint ?? [], counts),
    'round-letter': () => renderRoundEnvelope(input, 'letter', sentAgain(file, input), file.round ?? 1),
    'round-packing-list': () =>
      renderRoundEnvelope(input, 'packing list', sentAgain(file, input), file.round ?? 1),
    'postal-label': () => renderRoundEnvelope(input, 'label', sentAgain(file, input), file.round ?? 1),
    'changed-slip': () =>
      renderChangedSlip(input, renderBinder(input, counts).sheets, {
        takeOut: file.changes?.['take-out'] ?? [],
        putIn: file.changes?.['put-in'] ?? [],
        gone: [],
      }),
  }[file.document]();
  if (rendered === null) throw new Error(`the case has nothing to print as ${file.document}`);
  return rendered;
}

function sentAgain({reprint = []}: CaseFile, {composed}: LayoutInput): readonly Item[] {
  return reprint.flatMap((id) => composed.get(id)?.item ?? []);
}

function sampleSyllabus(sections: readonly object[]) {
  const data = syllabusSchema.parse({title: 'Part Two', sections});
  return data.sections.map(({title, tab, requirements}, index) => ({
    number: index + 1,
    title,
    tab: tab ?? title,
    requirements: requirements.map(
      ({id, kind, title: requirementTitle, asks, 'tied-to': tiedTo, limits}): Requirement => ({
        id,
        kind,
        title: requirementTitle,
        asks: asks ?? null,
        tiedTo,
        limits,
        place: fileStart,
        path: [],
      }),
    ),
  }));
}

function caseItem(item: CaseItem, requirements: readonly Requirement[]): Item {
  const frontMatter = item['front-matter'];
  const requirement = requirements.find(({id}) => id === frontMatter.requirement) ?? null;
  const [sample] = sampleBinder({
    items: [{kind: requirement?.kind ?? 'swatch', ...frontMatter} as SampleItem],
  }).items;
  if (sample === undefined) throw new Error('a binder of one item has one item');
  const heading = {type: 'heading' as const, depth: 2 as const, children: []};
  const citations = (item.citations ?? []).map((each) => ({
    citation: {
      key: typeof each === 'string' ? each : each.key,
      locator: null,
      prefix: '',
      suffix: '',
      suppressAuthor: false,
      span: {start: 0, end: 0},
      keySpan: {start: 0, end: 0},
    },
    technique: typeof each === 'string' ? null : each.technique,
    from: typeof each === 'string' ? ('body' as const) : ('technique' as const),
    calledThere: typeof each === 'string' ? null : (each.as ?? null),
    place: fileStart,
    keyPlace: fileStart,
  }));
  return {
    ...sample,
    requirement,
    citations,
    title: sample.fields.title ?? requirement?.title ?? sample.title,
    body: {
      ...sample.body,
      words: item.words ?? 0,
      tree: {type: 'root', children: item['begins-with-heading'] ? [heading] : []},
    },
  };
}

function composedItem({composed = {}}: CaseItem, item: Item): ComposedItem {
  const {
    body,
    gauge,
    size,
    attempts,
    references,
    reviewed,
    techniques = [],
    photos = [],
    notes = [],
  } = composed;
  return {
    item,
    body: safe(body ?? '<p>Text of the item.</p>'),
    techniques: techniques.map(({name, citations, note}) => ({
      name,
      citations: citations === undefined ? null : safe(citations),
      note: note ?? null,
    })),
    gauge: gauge === undefined ? null : safe(gauge),
    size: size === undefined ? null : safe(size),
    attempts: attempts === undefined ? null : safe(attempts),
    photos,
    notes: notes.map(safe),
    references: references === undefined ? null : safe(references),
    reviewed: reviewed === undefined ? null : safe(reviewed),
  };
}

/** Test data stands in for what our own processor would have made. */
function safe(html: string): SafeHtml {
  return html as SafeHtml;
}
