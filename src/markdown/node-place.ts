import type {Node} from 'unist';
import type {Place} from '../diagnostics/finding.ts';
import {fileStart} from '../diagnostics/finding.ts';

/** Where a node of a parsed tree stands in its file. */
export function nodePlace(node: Node): Place {
  if (!node.position) return fileStart;
  const {start, end} = node.position;
  return {line: start.line, column: start.column, endLine: end.line, endColumn: end.column};
}
