import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Places} from '../yaml/places.ts';
import type {Item, Requirement} from './binder.ts';
import {validateFields} from './fields/validate-fields.ts';
import {bodyCitations, frontMatterCitations} from './item-citations.ts';
import {folderOfKind, isKind, type Kind, kinds} from './kinds.ts';
import type {ParsedItem} from './parsed-item.ts';
import type {ReadingFault} from './reading-rules.ts';
import {fieldSchemas} from './schema/item-fields.ts';

export interface BuiltItem {
  /** Null when it cannot be said which requirement the file answers, or of which kind it is. */
  readonly item: Item | null;
  readonly faults: readonly ReadingFault[];
}

/** Types the fields of a parsed file and binds it to its requirement. */
export function buildItem(parsed: ParsedItem, requirements: ReadonlyMap<string, Requirement>): BuiltItem {
  const {value, places: writtenPlaces} = parsed.yaml;
  // Without fields there is nothing to check; a finding about the front matter says so already.
  const fieldsAreLost =
    value === null && parsed.findings.some(({rule}) => rule === 'front-matter' || rule === 'yaml-syntax');
  if (fieldsAreLost) return {item: null, faults: []};

  const requirement = requirements.get(textField(value, 'requirement') ?? '') ?? null;
  const kind = requirement?.kind ?? kindByItself(parsed);
  if (kind === null) return {item: null, faults: [unknownKind(writtenPlaces)]};

  const {fields, places, faults} = validateFields(fieldSchemas[kind], {
    value: value ?? {},
    places: writtenPlaces,
    at: [],
  });
  if (fields === null) return {item: null, faults};
  const frontMatter = frontMatterCitations(fields, places);
  const item = {
    kind,
    id: fields.requirement,
    requirement,
    file: parsed.file,
    text: parsed.text,
    title: fields.title ?? requirement?.title ?? fields.requirement,
    fields,
    places,
    body: parsed.body,
    citations: [...frontMatter.citations, ...bodyCitations(parsed.body)],
    // `kind` and `fields` come from one entry of `fieldSchemas`; the compiler cannot follow them as a pair.
  } as Item;
  return {item, faults: [...faults, ...otherKind(fields.kind, requirement, places), ...frontMatter.faults]};
}

/** The kind of an item that the syllabus does not name: its own field, else its folder. */
function kindByItself(parsed: ParsedItem): Kind | null {
  const own = textField(parsed.yaml.value, 'kind');
  if (isKind(own)) return own;
  const folders = parsed.file.split('/').slice(0, -1);
  return kinds.find((kind) => folders.includes(folderOfKind[kind])) ?? null;
}

/** A text field of the front matter, also when its name is misspelt. */
function textField(fields: unknown, name: string): string | null {
  if (typeof fields !== 'object' || fields === null) return null;
  const entries = Object.entries(fields);
  const [, value] =
    entries.find(([key]) => key === name) ?? entries.find(([key]) => nearestName(key, [name])) ?? [];
  return typeof value === 'string' ? value.trim() : null;
}

function unknownKind(places: Places): ReadingFault {
  return {
    rule: 'unknown-kind',
    place: places.value(['requirement']),
    message: 'it is not known what kind of item this is',
    hint: `Add the requirement to the syllabus, or write \`kind:\` and ${englishList(kinds, 'or')}.`,
    expected: kinds,
  };
}

function otherKind(
  own: Kind | undefined,
  requirement: Requirement | null,
  places: Places,
): readonly ReadingFault[] {
  if (own === undefined || requirement === null || own === requirement.kind) return [];
  return [
    {
      rule: 'unknown-kind',
      place: places.value(['kind']),
      message: `\`kind\` is \`${own}\`, and the syllabus says that \`${requirement.id}\` is a ${requirement.kind}`,
      hint: 'Take the line out; the syllabus says what kind it is.',
      actual: own,
      expected: [requirement.kind],
    },
  ];
}
