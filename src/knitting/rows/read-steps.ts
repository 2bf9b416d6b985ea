import {workAtEdges} from './at-edges.ts';
import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import {readClosing} from './read-closing.ts';
import {readExtent} from './read-extent.ts';
import {readGroup} from './read-group.ts';
import {readLastRepeat} from './read-last-repeat.ts';
import {readPhrase} from './read-phrase.ts';
import {isRepeatWord, readRepeat} from './read-repeat.ts';
import {readStated} from './read-stated.ts';
import {reportUnknown} from './report-unknown.ts';
import type {StatedCount, Step} from './row-syntax.ts';
import {settleBare, settleYarnForward} from './settle-steps.ts';
import {skipClause} from './skip-clause.ts';
import {StepList} from './step-list.ts';

/** Words that begin a remark on how it is done: `picking up wraps as you come to them`. */
const remarks = [
  'picking',
  'leaving',
  'hiding',
  'lifting',
  'using',
  'being',
  'remembering',
  'noting',
  'ensuring',
  'note',
];

export interface ReadSteps {
  readonly steps: readonly Step[];
  readonly stated: readonly StatedCount[];
}

/** Deeper nesting than any pattern has. */
const deepest = 24;

/** Words between steps that say nothing of their own. */
const joiners = ['&', 'with', 'finish', 'end', 'ends', 'ending', 'always', 'this', 'is', 'of'];

/** Reads all steps up to the end of the row. Never fails: what cannot be read is reported and passed over. */
export function readSteps(cursor: Cursor): ReadSteps {
  const list = new StepList();
  const stated: StatedCount[] = [];
  readInto(cursor, list, stated, 0);
  closeOpenMark(list);
  settleBare(list.steps);
  return {steps: workAtEdges(settleYarnForward(list.steps), list.edges), stated};
}

function readInto(cursor: Cursor, list: StepList, stated: StatedCount[], depth: number): void {
  while (cursor.peek()) {
    const token = cursor.peek();
    if (!token || (depth > 0 && isClosing(token.text))) return;
    if (token.text === ';' || token.text === '.' || token.text === ':') {
      cursor.at += 1;
      list.startClause();
    } else if (token.text === ',' || token.text === '—' || token.text === '-' || token.text === '!') {
      cursor.at += 1;
    } else if (isClosing(token.text)) {
      cursor.at += 1;
      cursor.complain(
        `\`${token.text}\` closes a bracket that was not opened`,
        'Take it out, or put the opening bracket where the group begins.',
        token,
      );
    } else {
      readOne(cursor, list, stated, depth);
    }
  }
}

function readOne(cursor: Cursor, list: StepList, stated: StatedCount[], depth: number): void {
  if (readMark(cursor, list)) return;
  if (readClosing(cursor, stated)) return;
  if (readLastRepeat(cursor, list, (inner) => readOne(cursor, inner, stated, depth + 1))) return;
  if (isBeforeGroup(cursor)) {
    cursor.at += 1;
    return;
  }
  if (isRepeatWord(cursor) && readRepeat(cursor, list)) return;
  const count = readStated(cursor);
  if (count) {
    stated.push(count);
    return;
  }
  if (isOpening(cursor.peek()?.text)) {
    if (depth >= deepest) {
      cursor.complain(
        'the brackets are nested too deeply',
        'Write the row with fewer brackets.',
        cursor.spanFrom(cursor.at),
      );
      cursor.at = cursor.to;
      return;
    }
    readGroup(cursor, list, (inner) => readInto(cursor, inner, stated, depth + 1));
    return;
  }
  if (readPhrase(cursor, list)) return;
  if (readClauseExtent(cursor, list)) return;
  if (cursor.take('continue')) {
    list.continuedFrom = list.steps.length;
    return;
  }
  if (cursor.take(...joiners)) return;
  if (cursor.take(...remarks)) {
    skipClause(cursor);
    return;
  }
  reportUnknown(cursor, list);
}

/** `work (k1, p1) twice`: the word says nothing of its own. */
function isBeforeGroup(cursor: Cursor): boolean {
  const next = cursor.peek(1);
  return cursor.is('work') && (isOpening(next?.text) || next?.kind === 'mark');
}

/** `*`, `**`, `†`, and the `(a)` of old books. */
function readMark(cursor: Cursor, list: StepList): boolean {
  const token = cursor.peek();
  const next = cursor.peek(1);
  let name: string | null = null;
  if (token?.kind === 'mark') {
    name = token.text;
    cursor.at += 1;
  } else if (isOpening(token?.text) && isClosing(cursor.peek(2)?.text) && isMarkLetter(next?.text)) {
    name = next?.text ?? '';
    cursor.at += 3;
  }
  if (name === null) return false;
  if (closeMark(cursor, list, name)) return true;
  list.marks.push({name, at: list.steps.length});
  list.startClause();
  return true;
}

/** `*k2, p2* 6 times`, `*k2, p2* around`: the second of two marks closes the passage that is repeated. */
function closeMark(cursor: Cursor, list: StepList, name: string): boolean {
  const open = list.marks.findLast((mark) => mark.name === name && mark.at < list.steps.length);
  if (!open) return false;
  const from = cursor.at;
  const extent = readExtent(cursor);
  if (extent && list.wrap(open.at, 'star', extent)) {
    list.startClause();
    return true;
  }
  cursor.at = from;
  return false;
}

/** A single letter in brackets is a mark unless it is a stitch. */
function isMarkLetter(text: string | undefined): boolean {
  return text !== undefined && /^[a-jq-z]$/.test(text) && text !== 'x';
}

/** `, three times` behind a comma: the whole clause is repeated; so is what follows `continue`. */
function readClauseExtent(cursor: Cursor, list: StepList): boolean {
  const from = cursor.at;
  const extent = readExtent(cursor);
  if (!extent) return false;
  const start = list.continuedFrom ?? list.clauseStart;
  const style = list.continuedFrom === null ? 'bracket' : 'star';
  list.continuedFrom = null;
  if (!list.wrap(start, style, extent)) {
    const span = cursor.spanFrom(from);
    cursor.complain(
      `\`${cursor.written(span)}\` stands where nothing has been worked yet`,
      'Write what is worked first, then how often or how far.',
      span,
    );
  }
  return true;
}

/** `*k1, p1` with nothing behind it is worked to the end of the row. */
function closeOpenMark(list: StepList): void {
  const mark = list.marks.at(-1);
  if (!mark || mark.at >= list.steps.length) return;
  const isUsed = list.steps.some((step) => step.kind === 'again');
  if (!isUsed) list.wrap(mark.at, 'star', {kind: 'as fits'});
}
