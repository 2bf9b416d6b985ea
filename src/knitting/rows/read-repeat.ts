import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import {readExtent} from './read-extent.ts';
import type {Extent, Step} from './row-syntax.ts';
import type {Mark, StepList} from './step-list.ts';

const same = ['same', 'this', 'these', 'in', 'manner', 'way', 'like', 'as', 'before', 'pattern'];
const stars = ['star', 'stars', 'asterisk', 'asterisks'];

/** `rep …`, `continue the same …`, `and so on to the end`, `work from * to *`. */
export function isRepeatWord(cursor: Cursor): boolean {
  if (cursor.is('rep')) return true;
  const next = cursor.peek(1);
  if (cursor.is('continue')) return same.includes(next?.text ?? '') || isExtentAhead(cursor);
  if (cursor.is('on')) return isExtentAhead(cursor);
  const isFrom = next?.text === 'from' || next?.text === 'between';
  return cursor.is('work') && isFrom && (cursor.peek(2)?.kind === 'mark' || isOpening(cursor.peek(2)?.text));
}

function isExtentAhead(cursor: Cursor): boolean {
  const from = cursor.at;
  cursor.at += 1;
  const extent = readExtent(cursor);
  cursor.at = from;
  return extent !== null;
}

/**
 * Reads `rep from * to last 3 sts`, `rep from * 3 more times`, `rep from * to **`, `repeat to the end of the row`.
 * False, and nothing read, when it is something else, such as a bracket's `rep 3 times`.
 */
export function readRepeat(cursor: Cursor, list: StepList): boolean {
  const from = cursor.at;
  cursor.at += 1;
  const isBetween = cursor.is('between');
  cursor.take('from', 'between', 'instruction', 'these', 'st');
  while (cursor.take('1', 'last', 'st', 'in', 'brackets', 'begin', 'of', 'row', ...same));
  const early = readEarlyExtent(cursor);
  const first = readMarkName(cursor);
  const isTo = first !== null && takeTo(cursor);
  // `between *s`: from the one to the other.
  const second = isTo ? readMarkName(cursor) : isBetween ? first : null;
  cursor.take('s');
  const extent = asRepeat(early ?? readPlainOr(cursor));
  const span = cursor.spanFrom(from);

  const open = findOpen(list, first, second);
  if (!open) {
    cursor.complain(
      first === null
        ? `\`${cursor.written(span)}\` has nothing before it to repeat`
        : `\`${cursor.written(span)}\` finds no \`${first}\` before it in the row`,
      'Put the mark, such as `*`, where the repeat begins.',
      span,
    );
    return true;
  }
  const end = second === null ? null : list.marks.findLast((mark) => mark.name === second && mark !== open);
  if (end && end.at < list.steps.length) {
    pushAgain(list, list.steps.slice(open.at, end.at), extent, span);
  } else if (!list.wrap(open.at, 'star', extent) && cursor.isWholeRead) {
    cursor.complain(
      `there is nothing between the mark and \`${cursor.written(span)}\``,
      'Write the stitches of the repeat behind the mark.',
      span,
    );
  }
  list.startClause();
  return true;
}

/** `repeat five times more from *`: how often stands before the mark. */
function readEarlyExtent(cursor: Cursor): Extent | null {
  const from = cursor.at;
  const extent = readExtent(cursor);
  const isMarkBehind = extent !== null && cursor.take('from', 'between') && peekMark(cursor);
  if (!isMarkBehind) cursor.at = from;
  return isMarkBehind ? extent : null;
}

function peekMark(cursor: Cursor): boolean {
  const token = cursor.peek();
  return token?.kind === 'mark' || stars.includes(token?.text ?? '') || isOpening(token?.text);
}

function pushAgain(list: StepList, steps: readonly Step[], extent: Extent, span: Step['span']): void {
  const again: Extent =
    extent.kind === 'more'
      ? {kind: 'times', count: extent.count}
      : extent.kind === 'as fits'
        ? once(span)
        : extent;
  list.push({kind: 'again', steps, extent: again, span});
}

function once(span: Step['span']): Extent {
  return {kind: 'times', count: {values: [1], span}};
}

/** The mark that the repeat goes back to: by name, else the last one, else the start of the row. */
function findOpen(list: StepList, name: string | null, second: string | null): Mark | null {
  const {marks, steps} = list;
  if (name === null) {
    const last = marks.findLast((mark) => mark.at < steps.length);
    return last ?? (steps.length > 0 ? {name: '', at: 0} : null);
  }
  const named = marks.filter((mark) => mark.name === name);
  if (second === name) return named.at(-2) ?? named.at(-1) ?? null;
  return named.findLast((mark) => second !== null || mark.at < steps.length) ?? named.at(-1) ?? null;
}

function takeTo(cursor: Cursor): boolean {
  const isTo = cursor.is('to') || cursor.is('&') || cursor.is('until') || cursor.is('—') || cursor.is('-');
  const next = cursor.peek(1);
  if (!isTo || !(next?.kind === 'mark' || isOpening(next?.text))) return false;
  cursor.at += 1;
  return true;
}

function readMarkName(cursor: Cursor): string | null {
  const token = cursor.peek();
  if (token?.kind === 'mark') {
    cursor.at += 1;
    return token.text;
  }
  if (cursor.take(...stars)) return '*';
  if (isOpening(token?.text) && isClosing(cursor.peek(2)?.text)) {
    const name = cursor.peek(1)?.text ?? null;
    cursor.at += 3;
    return name;
  }
  return null;
}

function readPlainOr(cursor: Cursor): Extent | null {
  while (cursor.is(',') && !cursor.is('&', 1) && readsExtentBehindComma(cursor));
  return readExtent(cursor);
}

/** `rep from *, to end`; a step behind the comma stays unread. */
function readsExtentBehindComma(cursor: Cursor): boolean {
  const from = cursor.at;
  cursor.at += 1;
  const probe = readExtent(cursor);
  cursor.at = probe ? from + 1 : from;
  return probe !== null;
}

/** `rep from * 3 times` leaves open whether the first time is counted; see `readings.ts`. */
function asRepeat(extent: Extent | null): Extent {
  if (extent === null) return {kind: 'as fits'};
  if (extent.kind === 'times') return {kind: 'more', count: extent.count, isPlain: true};
  return extent;
}
