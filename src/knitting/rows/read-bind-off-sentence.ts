import type {Cursor} from './cursor.ts';
import type {RowLabel} from './row-syntax.ts';

/** The label of a bind-off that was written without one. */
export const bindOffLabel = 'bind-off';

const openings = [['bind', 'off'], ['cast', 'off'], ['bo']];

/**
 * `Bind off 24 sts.` on a line of its own, behind a row that has come to its end, is the next row, though it has no
 * label. Gives the label it would have, and reads nothing: the words are the row's own.
 */
export function readBindOffSentence(cursor: Cursor): RowLabel | null {
  const {tokens} = cursor.reading;
  const first = tokens[cursor.at];
  const before = tokens[cursor.at - 1];
  if (!first?.startsLine || (before !== undefined && !/^[.)\]]$/.test(before.text))) return null;
  const isBindOff = openings.some((words) => words.every((word, index) => cursor.is(word, index)));
  if (!isBindOff) return null;
  const span = {start: first.start, end: first.end};
  return {
    text: bindOffLabel,
    span,
    isRound: false,
    ranges: [],
    every: null,
    side: null,
    sideSpan: null,
    says: null,
    isPaired: false,
    colour: null,
  };
}
