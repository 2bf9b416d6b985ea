import {isAlias, isMap, isPair, isScalar, isSeq, type Node, type Scalar, type YAMLMap} from 'yaml';
import type {PlaceNode, Range} from './place-tree.ts';

interface PlainProblem {
  readonly message: string;
  readonly hint: string;
  readonly range: Range;
}

export interface PlainDocument {
  readonly value: unknown;
  readonly root: PlaceNode;
  readonly problems: readonly PlainProblem[];
}

type Plain = {readonly value: unknown; readonly node: PlaceNode};

/** How far before a value its tag and anchor are looked for. */
const longestMark = 200;

/** Keys with a meaning of their own in JavaScript objects or in YAML 1.1. */
const refusedKeys = new Set(['__proto__', 'constructor', 'prototype', '<<']);

/** Turns the library's nodes into plain values and places. What is refused is left out of the value. */
export function toPlain(contents: Node | null, source: string): PlainDocument {
  const problems: PlainProblem[] = [];
  const report = (range: Range, message: string, hint: string) => problems.push({message, hint, range});

  function convert(node: unknown, key: Range | null): Plain {
    const none: Plain = {
      value: null,
      node: {key, value: null, slice: null, children: new Map(), isList: false},
    };
    if (isAlias(node)) {
      report(
        rangeOf(node),
        `\`*${node.source}\` points to another value`,
        'Write the value itself; text that begins with `*` goes between quotes.',
      );
      return none;
    }
    if (isScalar(node) || isMap(node) || isSeq(node)) refuseProperties(node);
    if (isScalar(node)) return {value: plainScalar(node), node: scalarPlaces(node, key, source)};
    if (isMap(node)) return convertMap(node, key);
    if (!isSeq(node)) return none;
    const entries = node.items.map((item) => convert(isPair(item) ? item.value : item, null));
    const children = new Map(entries.map((entry, index) => [index, entry.node]));
    return {
      value: entries.map((entry) => entry.value),
      node: {key, value: rangeOf(node), slice: null, children, isList: true},
    };
  }

  function convertMap(map: YAMLMap, ownKey: Range | null): Plain {
    const value: Record<string, unknown> = Object.create(null);
    const children = new Map<string, PlaceNode>();
    for (const pair of map.items) {
      if (!isScalar(pair.key)) {
        const range =
          isMap(pair.key) || isSeq(pair.key) || isAlias(pair.key) ? rangeOf(pair.key) : rangeOf(map);
        report(
          range,
          'a field has a list instead of a name',
          'Write a name, a colon and a space before each value.',
        );
        continue;
      }
      const range = rangeOf(pair.key);
      const name = nameOf(pair.key);
      const first = children.get(name)?.key;
      if (name === '') {
        report(
          range,
          'a colon stands without a field name before it',
          'Write the name of the field before the colon.',
        );
      } else if (refusedKeys.has(name)) {
        report(range, `\`${name}\` cannot be the name of a field`, 'Take this line out.');
      } else if (first) {
        report(range, `\`${name}\` is written twice; the first one is used`, 'Keep one of the two.');
      } else {
        refuseProperties(pair.key);
        const entry = convert(pair.value, range);
        value[name] = entry.value;
        children.set(name, entry.node);
      }
    }
    return {value, node: {key: ownKey, value: rangeOf(map), slice: null, children, isList: false}};
  }

  function refuseProperties(node: Node): void {
    const {start} = rangeOf(node);
    const offset = Math.max(0, start - longestMark);
    const before = source.slice(offset, start).trimEnd();
    if (node.tag !== undefined) {
      const mark = /!\S*$/.exec(before.replace(/\s*&\S+$/, ''));
      report(
        mark ? {start: offset + mark.index, end: offset + mark.index + mark[0].length} : rangeOf(node),
        'an exclamation mark gives this value a type of its own',
        'Take the mark out; text that begins with `!` goes between quotes.',
      );
    }
    if ('anchor' in node && node.anchor !== undefined) {
      const mark = before.lastIndexOf(`&${node.anchor}`);
      report(
        mark < 0 ? rangeOf(node) : {start: offset + mark, end: offset + mark + node.anchor.length + 1},
        `\`&${node.anchor}\` gives this value a name of its own`,
        'Take the mark out; text that begins with `&` goes between quotes.',
      );
    }
  }

  const {value, node} = convert(contents, null);
  return {value, root: node, problems};
}

/**
 * The text where a mark such as `!!binary`, which is reported, would make something else of it, and for digits that a
 * number would not keep, as in the candidate's number `0417` or volume `1.10`.
 */
function plainScalar({value, source}: Scalar): unknown {
  if (
    typeof value === 'number' &&
    source !== undefined &&
    /^[\d.]+$/.test(source) &&
    source !== String(value)
  )
    return source;
  return typeof value === 'object' && value !== null ? (source ?? null) : (value ?? null);
}

function scalarPlaces(node: Scalar, key: Range | null, source: string): PlaceNode {
  const range = rangeOf(node);
  // A number is a slice of the file only where it is written as it is counted, `1` and not `01`.
  const text = String(plainScalar(node) ?? '');
  const candidates = [range, {start: range.start + 1, end: range.end - 1}];
  const slice = candidates.find(({start, end}) => source.slice(start, end) === text) ?? null;
  return {key, value: range.start === range.end ? null : range, slice, children: new Map(), isList: false};
}

/** A plain key as it is written, so that `01` stays `01`. */
function nameOf(key: Scalar): string {
  return typeof key.value === 'string' ? key.value : (key.source ?? '');
}

function rangeOf(node: Node): Range {
  const [start, end] = node.range ?? [0, 0];
  return {start, end};
}
