import type {Problem, Span} from '../../support/result.ts';
import type {Side} from './face.ts';
import {type LinearForm, showForm} from './linear-form.ts';
import type {RowLoop, RowTurn} from './row-order.ts';
import type {RowLabel} from './row-syntax.ts';

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

/** Rows repeated for the pattern that do not end with the count they began with. */
export function notReturned(first: RowTurn, start: LinearForm, now: LinearForm, span: Span): Problem {
  return {
    message: `\`${labelOf(first)}\` first finds ${showForm(start)} stitches and, after the rows to be repeated, ${showForm(now)}`,
    hint: 'Rows that are repeated for the pattern must end with the count they began with; check the increases and decreases, or say how often they are repeated.',
    span,
  };
}

/** A label that names the side on which the row cannot be worked. */
export function wrongSide(label: RowLabel, side: Side, isRound: boolean): Problem {
  return {
    message: `\`${label.text}\` is worked on the ${side}, not the ${side === 'RS' ? 'WS' : 'RS'}`,
    hint: isRound
      ? 'In the round every row is a right-side row, unless the work was turned.'
      : 'Right-side and wrong-side rows alternate; check the label and that no row is missing before it.',
    span: label.sideSpan ?? label.span,
  };
}

/** The last words of the row: where it fails when stitches are left over. */
export function endOf({row}: RowTurn): Span {
  return row.steps.at(-1)?.span ?? row.span;
}
