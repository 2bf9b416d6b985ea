import type {Cursor} from './cursor.ts';
import {readExtent} from './read-extent.ts';
import type {EitherStep, Step} from './row-syntax.ts';
import {StepList} from './step-list.ts';

type ReadStep = (list: StepList) => void;

/**
 * Reads what is said of the last time that a repeat is worked: `ending last rep k3`, `ending p1 instead of p2`,
 * `omitting last 2 sts of last rep`, `omit the last p2`. That last time then stands behind the repeat as steps of its
 * own. False, and nothing read, when it is something else.
 */
export function readLastRepeat(cursor: Cursor, list: StepList, readStep: ReadStep): boolean {
  const repeat = list.steps.at(-1);
  if (repeat?.kind !== 'repeat' || repeat.style !== 'star') return false;
  const from = cursor.at;
  const last = readOmission(cursor, repeat.steps, readStep) ?? readEnding(cursor, repeat.steps, readStep);
  if (last === null) {
    cursor.at = from;
    return false;
  }
  if (last === 'not there') {
    const span = cursor.spanFrom(from);
    cursor.complain(
      `\`${cursor.written(span)}\` does not fit the repeat before it`,
      'Name the stitches with which the repeat ends, or write the last repeat out.',
      span,
    );
    return true;
  }
  list.steps[list.steps.length - 1] = {...repeat, extent: {kind: 'as fits'}};
  const span = cursor.spanFrom(from);
  const [replaced, cutShort] = last;
  if (isSameSteps(replaced, cutShort)) list.steps.push(...replaced);
  else list.push({kind: 'either', doubt: 'last repeat', ways: last, span});
  list.startClause();
  return true;
}

/** Steps of the last repeat in either way of reading it; null where something else is said. */
type LastTime = EitherStep['ways'] | 'not there' | null;

function readOmission(cursor: Cursor, steps: readonly Step[], readStep: ReadStep): LastTime {
  if (!cursor.take('omit', 'leave')) return null;
  cursor.take('out', 'off');
  cursor.take('last');
  const count = cursor.peek();
  if (count?.kind === 'number' && cursor.is('st', 1)) {
    cursor.at += 2;
    skipOfLastRepeat(cursor);
    return certain(withoutLast(steps, count.value));
  }
  if (cursor.take('st')) {
    skipOfLastRepeat(cursor);
    return certain(withoutLast(steps, 1));
  }
  const omitted = readStretch(cursor, readStep);
  if (omitted.length === 0) return null;
  skipOfLastRepeat(cursor);
  return certain(withoutEnd(steps, omitted));
}

function certain(steps: readonly Step[] | 'not there'): LastTime {
  return steps === 'not there' ? steps : [steps, steps];
}

/** `ending last rep k1` may name a stitch in the middle of the repeat, with which it stops, or replace its last one. */
function readEnding(cursor: Cursor, steps: readonly Step[], readStep: ReadStep): LastTime {
  if (!cursor.take('end', 'ending', 'ends', 'finish')) return null;
  while (cursor.take('with', 'on', 'a'));
  const saysLast = cursor.is('last') && cursor.is('rep', 1);
  if (saysLast) cursor.at += 2;
  while (cursor.take('with', 'at', 'in', 'a'));
  const stretch = readStretch(cursor, readStep);
  const first = stretch[0];
  if (!first) return null;
  if (cursor.is('instead') && cursor.is('of', 1)) {
    cursor.at += 2;
    const replaced = readStretch(cursor, readStep);
    const kept = withoutEnd(steps, replaced);
    skipOfLastRepeat(cursor);
    return kept === 'not there' ? kept : certain([...kept, ...stretch]);
  }
  while (cursor.take('only', 'once'));
  if (!saysLast) return null;
  const late = steps.findLastIndex((step) => isAlike(step, first));
  const early = steps.findIndex((step) => isAlike(step, first));
  const replaced = [...steps.slice(0, Math.max(0, late)), ...stretch];
  const cutShort = [...steps.slice(0, Math.max(0, early)), ...stretch];
  return isSameSteps(replaced, steps) ? [cutShort, cutShort] : [replaced, cutShort];
}

function isSameSteps(a: readonly Step[], b: readonly Step[]): boolean {
  return (
    a.length === b.length &&
    a.every((step, index) => {
      const other = b[index];
      return other !== undefined && isAlike(step, other) && timesOf(step) === timesOf(other);
    })
  );
}

/** Steps up to the end of the clause or the words that come behind a stretch of stitches. */
function readStretch(cursor: Cursor, readStep: ReadStep): readonly Step[] {
  const inner = new StepList();
  for (let token = cursor.peek(); token; token = cursor.peek()) {
    if (/^[.;)\]—]$/.test(token.text) || ['instead', 'of', 'at', 'from', 'on'].includes(token.text)) break;
    if (token.text === ',' || token.text === '&') cursor.at += 1;
    else readStep(inner);
  }
  return inner.steps;
}

function skipOfLastRepeat(cursor: Cursor): void {
  const words = ['of', 'at', 'from', 'on', 'end', 'in', 'last', 'rep'];
  while (cursor.take(...words));
  readExtent(cursor);
}

/** The steps without those that use the last `count` stitches; only plain runs can be cut. */
function withoutLast(steps: readonly Step[], count: number): readonly Step[] | 'not there' {
  let left = count;
  const kept = [...steps];
  while (left > 0) {
    const step = kept.pop();
    if (step?.kind !== 'work' || step.extent.kind !== 'times') return 'not there';
    const times = step.extent.count.values[0] ?? 0;
    const uses = step.stitch.uses * times;
    if (step.extent.count.values.length > 1 || (uses > left && step.stitch.uses !== 1)) return 'not there';
    if (uses > left)
      kept.push({...step, extent: {...step.extent, count: {...step.extent.count, values: [times - left]}}});
    left = Math.max(0, left - uses);
  }
  return kept;
}

function withoutEnd(steps: readonly Step[], end: readonly Step[]): readonly Step[] | 'not there' {
  const start = steps.length - end.length;
  if (start < 0 || end.length === 0) return 'not there';
  const isThere = end.every((step, index) => {
    const other = steps[start + index];
    return other !== undefined && isAlike(step, other) && timesOf(step) === timesOf(other);
  });
  return isThere ? steps.slice(0, start) : 'not there';
}

function isAlike(a: Step, b: Step): boolean {
  return a.kind === 'work' && b.kind === 'work' && a.stitch.id === b.stitch.id;
}

function timesOf(step: Step): string {
  return step.kind === 'work' && step.extent.kind === 'times' ? String(step.extent.count.values) : '';
}
