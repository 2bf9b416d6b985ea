import {type ProvedPattern, proveRows} from './prove-rows.ts';
import {type ReadRows, readRows} from './read-rows.ts';
import type {WrittenPattern} from './row-syntax.ts';

const read = new WeakMap<object, ReadRows>();
const proved = new WeakMap<WrittenPattern, ProvedPattern>();

/**
 * What a block of written rows says, read once however many ask: rules, charts and keys do, and a preview after every
 * save. By the block itself, which must never change.
 */
export function rowsOf(block: {readonly text: string}): ReadRows {
  const known = read.get(block) ?? readRows(block.text);
  read.set(block, known);
  return known;
}

/** The counts of rows as they are written, not planned; proved once for all who ask. By the pattern, which must never change. */
export function proofOf(pattern: WrittenPattern): ProvedPattern {
  const known = proved.get(pattern) ?? proveRows(pattern);
  proved.set(pattern, known);
  return known;
}
