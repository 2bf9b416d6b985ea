import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {failure, type Problem, type Result, success} from '../support/result.ts';
import type {Table} from './define-table.ts';

/** How one attribute is read. Its text stands between the quotes; problems' spans are ignored. */
export interface Attribute<T> {
  readonly needed: boolean;
  /** The value when the attribute is not written. */
  readonly otherwise: T;
  read(text: string, binder: Binder): Result<T>;
}

export type Reader<T> = (text: string, binder: Binder) => Result<T>;

/** `null` stands for what was not written. */
export function optional<T>(read: Reader<T>): Attribute<T | null> {
  return {needed: false, otherwise: null, read};
}

export function withDefault<T>(read: Reader<T>, otherwise: T): Attribute<T> {
  return {needed: false, otherwise, read};
}

/** Without it nothing is computed. */
export function required<T>(read: Reader<T>): Attribute<T> {
  // Never used: a needed attribute that is not written is a problem before its value is looked at.
  return {needed: true, otherwise: undefined as T, read};
}

type Spec = Readonly<Record<string, Attribute<unknown>>>;
export type ValuesOf<S extends Spec> = {
  readonly [K in keyof S]: S[K] extends Attribute<infer T> ? T : never;
};

/** A table computed from what its directive says, such as `::cast-on{width="48 cm" gauge="20 over 10 cm"}`. */
export function arithmeticTable<S extends Spec>(definition: {
  readonly id: string;
  readonly summary: string;
  readonly example: string;
  readonly attributes: S;
  readonly compute: (values: ValuesOf<S>, binder: Binder, item: Item) => Result<ComputedTable>;
}): Table {
  const {id, summary, example, attributes, compute} = definition;
  return {
    id,
    summary,
    attributes: {names: Object.keys(attributes), example},
    compute(binder, item, written) {
      const values = readAttributes(definition, written, binder);
      const result = values.ok ? compute(values.value, binder, item) : values;
      return result.ok ? result.value : {content: [], problems: result.problems.map(withoutSpan)};
    },
  };
}

/** All problems at once: what is not known, what is missing, what cannot be read. */
function readAttributes<S extends Spec>(
  {id, example, attributes}: {readonly id: string; readonly example: string; readonly attributes: S},
  written: Readonly<Record<string, string>>,
  binder: Binder,
): Result<ValuesOf<S>> {
  const names = Object.keys(attributes);
  const problems: Problem[] = Object.keys(written)
    .filter((name) => !names.includes(name))
    .map((name) => unknown(id, name, names));
  const values: Record<string, unknown> = {};
  for (const [name, attribute] of Object.entries(attributes)) {
    const text = Object.hasOwn(written, name) ? written[name] : undefined;
    if (text === undefined) {
      if (attribute.needed) problems.push(missing(id, name, example));
      values[name] = attribute.otherwise;
      continue;
    }
    const result = attribute.read(text, binder);
    if (result.ok) values[name] = result.value;
    else problems.push(...result.problems.map((problem) => unreadable(name, problem)));
  }
  // The loop has put a value of the attribute's own type under every name of `attributes`.
  return problems.length > 0 ? failure(...problems) : success(values as ValuesOf<S>);
}

function unknown(id: string, name: string, names: readonly string[]): Problem {
  const near = nearestName(name, names);
  return {
    message: `\`::${id}\` knows no \`${name}\``,
    hint: near
      ? `Write \`${near}\` if that is what was meant.`
      : `It reads ${englishList(names.map((known) => `\`${known}\``))}.`,
    span: nowhere,
  };
}

function missing(id: string, name: string, example: string): Problem {
  return {
    message: `\`::${id}\` needs \`${name}\``,
    hint: `Write it between the braces, such as \`${example}\`.`,
    span: nowhere,
  };
}

function unreadable(name: string, problem: Problem): Problem {
  return {...problem, message: `in \`${name}\`, ${problem.message}`};
}

function withoutSpan({message, hint}: Problem): Omit<Problem, 'span'> {
  return {message, hint};
}

const nowhere = {start: 0, end: 0};
