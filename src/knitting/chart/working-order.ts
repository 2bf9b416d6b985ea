import {writeSteps} from '../rows/write-rows.ts';
import type {ChartCell, ChartRow, ChartTurn} from './chart-grid.ts';

/** What is worked in one square, in the words of written rows. */
export function cellText({step}: ChartCell): string {
  if (step?.kind !== 'work' || step.isDoubtful) return step ? writeSteps([step]) : '';
  const {abbreviation} = step.stitch.names.american;
  return step.yarn ? `${abbreviation} wyi${step.yarn === 'front' ? 'f' : 'b'}` : abbreviation;
}

/** The stitches of a row in the order in which they are worked, and those of its repeat, `to` exclusive. */
export interface WorkingOrder {
  readonly cells: readonly ChartCell[];
  readonly repeat: {readonly from: number; readonly to: number} | null;
  /** How the work is turned before the last stitches, which are left on the needle; null where none are. */
  readonly turn: ChartTurn | null;
}

export function inWorkingOrder({cells, side, repeat, isSound, turn}: ChartRow): WorkingOrder {
  let square = 0;
  const placed = cells.map((cell) => {
    const at = square;
    square += cell.squares;
    return {cell, isRepeated: repeat !== null && at >= repeat.from && at < repeat.to};
  });
  const ordered = (side === 'RS' ? placed.toReversed() : placed).filter(
    ({cell}) => cell.kind !== 'no stitch',
  );
  const worked = ordered.filter(({cell}) => cell.kind === 'worked');
  const from = worked.findIndex(({isRepeated}) => isRepeated);
  const to = worked.findLastIndex(({isRepeated}) => isRepeated) + 1;
  return {
    cells: worked.map(({cell}) => cell),
    repeat: from < 0 ? null : {from, to},
    turn: isSound && ordered.at(-1)?.cell.kind === 'unworked' ? (turn ?? 'plain') : null,
  };
}
