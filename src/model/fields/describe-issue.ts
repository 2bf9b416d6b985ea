import type * as z from 'zod';
import {englishList} from '../../support/english-list.ts';
import {nearestName} from '../../support/nearest-name.ts';
import type {YamlPath} from '../../yaml/places.ts';
import type {FlatIssue} from './flat-issues.ts';
import {descriptionAt, knownNames} from './schema-at.ts';

/** What is wrong with a value, in the author's words. `part` is the faulty part of a text, by offsets. */
export interface ValueFault {
  readonly message: string;
  readonly hint: string;
  readonly expected?: readonly string[];
  readonly part?: {readonly start: number; readonly end: number};
}

/** Words for an issue about a value that is there. */
export function describeValue(issue: FlatIssue, schema: z.ZodType): ValueFault {
  const field = fieldName(issue.at);
  const shown = nounOf(issue.input);
  const description = descriptionAt(schema, issue.at);
  const asDescribed = `Write ${description ?? article('expected' in issue ? issue.expected : '')}.`;
  switch (issue.code) {
    case 'invalid_value': {
      const values = issue.values.map(String);
      const near = typeof issue.input === 'string' ? nearestName(issue.input, values) : null;
      const sort = issue.values.every((value) => typeof value === 'number') ? 'numbers' : 'words';
      return {
        message: `${field} is ${shown}, which is not one of the ${sort} that can stand here`,
        hint: `Write ${near === null ? `one of ${quotedList(values, 'or')}` : `\`${near}\``}.`,
        expected: near === null ? values : [near],
      };
    }
    case 'too_big':
      return {
        message: `${field} is ${shown}, and the most is \`${issue.maximum}\``,
        hint: asDescribed,
      };
    case 'too_small':
      return {
        message: `${field} is ${shown}, and the least is \`${issue.minimum}\``,
        hint: asDescribed,
      };
    case 'invalid_type':
      return {
        message: isBareNumber(issue)
          ? `${field} is the bare number ${shown}`
          : `${field} is ${shown}, which is not ${article(issue.expected)}`,
        hint: hintForType(issue, schema) ?? asDescribed,
      };
    case 'custom':
      if (typeof issue.params?.hint === 'string') {
        const {hint, start, end} = issue.params;
        const part = typeof start === 'number' && typeof end === 'number' ? {part: {start, end}} : {};
        return {message: issue.message, hint, ...part};
      }
      return {message: `${field} is ${shown}, which cannot be`, hint: sentence(issue.message)};
    case 'invalid_format':
      return {
        message: `${field} is ${shown}, which is not ${description ?? 'written as expected'}`,
        hint: sentence(issue.message),
      };
    default:
      return {message: `${field} is ${shown}, which cannot be read`, hint: asDescribed};
  }
}

/** Words for a name that the schema does not know in the group at `path`. */
export function describeUnknownName(name: string, schema: z.ZodType, path: YamlPath): ValueFault {
  const known = knownNames(schema, path);
  const near = nearestName(name, known);
  const group = path.findLast((step) => typeof step === 'string');
  const hint = near
    ? `Write \`${near}\`, or take the field out.`
    : `Take it out, or use one of ${quotedList(known, 'and')}.`;
  return {
    message:
      group === undefined ? `\`${name}\` is not a field here` : `\`${name}\` is not a field of \`${group}\``,
    hint: known.length === 0 ? 'Take it out.' : hint,
    ...(near ? {expected: [near]} : {}),
  };
}

export function describeMissing(issue: FlatIssue, schema: z.ZodType): ValueFault {
  const name = issue.at.findLast((step) => typeof step === 'string') ?? 'a value';
  const description = descriptionAt(schema, issue.at);
  return {
    message: `\`${name}\` is missing`,
    hint: `Add \`${name}:\` and ${description ?? 'its value'}.`,
  };
}

function hintForType(issue: FlatIssue & {code: 'invalid_type'}, schema: z.ZodType): string | null {
  if (issue.expected === 'array')
    return 'Write a list: entries between `[` and `]` with commas, or each on a line of its own after a hyphen and a space.';
  if (issue.expected === 'object' || issue.expected === 'record') {
    const names = knownNames(schema, issue.at);
    return `Write its fields on the lines below it, indented${names.length > 0 ? `: ${quotedList(names, 'and')}` : ''}.`;
  }
  if (isBareNumber(issue) && descriptionAt(schema, issue.at) === null) {
    return `Put it between quotes: \`"${issue.input}"\`.`;
  }
  return null;
}

function isBareNumber(issue: FlatIssue): boolean {
  return issue.code === 'invalid_type' && issue.expected === 'string' && typeof issue.input === 'number';
}

function fieldName(path: YamlPath): string {
  const name = path.findLast((step) => typeof step === 'string');
  if (name === undefined) return 'this';
  return typeof path.at(-1) === 'number' ? `an entry of \`${name}\`` : `\`${name}\``;
}

function nounOf(value: unknown): string {
  if (value === null || value === undefined) return 'empty';
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' ? 'a group of fields' : `\`${String(value).slice(0, 60)}\``;
}

function article(expected: string): string {
  const nouns: Readonly<Record<string, string>> = {
    string: 'text',
    number: 'a number',
    int: 'a whole number',
    boolean: '`true` or `false`',
    array: 'a list',
    object: 'a group of fields',
    record: 'a group of fields',
  };
  return nouns[expected] ?? 'what is expected here';
}

function quotedList(names: readonly string[], conjunction: 'and' | 'or'): string {
  return englishList(
    names.map((name) => `\`${name}\``),
    conjunction,
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/, '')}.`;
}
