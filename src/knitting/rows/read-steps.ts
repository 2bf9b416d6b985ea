import {workAtEdges} from './at-edges.ts';
import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import {drawThrough} from './draw-through.ts';
import type {Token} from './lex-row.ts';
import {readClosing} from './read-closing.ts';
import {readColour, readNewColour, skipYarn} from './read-colour.ts';
import {readExtent} from './read-extent.ts';
import {readGroup} from './read-group.ts';
import {readLastRepeat} from './read-last-repeat.ts';
import {readPhrase} from './read-phrase.ts';
import {isRepeatWord, readRepeat} from './read-repeat.ts';
import {readStated} from './read-stated.ts';
import {reportUnknown} from './report-unknown.ts';
import type {Extent, StatedCount, Step} from './row-syntax.ts';
import {settleBare, settleBindOff, settleYarnForward} from './settle-steps.ts';
import {skipClause} from './skip-clause.ts';
import {StepList} from './step-list.ts';
import {asSet} from './stitches.ts';

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
  'there',
  'you',
  'having',
];

export interface ReadSteps {
  readonly steps: readonly Step[];
  readonly stated: readonly StatedCount[];
}

/** Deeper nesting than any pattern has. */
const deepest = 24;

/** Words between steps that say nothing of their own. */
const joiners = ['with', 'finish', 'end', 'ends', 'ending', 'always', 'this', 'is', 'of', 'but', 'only'];

/** Reads all steps up to the end of the row. Never fails: what cannot be read is reported and passed over. */
export function readSteps(cursor: Cursor): ReadSteps {
  const list = new StepList();
  const stated: StatedCount[] = [];
  const from = cursor.at;
  readInto(cursor, list, stated, 0);
  closeOpenMark(list);
  settleBare(list.steps);
  settleBindOff(list.steps);
  // A row that says only `break yarn and draw through remaining sts` takes all of them off the needle.
  if (list.isClosed && list.steps.length === 0) list.push(drawThrough(cursor.spanFrom(from)));
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
  if (cursor.peek()?.isAfterThen) list.thenStart = list.steps.length;
  if (readMark(cursor, list)) return;
  const closing = readClosing(cursor, stated);
  if (closing) {
    list.isClosed ||= closing.isDrawnThrough;
    return;
  }
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
  if (readYarn(cursor, list, false) || readPhrase(cursor, list) || readYarn(cursor, list, true)) return;
  if (readClauseExtent(cursor, list)) return;
  if (cursor.take('continue')) {
    list.continuedFrom = list.steps.length;
    return;
  }
  if (readAlternately(cursor, list)) return;
  if (cursor.take('&')) {
    list.andAt = list.steps.length;
    return;
  }
  if (cursor.take(...joiners)) {
    cursor.take('a');
    return;
  }
  if (cursor.take(...remarks)) {
    skipClause(cursor);
    return;
  }
  reportUnknown(cursor, list);
}

/** `With MC`, `5 MC`, `drop A`; words that begin a stitch as well as a yarn come behind the stitches. */
function readYarn(cursor: Cursor, list: StepList, isBehindStitches: boolean): boolean {
  if (!isBehindStitches) {
    if (skipYarn(cursor)) return true;
    if (!cursor.is('pick')) return false;
  }
  const colour = readColour(cursor) ?? (list.steps.length === 0 ? readNewColour(cursor) : null);
  if (colour === null) return isBehindStitches && readCountOfYarn(cursor, list);
  cursor.colour = colour;
  return true;
}

/** `k5 MC, 3 CC`: three more of the same stitch; with no stitch before it, as the pattern is set. */
function readCountOfYarn(cursor: Cursor, list: StepList): boolean {
  if (cursor.peek()?.kind !== 'number') return false;
  const from = cursor.at;
  cursor.at += 1;
  const colour = readColour(cursor);
  if (colour === null) {
    cursor.at = from;
    return false;
  }
  const before = list.steps.findLast((step) => step.kind === 'work' && step.stitch.kind === 'plain');
  const stitch = before?.kind === 'work' ? before.stitch : asSet;
  const extent: Extent = {kind: 'times', count: cursor.sizedAt(from)};
  const span = cursor.spanFrom(from);
  list.push({kind: 'work', stitch, extent, yarn: null, isDoubtful: false, colour, span});
  return true;
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
  } else if (isOpening(token?.text) && isClosing(cursor.peek(2)?.text) && isMarkLetter(cursor, next)) {
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

/** A single letter in brackets is a mark unless it is a stitch, or a yarn: a large letter right behind a stitch. */
function isMarkLetter(cursor: Cursor, letter: Token | undefined): boolean {
  if (!letter || !/^[a-jq-wyz]$/.test(letter.text)) return false;
  const before = cursor.reading.tokens[cursor.at - 1];
  const isBehindStitch = before?.kind === 'word' || before?.kind === 'number';
  return !isBehindStitch || cursor.reading.text[letter.start] === letter.text;
}

/**
 * `, three times` behind a comma: the whole clause is repeated, or its last stitch; `to end` is always of the clause, and
 * so is what follows `continue`.
 */
function readClauseExtent(cursor: Cursor, list: StepList): boolean {
  const from = cursor.at;
  const isAndPassed = list.andAt === list.steps.length;
  const extent = readExtent(cursor);
  if (!extent) return false;
  const isBehindComma = /^[,;—-]$/.test(cursor.reading.tokens[from - 1]?.text ?? '');
  const isTimes = extent.kind === 'times' || extent.kind === 'more';
  const isWrapped = wrapClause(
    list,
    extent,
    isTimes && (isBehindComma || isAndPassed),
    isTimes && !isBehindComma,
  );
  if (isWrapped) {
    if (isTimes) list.endClause();
    return true;
  }
  const span = cursor.spanFrom(from);
  cursor.complain(
    `\`${cursor.written(span)}\` stands where nothing has been worked yet`,
    'Write what is worked first, then how often or how far.',
    span,
  );
  return true;
}

function wrapClause(list: StepList, extent: Extent, isDoubtful: boolean, isOfLast: boolean): boolean {
  const {continuedFrom} = list;
  list.continuedFrom = null;
  if (continuedFrom !== null) return list.wrap(continuedFrom, 'star', extent);
  const clause = list.takeClause();
  if (isDoubtful) return list.wrapEither(Math.max(clause, list.thenStart), extent);
  return list.wrap(isOfLast ? list.steps.length - 1 : clause, 'bracket', extent);
}

/** `k1, p1 alternately`, `alternately k1, p1`: over and over to the end of the row, or as far as is said. */
function readAlternately(cursor: Cursor, list: StepList): boolean {
  if (!cursor.take('alternately')) return false;
  const isBehind = list.steps.length > list.clauseStart;
  if (!isBehind) {
    list.marks.push({name: 'alternately', at: list.steps.length});
    return true;
  }
  list.wrap(list.clauseStart, 'star', readExtent(cursor) ?? {kind: 'as fits'});
  list.startClause();
  return true;
}

/** `*k1, p1` with nothing behind it is worked to the end of the row. */
function closeOpenMark(list: StepList): void {
  const mark = list.marks.at(-1);
  if (!mark || mark.at >= list.steps.length) return;
  const isUsed = list.steps.some((step) => step.kind === 'again');
  if (!isUsed) list.wrap(mark.at, 'star', {kind: 'as fits'});
}
