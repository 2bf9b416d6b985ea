import type {Place} from '../diagnostics/finding.ts';
import type {Places, YamlPath} from './places.ts';

/** Offsets in the text that was parsed, the end exclusive. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** A value of a YAML document with where it and its key stand, and the same for everything inside it. */
export interface PlaceNode {
  /** Null for list entries and the document itself. */
  readonly key: Range | null;
  /** Null when nothing is written, as in `colour:` with an empty rest of line. */
  readonly value: Range | null;
  /** Where the characters of a scalar stand one by one; null when its value is not a slice of the file. */
  readonly slice: Range | null;
  readonly children: ReadonlyMap<string | number, PlaceNode>;
  readonly isList: boolean;
}

/** Places looked up in `root`; `placeOf` turns offsets into lines and columns. */
export function placesIn(root: PlaceNode, placeOf: (range: Range) => Place): Places {
  return {
    has: (path) => nodesAlong(root, path).length === path.length + 1,
    key(path) {
      const nodes = nodesAlong(root, path);
      const node = nodes.at(-1) ?? root;
      return nodes.length === path.length + 1 && node.key ? placeOf(node.key) : placeOf(headOf(nodes, root));
    },
    value(path) {
      const nodes = nodesAlong(root, path);
      const node = nodes.at(-1) ?? root;
      const exists = nodes.length === path.length + 1;
      return placeOf(exists && node.value ? node.value : headOf(nodes, root));
    },
    within(path, start, end) {
      const nodes = nodesAlong(root, path);
      const slice = nodes.length === path.length + 1 ? nodes.at(-1)?.slice : null;
      if (!slice) return this.value(path);
      const limit = (offset: number) => Math.min(Math.max(slice.start + offset, slice.start), slice.end);
      return placeOf({start: limit(start), end: Math.max(limit(start), limit(end))});
    },
  };
}

/** The nodes from the root towards `path`, as far as they exist. */
function nodesAlong(root: PlaceNode, path: YamlPath): readonly PlaceNode[] {
  const nodes = [root];
  for (const step of path) {
    const last = nodes.at(-1);
    // Where one value or a list of them may stand, a single value is its own first entry.
    const next = step === 0 && last && !last.isList ? last : last?.children.get(step);
    if (!next) break;
    nodes.push(next);
  }
  return nodes;
}

/** The shortest thing that stands for the last of `nodes`: its key, or what a list entry begins with, or the document's first character. */
function headOf(nodes: readonly PlaceNode[], root: PlaceNode): Range {
  const node = nodes.at(-1) ?? root;
  if (node.key) return node.key;
  if (nodes.length < 2) return {start: 0, end: 0};
  const first = node.children.values().next().value;
  return first?.key ?? node.value ?? headOf(nodes.slice(0, -1), root);
}
