import {fileStart} from '../../src/diagnostics/finding.ts';
import type {Binder, Item} from '../../src/model/binder.ts';
import type {Body} from '../../src/model/body.ts';
import type {Kind} from '../../src/model/kinds.ts';
import {binderSettingsSchema} from '../../src/model/schema/binder-settings.ts';
import {fieldSchemas} from '../../src/model/schema/item-fields.ts';
import type {Places} from '../../src/yaml/places.ts';

/** Front matter as plain values, with the kind that a syllabus would give. */
export interface SampleItem {
  readonly kind: Kind;
  readonly requirement: string;
  /** Texts of `piece` blocks. */
  readonly pieces?: readonly string[];
  /** Other fenced blocks of the text. */
  readonly blocks?: readonly {readonly language: string; readonly text: string}[];
  readonly [field: string]: unknown;
}

/** A binder of items without text, for tests that look at front matter only. Throws when an item breaks its schema. */
export function sampleBinder({
  units = 'metric',
  items,
}: {
  readonly units?: 'metric' | 'inch';
  readonly items: readonly SampleItem[];
}): Binder {
  return {
    settings: binderSettingsSchema.parse({
      candidate: {name: 'Marit Haldane-Roe'},
      certificate: {name: 'Certificate in Hand Knitting'},
      date: '2026-09-28',
      units,
    }),
    settingsFile: 'content/binder.yaml',
    settingsPlaces: noPlaces,
    syllabus: {file: 'content/syllabus.yaml', title: 'Part Two', sections: [], places: noPlaces},
    items: items.map(sampleItem),
    library: [],
    ownStyle: null,
    clippings: {file: 'content/clippings.md', entries: []},
    assessments: [],
    sentRounds: [],
    ledger: {entries: [], file: 'content/print-ledger.yaml', places: noPlaces},
    photos: new Map(),
    ruleSettings: {},
    today: '2026-09-28',
    readFindings: [],
  };
}

function sampleItem(frontMatter: SampleItem): Item {
  const {kind, pieces = [], blocks = [], ...fields} = frontMatter;
  const id = fields.requirement;
  const common = {
    id,
    requirement: null,
    file: `content/${id}.md`,
    text: '',
    title: `Sample ${id}`,
    places: noPlaces,
    body: {...emptyBody, blocks: [...pieces.map(pieceBlock), ...blocks.map(fencedBlock)]},
    citations: [],
  };
  // The schema of `kind` makes the fields of `kind`; the compiler cannot follow the pair through the table of schemas.
  return {...common, kind, fields: fieldSchemas[kind].parse(fields)} as Item;
}

function pieceBlock(text: string): Body['blocks'][number] {
  return fencedBlock({language: 'piece', text});
}

function fencedBlock({language, text}: {language: string; text: string}): Body['blocks'][number] {
  return {language, text, place: fileStart, linePlaces: text.split('\n').map(() => fileStart)};
}

const noPlaces: Places = {
  value: () => fileStart,
  key: () => fileStart,
  within: () => fileStart,
  has: () => false,
};

const emptyBody: Body = {
  tree: {type: 'root', children: []},
  clusters: [],
  headings: [],
  images: [],
  crossReferences: [],
  links: [],
  rawHtml: [],
  directives: [],
  blocks: [],
  quotations: [],
  words: 0,
};
