import {type Result, success} from '../../support/result.ts';
import {cannotWork} from '../cannot-work.ts';
import {Fraction} from '../fraction.ts';
import {type Millimetres, millimetres} from '../units.ts';
import {lengthAlong, type PieceGauges, type PlacedPoint, placePoint} from './piece-outline.ts';
import type {Panel, PieceMark, Point, WorkedPiece} from './worked-piece.ts';

export interface NamedPiece {
  readonly name: string;
  readonly worked: WorkedPiece;
  readonly gauges: PieceGauges;
}

/** Two edges that are sewn together. */
export interface JoinCheck {
  readonly what: 'side seam' | 'shoulder' | 'cap and armhole';
  readonly one: Millimetres;
  readonly other: Millimetres;
  /** One less other. */
  readonly off: Millimetres;
  readonly meets: boolean;
}

/** Straight seams may differ by this much. Common practice, no source. */
export const seamTolerance: Millimetres = millimetres(5);

/** A cap may be this much longer than its armhole, into which it is eased, and not shorter. Common practice, no source. */
export const capEase: Millimetres = millimetres(25);

/**
 * Body against body: side seam from the foot to the mark `underarm`, shoulder from the mark `shoulder` to the end of that
 * edge. Two neighbours that are bodies, with a piece that has no mark `shoulder` and so is a sleeve: its cap, both edges
 * above `underarm` and the top, against one armhole of each. Right edges are measured.
 */
export function joinPieces(piece: NamedPiece, others: readonly NamedPiece[]): Result<readonly JoinCheck[]> {
  const unmarked = [piece, ...others].find((one) => !markOf(one, 'underarm'));
  if (unmarked) return missingMark(unmarked.name, 'underarm');
  const isSleeve = !markOf(piece, 'shoulder');
  const open = others.find((other) => !markOf(other, 'shoulder'));
  if (open) return missingMark(open.name, 'shoulder');
  if (isSleeve) {
    const cap = capLength(piece);
    const armhole = total(others.map((other) => betweenMarks(other, 'underarm', 'shoulder')));
    const off = millimetres(cap.minus(armhole));
    const meets = off.compare(Fraction.zero) >= 0 && off.compare(capEase) <= 0;
    return success([{what: 'cap and armhole', one: cap, other: armhole, off, meets}]);
  }
  return success(
    others.flatMap((other) => [
      compare('side seam', betweenMarks(piece, null, 'underarm'), betweenMarks(other, null, 'underarm')),
      compare('shoulder', betweenMarks(piece, 'shoulder', null), betweenMarks(other, 'shoulder', null)),
    ]),
  );
}

function compare(what: JoinCheck['what'], one: Millimetres, other: Millimetres): JoinCheck {
  const off = millimetres(one.minus(other));
  return {what, one, other, off, meets: off.absolute().compare(seamTolerance) <= 0};
}

function capLength(piece: NamedPiece): Millimetres {
  const edge = betweenMarks(piece, 'underarm', null);
  const panel = piece.worked.panels[markOf(piece, 'underarm')?.panel ?? 0];
  const [left, right] = [panel?.base.left.at(-1), panel?.base.right.at(-1)];
  const top =
    panel && left && right
      ? lengthAlong([left, right].map((point) => placed(point, piece, panel)))
      : millimetres(0);
  return total([edge, edge, top]);
}

/** Along the right edge; from its foot, or to its end, where no mark is named. */
function betweenMarks(piece: NamedPiece, from: string | null, to: string | null): Millimetres {
  const mark = markOf(piece, from ?? to ?? '');
  const panel = piece.worked.panels[mark?.panel ?? 0];
  if (!panel) return millimetres(0);
  const edge = [...panel.base.right, ...(panel.parts[0]?.right ?? [])];
  const start = from === null ? 0 : indexOf(edge, markOf(piece, from));
  const end = to === null ? edge.length - 1 : indexOf(edge, markOf(piece, to));
  return lengthAlong(edge.slice(start, end + 1).map((point) => placed(point, piece, panel)));
}

function indexOf(edge: readonly Point[], mark: PieceMark | undefined): number {
  return edge.findLastIndex(({x, row}) => row === mark?.row && x === mark.rightX);
}

/** The mark on the base, or on the part at the right. */
function markOf({worked}: NamedPiece, name: string): PieceMark | undefined {
  return worked.marks.find((mark) => mark.name === name && (mark.part === null || mark.part === 0));
}

function placed(point: Point, {gauges}: NamedPiece, panel: Panel): PlacedPoint {
  return placePoint(point, gauges, panel);
}

function total(lengths: readonly Millimetres[]): Millimetres {
  return millimetres(lengths.reduce<Fraction>((sum, length) => sum.plus(length), Fraction.zero));
}

function missingMark(name: string, mark: string): Result<never> {
  return cannotWork(
    `\`${name}\` has no mark \`${mark}\` to measure from`,
    `Write \`mark the ${mark}\` in its block, below the last step before it.`,
  );
}
