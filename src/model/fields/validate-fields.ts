import type * as z from 'zod';
import {nearestName} from '../../support/nearest-name.ts';
import type {Places, YamlPath} from '../../yaml/places.ts';
import type {ReadingFault} from '../reading-rules.ts';
import {isStubText} from '../stub-text.ts';
import {describeMissing, describeUnknownName, describeValue} from './describe-issue.ts';
import {type Draft, draftOf, draftPlaces} from './draft.ts';
import {type FlatIssue, flatIssues} from './flat-issues.ts';
import {knownNames} from './schema-at.ts';

export interface Written {
  readonly value: unknown;
  readonly places: Places;
  /** Where the value stands in its document. */
  readonly at: YamlPath;
}

export interface Validated<T> {
  /** What could be read; null when something that everything else depends on is missing. */
  readonly fields: T | null;
  /** Places by the paths of `fields`. */
  readonly places: Places;
  readonly faults: readonly ReadingFault[];
}

/**
 * Checks what the author wrote against a schema. All faults are reported at once; then the faulty values are left out, or
 * read as the word they most likely stand for, so that the rest is kept.
 */
export function validateFields<Schema extends z.ZodType>(
  schema: Schema,
  written: Written,
): Validated<z.output<Schema>> {
  const draft = draftOf(written.value);
  const places = draftPlaces(draft, written.places, written.at);
  /** As found before anything was repaired: taking an entry out of a list moves the places of those after it. */
  let found: readonly {readonly isStub: boolean; readonly faults: readonly ReadingFault[]}[] | null = null;
  // Each round of repairs takes out at least one value, so few are needed; a bound keeps a bug of ours from hanging.
  for (let round = 0; round < 50; round++) {
    const result = schema.safeParse(draft.value, {reportInput: true});
    const issues = result.success ? [] : withoutEchoes(flatIssues(result.error.issues), schema);
    found ??= issues.map((issue) => ({isStub: isStub(issue), faults: faultsOf(issue, schema, places)}));
    if (result.success) {
      const faults = found.filter((each) => !each.isStub).flatMap((each) => each.faults);
      return {fields: result.data, places, faults};
    }
    if (!repair(draft, issues, schema)) break;
  }
  return {fields: null, places, faults: (found ?? []).flatMap(({faults}) => faults)};
}

/** A stub's `…` where a number or a date belongs is not wrong, only not written yet: the syllabus says whether it must be. */
function isStub(issue: FlatIssue): boolean {
  return typeof issue.input === 'string' && isStubText(issue.input);
}

/** A required name that is only misspelt is one fault, not two. */
function withoutEchoes(issues: readonly FlatIssue[], schema: z.ZodType): readonly FlatIssue[] {
  const meant = new Set(
    issues.flatMap((issue) =>
      issue.code === 'unrecognized_keys'
        ? issue.keys.map((key) => String([...issue.at, nearestName(key, knownNames(schema, issue.at))]))
        : [],
    ),
  );
  return issues.filter((issue) => !(isMissing(issue) && meant.has(String(issue.at))));
}

function isMissing(issue: FlatIssue): boolean {
  return issue.input === undefined && (issue.code === 'invalid_type' || issue.code === 'invalid_value');
}

function faultsOf(issue: FlatIssue, schema: z.ZodType, places: Places): readonly ReadingFault[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      rule: 'unknown-field',
      place: places.key([...issue.at, key]),
      actual: key,
      ...describeUnknownName(key, schema, issue.at),
    }));
  }
  if (isMissing(issue))
    return [{rule: 'missing-key', place: places.value(issue.at), ...describeMissing(issue, schema)}];

  const value = issue.input;
  const isScalar = typeof value !== 'object' || value === null;
  const {part, ...fault} = describeValue(issue, schema);
  const text = typeof value === 'string' ? value : null;
  if (part && text !== null) {
    const place = places.within(issue.at, part.start, part.end);
    return [{rule: 'field-shape', place, ...fault}];
  }
  // A list or a group of the wrong kind is shown by its name, not over all its lines.
  const place = isScalar ? places.value(issue.at) : places.key(issue.at);
  return [{rule: 'field-shape', place, ...fault}];
}

/** Whether anything was changed. */
function repair(draft: Draft, issues: readonly FlatIssue[], schema: z.ZodType): boolean {
  const edits = issues.flatMap((issue) => editsFor(issue, schema));
  const removed = new Set(edits.flatMap(({path, edit}) => (edit === null ? [String(path)] : [])));
  const standing = edits.filter(({path, edit}) => {
    const own = edit === null ? path.length : path.length + 1;
    return !path.some((_, depth) => depth > 0 && depth < own && removed.has(String(path.slice(0, depth))));
  });
  const once = new Map(standing.map((each) => [String(each.path), each]));
  // Later list entries go first, so that the paths of earlier ones stay true.
  for (const {path, edit} of [...once.values()].sort((a, b) => comparePaths(b.path, a.path))) {
    if (edit === null) draft.remove(path);
    else if ('name' in edit) draft.rename(path, edit.name);
    else draft.replace(path, edit.value);
  }
  return once.size > 0;
}

interface Edit {
  readonly path: YamlPath;
  /** Null takes the value out. */
  readonly edit: {readonly name: string} | {readonly value: unknown} | null;
}

function editsFor(issue: FlatIssue, schema: z.ZodType): readonly Edit[] {
  if (issue.code === 'unrecognized_keys') {
    const {input: group, at} = issue;
    return issue.keys.map((key) => {
      const name = nearestName(key, knownNames(schema, at));
      const isFree = name !== null && typeof group === 'object' && group !== null && !(name in group);
      return {path: [...at, key], edit: isFree ? {name} : null};
    });
  }
  if (issue.code === 'invalid_value' && typeof issue.input === 'string') {
    const near = nearestName(issue.input, issue.values.map(String));
    const value = issue.values.find((candidate) => String(candidate) === near);
    return [{path: issue.at, edit: value === undefined ? null : {value}}];
  }
  const path = isMissing(issue) ? issue.at.slice(0, -1) : issue.at;
  return path.length > 0 ? [{path, edit: null}] : [];
}

function comparePaths(a: YamlPath, b: YamlPath): number {
  for (const [index, step] of a.entries()) {
    const other = b[index];
    if (other === undefined) return 1;
    if (step === other) continue;
    if (typeof step === 'number' && typeof other === 'number') return step - other;
    return String(step) < String(other) ? -1 : 1;
  }
  return a.length - b.length;
}
