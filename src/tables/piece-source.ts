import type {UnitOrder} from '../knitting/format-quantity.ts';
import type {NamedPiece} from '../knitting/pieces/join-pieces.ts';
import type {PieceGauge} from '../knitting/pieces/piece-syntax.ts';
import {readPiece} from '../knitting/pieces/read-piece.ts';
import {workPiece} from '../knitting/pieces/work-piece.ts';
import {type Binder, type Item, itemsById} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {failure, type Problem, type Result, success} from '../support/result.ts';
import {unreadable} from './attribute-readers.ts';
import {type NamedGauge, readGauge} from './read-gauge.ts';

/** A piece of an item, read, worked and proved. */
export interface PieceOfItem extends NamedPiece {
  readonly stitchGauge: NamedGauge<'stitches'>;
  readonly rowGauge: NamedGauge<'rows'>;
}

/** A block by its name or its number among the item's `piece` blocks; null asks for the only one. */
export function pieceOfItem(binder: Binder, item: Item, wanted: string | null): Result<PieceOfItem> {
  const order = binder.settings.units;
  const blocks = item.body.blocks
    .filter(({language}) => language === 'piece')
    .map(({text}) => ({text, ...readPiece(text)}));
  const names = blocks.map(({piece}, index) => piece.name ?? `${index + 1}`);
  const index = wanted === null ? (blocks.length === 1 ? 0 : -1) : findBlock(names, wanted);
  const block = blocks[index];
  if (!block) return noSuchPiece(item, names, wanted);
  const name = names[index] ?? '';
  if (block.problems.length > 0)
    return failure(...block.problems.map((problem) => inLine(problem, block.text, name)));
  const {gauge} = block.piece;
  if (!gauge) {
    return unreadable(
      `piece \`${name}\` does not say its gauge`,
      'Write a line such as `gauge: 22 sts and 30 rows over 10 cm`, or `gauge of: S-07` to take it from a measured item.',
    );
  }
  const stitches = gaugeFor('stitches', gauge, binder, order);
  if (!stitches.ok) return stitches;
  const rows = gaugeFor('rows', gauge, binder, order);
  if (!rows.ok) return rows;
  const gauges = {stitches: stitches.value.summary.mean, rows: rows.value.summary.mean};
  const worked = workPiece(block.piece, gauges.rows);
  if (worked.problems.length > 0)
    return failure(...worked.problems.map((problem) => inLine(problem, block.text, name)));
  if (worked.panels.length === 0) {
    return unreadable(`piece \`${name}\` has no steps`, 'Begin with a line such as `cast on 98`.');
  }
  return success({name, worked, gauges, stitchGauge: stitches.value, rowGauge: rows.value});
}

function gaugeFor<U extends 'stitches' | 'rows'>(
  unit: U,
  gauge: PieceGauge,
  binder: Binder,
  order: UnitOrder,
): Result<NamedGauge<U>> {
  if (gauge.kind === 'written')
    return readGauge(unit, {name: 'gauge', counts: gauge[unit], item: null}, order);
  const items = itemsById(binder);
  const item = items.get(gauge.id);
  if (item) return readGauge(unit, {name: 'gauge', counts: null, item}, order);
  const near = nearestName(gauge.id, items.keys());
  return unreadable(
    `no item answers the requirement \`${gauge.id}\``,
    near
      ? `Write \`gauge of: ${near}\` if that is what was meant.`
      : 'Write the id of a measured item, such as `gauge of: S-07`.',
  );
}

function findBlock(names: readonly string[], wanted: string): number {
  const named = names.findIndex((name) => name.toLowerCase() === wanted.trim().toLowerCase());
  return named >= 0 ? named : /^\d{1,3}$/.test(wanted.trim()) ? Number(wanted) - 1 : -1;
}

function noSuchPiece(item: Item, names: readonly string[], wanted: string | null): Result<never> {
  if (names.length === 0) {
    return unreadable(
      `\`${item.id}\` has no \`piece\` block`,
      'Write the steps of the piece in a fenced block whose first line is three tildes and `piece`.',
    );
  }
  const near = wanted === null ? null : nearestName(wanted, names);
  const known = englishList(names.map((name) => `\`${name}\``));
  return wanted === null
    ? unreadable(
        `\`${item.id}\` has more than one piece`,
        `Write the name of one, such as \`::piece{name="${names[0]}"}\`.`,
      )
    : unreadable(
        `\`${item.id}\` has no piece \`${wanted}\``,
        near ? `Write \`${near}\` if that is what was meant.` : `Its pieces are ${known}.`,
      );
}

/** Says which line of the block it is about. */
function inLine({message, hint, span}: Problem, text: string, name: string): Problem {
  const line = text.slice(span.start, span.end);
  const shown = line.length > 60 ? `${line.slice(0, 60)}…` : line;
  const where = message.startsWith(`\`${shown}\``)
    ? `in piece \`${name}\``
    : `in piece \`${name}\`, at \`${shown}\``;
  return {message: `${where}, ${message}`, hint, span};
}
