import type {Problem, Span} from '../../support/result.ts';
import type {RowLoop, RowTurn} from './row-order.ts';

/** `Row 5` of `Rows 3–8`; a label without a number as it is written. */
export function labelOf({row, number, isRound}: RowTurn): string {
  return number === null ? row.label.text : `${isRound ? 'Rnd' : 'Row'} ${number}`;
}

/** `rep … until 8 sts remain` that passes the number by. */
export function neverReached(loop: RowLoop, sought: number, span: Span): Problem {
  return {
    message: `repeating the rows never leads to ${sought} stitches`,
    hint: `Check the decreases or increases of the ${loop.turns.length} rows, and the number of stitches at which to stop.`,
    span,
  };
}
