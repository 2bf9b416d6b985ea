import type {Place} from '../../diagnostics/finding.ts';
import {type ProvedPattern, proveRows} from '../../knitting/rows/prove-rows.ts';
import {type ReadRows, readRows} from '../../knitting/rows/read-rows.ts';
import type {Binder, Item} from '../../model/binder.ts';
import type {Problem, Span} from '../../support/result.ts';
import type {Fault} from '../define-rule.ts';

type Block = Item['body']['blocks'][number];

export interface RowBlock {
  readonly item: Item;
  readonly block: Block;
  readonly read: ReadRows;
  readonly proved: () => ProvedPattern;
}

/** By block, which never changes: several rules ask for the same, and a preview asks again after every save. */
const known = new WeakMap<Block, Pick<RowBlock, 'read' | 'proved'>>();

/** Every block of written rows in the binder, read. */
export function rowBlocks(binder: Binder): readonly RowBlock[] {
  return binder.items.flatMap((item) =>
    item.body.blocks
      .filter(({language}) => language === 'rows')
      .map((block) => ({item, block, ...readOnce(block)})),
  );
}

function readOnce(block: Block): Pick<RowBlock, 'read' | 'proved'> {
  const before = known.get(block);
  if (before) return before;
  const read = readRows(block.text);
  let proof: ProvedPattern | null = null;
  const proved = () => {
    proof ??= proveRows(read.pattern);
    return proof;
  };
  known.set(block, {read, proved});
  return {read, proved};
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
