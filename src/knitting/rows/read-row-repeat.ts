import type {Cursor} from './cursor.ts';
import {readStated} from './read-stated.ts';
import type {NumberRange, RowLabel, RowRepeat} from './row-syntax.ts';

const articles = [
  'these',
  'this',
  'both',
  'last',
  'all',
  'from',
  'pattern',
  'previous',
  'preceding',
  'same',
  'as',
  'for',
  'above',
];

/**
 * Reads `Rep rows 1–8 for pattern`, `repeat from the second row`, `rep the last 2 rows 3 more times`, `as row 1`,
 * `all the rows are the same`. Null, and nothing read, when no such sentence begins here.
 */
export function readRowRepeat(cursor: Cursor, label: RowLabel | null): RowRepeat | null {
  const from = cursor.at;
  const others = readOthers(cursor);
  const what = others?.what ?? readSame(cursor) ?? readForming(cursor) ?? readRows(cursor, label !== null);
  if (!what) {
    cursor.at = from;
    return null;
  }
  const often = others?.often ?? readOften(cursor, label);
  const span = cursor.spanFrom(from);
  while (cursor.peek() && !/^[.;—(]$/.test(cursor.peek()?.text ?? '') && !cursor.peek()?.startsLine)
    cursor.at += 1;
  const stop = cursor.at;
  while (cursor.take('.', ';', '—'));
  const stated = readStated(cursor);
  if (!stated) cursor.at = stop;
  return {kind: 'repeat rows', label, what, often, stated, span};
}

type What = RowRepeat['what'];

/** `These 8 rows form the pattern (and are repeated throughout)`. */
function readForming(cursor: Cursor): What | null {
  const from = cursor.at;
  cursor.take('these', 'last', 'above');
  const number = cursor.peek();
  const isRows = number?.kind === 'number' && (cursor.is('row', 1) || cursor.is('round', 1));
  const verb = cursor.peek(2)?.text ?? '';
  if (!isRows || !['form', 'complete', 'make', 'comprise', 'are', 'set'].includes(verb)) {
    cursor.at = from;
    return null;
  }
  cursor.at += 2;
  return {kind: 'last', count: number.value};
}

/** `Work four other rows similar to the two last`: how often is found from both numbers. */
function readOthers(cursor: Cursor): Pick<RowRepeat, 'what' | 'often'> | null {
  const from = cursor.at;
  const isWork = cursor.take('work', 'k');
  const number = cursor.peek();
  const isOthers = ['other', 'more', 'further'].includes(cursor.peek(1)?.text ?? '') && cursor.is('row', 2);
  if (isWork && number?.kind === 'number' && isOthers) {
    cursor.at += 3;
    cursor.take(',');
    const isLike = cursor.take('similar', 'like', 'same', 'as');
    while (cursor.take('to', 'as', 'last'));
    const last = cursor.peek();
    if (isLike && last?.kind === 'number' && last.value > 0 && number.value % last.value === 0) {
      cursor.at += 1;
      const span = {start: number.start, end: number.end};
      const count = {values: [number.value / last.value], span};
      return {what: {kind: 'last', count: last.value}, often: {kind: 'more', count}};
    }
  }
  cursor.at = from;
  return null;
}

/** `Every succeeding row is the same`, `All the rows alike`. */
function readSame(cursor: Cursor): What | null {
  const from = cursor.at;
  if (!cursor.take('all', 'every', 'each')) return null;
  cursor.take('succeeding', 'other', 'next', 'subsequent', 'remain');
  if (!cursor.take('row', 'round')) {
    cursor.at = from;
    return null;
  }
  cursor.take('is', 'are');
  cursor.take('worked', 'work', 'k');
  if (cursor.take('same', 'alike')) {
    cursor.take('as');
    const ranges = readRanges(cursor);
    return ranges.length > 0 ? {kind: 'rows', ranges} : {kind: 'last', count: 1};
  }
  cursor.at = from;
  return null;
}

function readRows(cursor: Cursor, isLabelled: boolean): What | null {
  cursor.take('is', 'are');
  const isSentence = cursor.peek()?.startsLine === true || cursor.peek(-1)?.text === '.';
  const isAgain = takeAgain(cursor);
  const isRepeat = isAgain || takeRepeat(cursor);
  if (isRepeat && isSentence && takeFromBeginning(cursor)) return {kind: 'all'};
  if (!isRepeat) {
    cursor.take('work');
    const isAs = cursor.take('as', 'like', 'same');
    if (!isAs || !isLabelled) return null;
  }
  let word = isAgain ? 'from' : '';
  while (cursor.take(...articles)) word = cursor.peek(-1)?.text ?? word;
  if (cursor.peek()?.kind === 'ordinal' && cursor.peek(1)?.kind === 'number' && cursor.take('1'))
    word = 'first';
  const token = cursor.peek();
  if (cursor.take('row', 'round')) {
    const ranges = readRanges(cursor);
    if (ranges.length > 0) return rowsOrFrom(ranges, word);
    if (word === 'from') return null;
    return word === 'last' || word === 'previous' ? {kind: 'last', count: 1} : {kind: 'all'};
  }
  if (token?.kind === 'number' && (cursor.is('row', 1) || cursor.is('round', 1))) {
    cursor.at += 2;
    if (word === 'first') return {kind: 'rows', ranges: [{first: 1, last: token.value}]};
    return {kind: 'last', count: token.value};
  }
  const ranges = readRanges(cursor);
  if (ranges.length === 0 || (!cursor.take('row', 'round') && isRepeat)) return null;
  return rowsOrFrom(ranges, word);
}

/** `from row 2` is that row and all behind it. */
function rowsOrFrom(ranges: readonly NumberRange[], word: string): What {
  const [only, ...others] = ranges;
  return word === 'from' && only && others.length === 0 && only.first === only.last
    ? {kind: 'from', first: only.first}
    : {kind: 'rows', ranges};
}

/** `repeat`, `continue repeating`, `keep repeating`. */
function takeRepeat(cursor: Cursor): boolean {
  const from = cursor.at;
  cursor.take('continue', 'keep');
  cursor.take('to');
  if (cursor.take('rep')) return true;
  cursor.at = from;
  return false;
}

/** `Commence again at`, `begin again from`. */
function takeAgain(cursor: Cursor): boolean {
  const from = cursor.at;
  if (cursor.take('begin') && cursor.take('again')) {
    while (cursor.take(',', 'at', 'with', 'as', 'on'));
    return true;
  }
  cursor.at = from;
  return false;
}

function takeFromBeginning(cursor: Cursor): boolean {
  const from = cursor.at;
  cursor.take('from', 'at');
  if (cursor.take('begin')) return true;
  cursor.at = from;
  return false;
}

function readRanges(cursor: Cursor): NumberRange[] {
  const ranges: NumberRange[] = [];
  for (let token = cursor.peek(); token; token = cursor.peek()) {
    if ((token.kind !== 'number' && token.kind !== 'ordinal') || isTimes(cursor, 0)) break;
    cursor.at += 1;
    let last = token.value;
    const end = cursor.peek(1);
    if (
      (end?.kind === 'number' || end?.kind === 'ordinal') &&
      cursor.take('—', '-', 'to', 'through', 'thru')
    ) {
      last = end.value;
      cursor.at += 1;
    }
    ranges.push({first: token.value, last: Math.max(token.value, last)});
    const joins = cursor.is('&') || cursor.is(',');
    const ahead = cursor.is(',') && cursor.is('&', 1) ? 2 : 1;
    const next = cursor.peek(ahead);
    if (!joins || isTimes(cursor, ahead) || (next?.kind !== 'number' && next?.kind !== 'ordinal')) break;
    cursor.take(',');
    cursor.take('&');
  }
  return ranges;
}

/** `3 times`, `3 more times`: no number of a row. */
function isTimes(cursor: Cursor, ahead: number): boolean {
  const behind = cursor.peek(ahead + 1)?.text ?? '';
  return cursor.peek(ahead)?.kind === 'number' && ['time', 'more', 'additional'].includes(behind);
}

function readOften(cursor: Cursor, label: RowLabel | null): RowRepeat['often'] {
  let isForPattern = false;
  for (let words = 0; words < 14; words++) {
    const token = cursor.peek();
    if (!token || token.startsLine || token.text === '.') break;
    const isOften = token.value > 0 && token.kind === 'word';
    if (isOften || isTimes(cursor, 0)) {
      const at = cursor.at;
      cursor.at += 1;
      while (cursor.take('time', 'more', 'additional'));
      cursor.take(')');
      const count = isOften
        ? {values: [token.value], span: {start: token.start, end: token.end}}
        : cursor.sizedAt(at);
      return {kind: 'more', count};
    }
    if (token.kind === 'number' && cursor.is('st', 1) && isRemaining(cursor)) {
      const at = cursor.at;
      cursor.at += 3;
      return {kind: 'until stitches', count: cursor.sizedAt(at)};
    }
    isForPattern ||= token.text === 'pattern';
    cursor.at += 1;
  }
  return label && (label.ranges.length > 0 || label.every === null)
    ? {kind: 'to fill the label'}
    : {kind: 'open', isForPattern};
}

function isRemaining(cursor: Cursor): boolean {
  const word = cursor.peek(2)?.text;
  return word === 'remain' || word === 'leave' || word === 'on';
}
