import {isClosing} from './brackets.ts';
import {colourWords} from './colour-words.ts';
import type {Cursor} from './cursor.ts';
import {readExtent} from './read-extent.ts';
import {readInto} from './read-into.ts';
import type {Extent, Step} from './row-syntax.ts';
import {StepList} from './step-list.ts';

const notesInBrackets = new Set([
  'rs',
  'ws',
  'right',
  'wrong',
  'note',
  'counts',
  'count',
  'see',
  'by',
  'that',
  'there',
  'including',
  'incl',
  'counting',
  ...colourWords,
]);

/** A row works no more than so many different groups into one stitch. */
const mostIntos = 8;

/**
 * Reads `[k2, p2] 3 times`, `(k1, p1) to last st`, `(k1, yo, k1) in next st`, and steps over remarks such as `(RS)`.
 * `readInner` reads up to the closing bracket.
 */
export function readGroup(cursor: Cursor, list: StepList, readInner: (inner: StepList) => void): void {
  const from = cursor.at;
  cursor.at += 1;
  if (notesInBrackets.has(cursor.peek()?.text ?? '') && skipNote(cursor)) return;
  const inner = new StepList();
  readInner(inner);
  if (isClosing(cursor.peek()?.text)) cursor.at += 1;
  else cursor.complain('the bracket is not closed', 'Close it where the group ends.', firstOf(cursor, from));
  if (inner.steps.length === 0) return;
  const into = readInto(cursor, inner.steps, from);
  if (into) {
    list.push(into);
    if (cursor.intos.length < mostIntos) cursor.intos.push(into);
    return;
  }
  const known = cursor.intos.find(({steps}) => isAlike(steps, inner.steps));
  const extent = readGroupExtent(cursor);
  if (known && !extent) {
    list.push({...known, span: cursor.spanFrom(from)});
    return;
  }
  const intoBehind = extent ? readInto(cursor, [repeatOf(inner.steps, extent, cursor, from)], from) : null;
  if (intoBehind) {
    list.push(intoBehind);
    return;
  }
  if (!extent) {
    list.steps.push(...inner.steps);
    return;
  }
  list.push(repeatOf(inner.steps, extent, cursor, from));
}

function repeatOf(steps: readonly Step[], extent: Extent, cursor: Cursor, from: number): Step {
  return {kind: 'repeat', style: 'bracket', steps, extent, span: cursor.spanFrom(from)};
}

/** `3 times`, `twice`, `rep 3 times`, `to end`; null when the group is worked once. */
function readGroupExtent(cursor: Cursor): Extent | null {
  const from = cursor.at;
  const isRepeated = cursor.take('rep');
  while (cursor.take('from', 'these', 'st', 'this', 'all'));
  const next = cursor.peek();
  if (next?.kind === 'number' && !next.isApart && cursor.peek(1)?.kind !== 'word') {
    cursor.at += 1;
    return {kind: 'times', count: cursor.sizedAt(cursor.at - 1)};
  }
  const extent = readExtent(cursor);
  if (!extent) cursor.at = from;
  else if (isRepeated && extent.kind === 'times') return {kind: 'more', count: extent.count, isPlain: true};
  return extent;
}

function skipNote(cursor: Cursor): boolean {
  for (let ahead = 0; ahead < 12; ahead++) {
    const text = cursor.peek(ahead)?.text;
    if (text === undefined || text === '*') return false;
    if (isClosing(text)) {
      cursor.at += ahead + 1;
      return true;
    }
  }
  return false;
}

function firstOf(cursor: Cursor, from: number) {
  const token = cursor.reading.tokens[from];
  return {start: token?.start ?? 0, end: token?.end ?? 0};
}

/** The same plain stitches in the same order: a knitter who was told once to work them into one stitch does so again. */
function isAlike(a: readonly Step[], b: readonly Step[]): boolean {
  return (
    a.length === b.length &&
    a.every((step, index) => {
      const other = b[index];
      return step.kind === 'work' && other?.kind === 'work' && step.stitch.id === other.stitch.id;
    })
  );
}
