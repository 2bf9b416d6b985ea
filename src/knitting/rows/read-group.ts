import {isClosing} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import {readColour} from './read-colour.ts';
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
  if (readColourNote(cursor, list)) return;
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
  const each = intoEach(cursor, inner.steps, from);
  if (each) {
    list.push(each);
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

/** `(k1, p1) in each st`: the group goes into every single stitch. */
function intoEach(cursor: Cursor, steps: readonly Step[], from: number): Step | null {
  const isEach = cursor.is('in') || cursor.is('into');
  const which = cursor.peek(1)?.text ?? '';
  if (!isEach || !['each', 'every'].includes(which) || !cursor.is('st', 2)) return null;
  const into: Step = {kind: 'into', steps, uses: 1, span: cursor.spanFrom(from)};
  const extent = readExtent(cursor);
  return extent && repeatOf([into], extent, cursor, from);
}

/** `k3 (white)`, `k2 (A)`: the yarn of the stitch just named, or of what follows. */
function readColourNote(cursor: Cursor, list: StepList): boolean {
  const {tokens} = cursor.reading;
  const from = cursor.at;
  const colour = readColour(cursor);
  if (colour === null || !isClosing(cursor.peek()?.text)) {
    cursor.at = from;
    return false;
  }
  cursor.at += 1;
  const last = list.steps.at(-1);
  const isBehind = last?.kind === 'work' && last.span.end === tokens[from - 2]?.end;
  if (isBehind) list.steps[list.steps.length - 1] = {...last, colour};
  else cursor.colour = colour;
  return true;
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
