import type {Place} from '../../diagnostics/finding.ts';
import {proofOf as proofOfRows, rowsOf} from '../../knitting/rows/known-rows.ts';
import {nameSlipOfLaw, nameSlips} from '../../knitting/rows/name-slips.ts';
import {proveForEveryMultiple} from '../../knitting/rows/prove-for-every-multiple.ts';
import type {ReadRows} from '../../knitting/rows/read-rows.ts';
import type {Binder, Item} from '../../model/binder.ts';
import type {Problem, Span} from '../../support/result.ts';
import type {Fault} from '../define-rule.ts';

type Block = Item['body']['blocks'][number];

export interface RowBlock {
  readonly item: Item;
  readonly block: Block;
  readonly read: ReadRows;
  /** Where the rows do not add up as they are written. */
  readonly countProblems: () => readonly Problem[];
  /** Where rows that add up as written do not for every number of repeats of a stated multiple; null when they do. */
  readonly lawProblem: () => Problem | null;
}

type Proof = Pick<RowBlock, 'read' | 'countProblems' | 'lawProblem'>;

/** By block, which never changes: several rules ask for the same, and a preview asks again after every save. */
const known = new WeakMap<Block, Proof>();

/** Every block of written rows in the binder, read. */
export function rowBlocks(binder: Binder): readonly RowBlock[] {
  return binder.items.flatMap((item) =>
    item.body.blocks
      .filter(({language}) => language === 'rows')
      .map((block) => ({item, block, ...proofOf(block)})),
  );
}

function proofOf(block: Block): Proof {
  const before = known.get(block);
  if (before) return before;
  const read = rowsOf(block);
  const {pattern, problems} = read;
  const countProblems = once(() => nameSlips(pattern, proofOfRows(pattern).problems));
  const lawProblem = once(() => {
    if (pattern.header.multiple === null || problems.length > 0 || countProblems().length > 0) return null;
    const {firstFailure} = proveForEveryMultiple(pattern);
    return firstFailure && nameSlipOfLaw(pattern, firstFailure.problem);
  });
  const proof = {read, countProblems, lawProblem};
  known.set(block, proof);
  return proof;
}

function once<T>(compute: () => T): () => T {
  let found: {readonly value: T} | null = null;
  return () => {
    found ??= {value: compute()};
    return found.value;
  };
}

/** A problem of a block as a fault at its words in the file. */
export function blockFault(
  {item, block}: Pick<RowBlock, 'item' | 'block'>,
  {message, hint, span}: Problem,
): Fault {
  return {file: item.file, place: placeInBlock(block, span), message, hint};
}

/** The lines of a block stand one below the other, each shifted by the list or quote around it. */
function placeInBlock({text, place, linePlaces}: Block, span: Span): Place {
  const start = positionIn(text, span.start);
  const end = positionIn(text, span.end);
  const first = linePlaces[start.line];
  const last = linePlaces[end.line];
  if (!first || !last) return place;
  return {
    line: first.line,
    column: first.column + start.column,
    endLine: last.line,
    endColumn: last.column + end.column,
  };
}

function positionIn(text: string, offset: number): {readonly line: number; readonly column: number} {
  const before = text.slice(0, offset).split('\n');
  return {line: before.length - 1, column: before.at(-1)?.length ?? 0};
}
