import type {Problem} from '../../support/result.ts';
import type {Side} from './face.ts';
import {findDoubts} from './find-doubts.ts';
import {plainLaw} from './law.ts';
import {constant} from './linear-form.ts';
import type {PlannedStep} from './planned-step.ts';
import {sizeCountOf} from './read-rows.ts';
import {readingsToTry, type SettledReadings, waysToRead} from './readings.ts';
import {type OrderedRow, orderRows} from './row-order.ts';
import type {Doubt, WrittenPattern, WrittenRow} from './row-syntax.ts';
import {settlePassages} from './settle-passages.ts';
import {workPattern} from './work-pattern.ts';
import type {WorkedPattern, WorkedRow} from './worked-row.ts';

/** The counts of one row in one size. In − used + made = out. */
export interface ProvedRow {
  readonly row: WrittenRow;
  readonly label: string;
  readonly number: number | null;
  readonly side: Side;
  readonly isRound: boolean;
  readonly in: number;
  readonly used: number;
  readonly made: number;
  readonly out: number;
  /** Stitches left on the needle at a turn. */
  readonly unworked: number;
  readonly times: number;
  readonly isSound: boolean;
  readonly plan: readonly PlannedStep[] | null;
}

export interface ProvedSize {
  /** As the block names it, or empty. */
  readonly name: string;
  readonly start: number;
  readonly rows: readonly ProvedRow[];
}

export interface ProvedPattern {
  readonly sizes: readonly ProvedSize[];
  readonly problems: readonly Problem[];
  /** How a text that can be read in two ways was read, in words for the sheet. */
  readonly notes: readonly string[];
  readonly visited: number;
}

/**
 * Counts every row in every size, from the stitches that the block states, else from the smallest multiple. Never
 * throws. `isPlanned` keeps with each row how it is worked, for charts and pictures.
 */
export function proveRows(pattern: WrittenPattern, {isPlanned = false} = {}): ProvedPattern {
  const {rows, problems: orderProblems} = orderRows(pattern);
  const start = startOf(pattern);
  if (start === null || pattern.entries.length === 0) {
    const missing = pattern.entries.length === 0 ? [] : [noStart(pattern)];
    return {sizes: [], problems: [...orderProblems, ...missing], notes: [], visited: 0};
  }
  const doubts = findDoubts(pattern);
  const tries = readingsToTry(pattern.header.readings, doubts);
  let best: Attempt | null = null;
  let visited = 0;
  for (const readings of tries) {
    const settled = settlePassages(pattern, readings);
    const ordered = settled === pattern ? rows : orderRows(settled).rows;
    const attempt = attemptAll(settled, ordered, start, readings, isPlanned);
    visited += attempt.visited;
    if (!best || attempt.problems.length === 0) best = attempt;
    if (attempt.problems.length === 0) break;
  }
  const wrongStart = checkMultiple(pattern, start);
  // Rows that fail because the start is wrong would only say it again.
  const rowProblems = wrongStart.length > 0 ? [] : (best?.problems ?? []);
  const problems = [...orderProblems, ...wrongStart, ...rowProblems];
  const notes = best && best.problems.length === 0 ? describeReadings(best.readings, doubts, tries) : [];
  return {sizes: best?.sizes ?? [], problems: problems.toSorted(byPlace), notes, visited};
}

interface Attempt {
  readonly readings: SettledReadings;
  readonly sizes: readonly ProvedSize[];
  readonly problems: readonly Problem[];
  readonly visited: number;
}

function attemptAll(
  pattern: WrittenPattern,
  rows: readonly OrderedRow[],
  start: readonly number[],
  readings: SettledReadings,
  isPlanned: boolean,
): Attempt {
  const sizes: ProvedSize[] = [];
  const problems: Problem[] = [];
  let visited = 0;
  const count = sizeCountOf(pattern.header);
  for (let size = 0; size < count; size++) {
    const stitches = start[Math.min(size, start.length - 1)] ?? 0;
    const worked = workPattern(rows, constant(stitches), {law: plainLaw, size, readings, isPlanned});
    const name = pattern.header.sizes[size] ?? (count > 1 ? `${stitches} stitches` : '');
    problems.push(...elsewhere(problems, inSize(worked, name, count), pattern));
    sizes.push({name, start: stitches, rows: worked.rows.map(asProved)});
    visited += worked.visited;
  }
  return {readings, sizes, problems: withoutEcho(problems), visited};
}

function asProved(row: WorkedRow): ProvedRow {
  const {turn, label, side, times, isSound, plan} = row;
  return {
    row: turn.row,
    label,
    number: turn.number,
    side,
    isRound: turn.isRound,
    in: row.in.fixed,
    used: row.used.fixed,
    made: row.made.fixed,
    out: row.out.fixed,
    unworked: row.unworked.fixed,
    times,
    isSound,
    plan,
  };
}

/** What fails in one size in a row that failed in another already is the same mistake. */
function elsewhere(
  known: readonly Problem[],
  found: readonly Problem[],
  {entries}: WrittenPattern,
): readonly Problem[] {
  if (known.length === 0) return found;
  const entryOf = ({span}: Problem) =>
    entries.findLastIndex(({span: entry}) => entry.start <= span.start && span.start < entry.end);
  const rows = new Set(known.map(entryOf));
  return found.filter((problem) => !rows.has(entryOf(problem)));
}

function inSize({problems}: WorkedPattern, name: string, count: number): Problem[] {
  if (count === 1) return [...problems];
  return problems.map((problem) => ({...problem, message: `in size \`${name}\`, ${problem.message}`}));
}

/** A row that fails in the same place, in every size or every time it is worked, is one mistake. */
function withoutEcho(problems: readonly Problem[]): Problem[] {
  const seen = new Set<string>();
  return problems.filter(({span}) => {
    const key = `${span.start}-${span.end}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** The stitches to begin with, per size; null when nothing says. */
export function startOf({header}: WrittenPattern): readonly number[] | null {
  if (header.start) return header.start.values;
  return header.multiple ? [header.multiple.of * 2 + header.multiple.plus] : null;
}

function noStart(pattern: WrittenPattern): Problem {
  const span = pattern.entries[0]?.span ?? {start: 0, end: 0};
  return {
    message: 'the rows do not say on how many stitches they are worked',
    hint: 'Add a line such as `cast on: 29`, `stitches: 29` or `multiple: 6 + 5` above them.',
    span,
  };
}

function checkMultiple({header}: WrittenPattern, start: readonly number[]): Problem[] {
  const {multiple} = header;
  if (!multiple || !header.start) return [];
  const wrong = start.find((count) => (count - multiple.plus) % multiple.of !== 0 || count < multiple.plus);
  if (wrong === undefined) return [];
  const over = (((wrong - multiple.plus) % multiple.of) + multiple.of) % multiple.of;
  const least = Math.max(wrong - over, multiple.plus);
  return [
    {
      message: `\`${wrong}\` stitches are not a multiple of ${multiple.of} plus ${multiple.plus}`,
      hint: `Begin with ${least} or ${least + multiple.of} stitches, or check the multiple.`,
      span: header.start.span,
    },
  ];
}

const readingWords: {readonly [D in Doubt]: Readonly<Record<SettledReadings[D], string>>} = {
  'bind-off loop': {
    separate: 'the loop left by binding off is not one of the stitches counted after it',
    counted: 'the loop left by binding off is the first of the stitches counted after it',
  },
  'yarn forward': {
    'no stitch': 'yarn forward before a purl or a slip makes no stitch',
    'yarn over': 'yarn forward before a purl or a slip makes a stitch',
  },
  'repeat times': {
    more: '`rep from * 3 times` is worked 3 times after the first',
    'in all': '`rep from * 3 times` is worked 3 times in all',
  },
  'passage times': {
    passage: 'a number of times behind a comma is of the whole passage',
    'last stitch': 'a number of times behind a comma is of the last stitch before it',
  },
  'last repeat': {
    replaced: 'what the last repeat ends with stands for its last stitches',
    'cut short': 'the last repeat stops with what it is said to end with',
  },
};

/** Only what was not the customary reading, and the rows decided, is worth a note. */
function describeReadings(
  settled: SettledReadings,
  doubts: ReadonlySet<Doubt>,
  tries: readonly SettledReadings[],
): string[] {
  const words: string[] = [];
  const note = <D extends Doubt>(doubt: D) => {
    const way = settled[doubt];
    const isOpen = tries.some((other) => other[doubt] !== way);
    if (doubts.has(doubt) && isOpen && way !== waysToRead[doubt][0]) {
      words.push(`Read so that the rows come out: ${readingWords[doubt][way]}.`);
    }
  };
  note('bind-off loop');
  note('yarn forward');
  note('repeat times');
  note('passage times');
  note('last repeat');
  return words;
}

function byPlace(a: Problem, b: Problem): number {
  return a.span.start - b.span.start || a.span.end - b.span.end;
}
