import type {Problem, Span} from '../../support/result.ts';
import {firstTrouble} from './first-trouble.ts';
import {proveForEveryMultiple} from './prove-for-every-multiple.ts';
import type {Step, WrittenPattern, WrittenRow} from './row-syntax.ts';
import {type SlipChange, slipChanges} from './slip-changes.ts';
import {suitsNeighbours} from './suits-neighbours.ts';

/** Among so many changes is the one that suits the fabric looked for. */
const mostFitted = 40;
/** A slip of the pen is off by one, a few, or a figure. */
const distances = [1, 2, 3, 4, 10];
/** So many rows before the one that does not come out may hold the mistake. */
const mostRowsBack = 8;
/** So many changes of one distance are tried, and so much is looked at in all. */
const mostChanges = 120;
const mostVisited = 200_000;
/** So many problems are looked into; a pattern that is wrong throughout has no one slip. */
const mostProblems = 3;

/** What is asked of a changed pattern. */
type Check = (pattern: WrittenPattern) => {readonly comesOut: boolean; readonly visited: number};

/**
 * Puts each problem of a proof at the one count that, changed, would make the row and all that follows come out as
 * stated, and says what would do; where several would, the problem stays at its place and they are named in its hint.
 * Tried only for what failed.
 */
export function nameSlips(pattern: WrittenPattern, problems: readonly Problem[]): readonly Problem[] {
  const budget = {visited: 0};
  return problems.map((problem, index) => {
    if (index >= mostProblems) return problem;
    const others = new Set(problems.filter((other) => other !== problem).map(({span}) => span.start));
    const check: Check = (changed) => {
      const {problems: left, visited} = firstTrouble(changed);
      return {comesOut: left.every(({span}) => others.has(span.start)), visited};
    };
    return nameSlip(pattern, problem, check, budget);
  });
}

/** The same for rows that come out as written and not for every number of repeats. */
export function nameSlipOfLaw(pattern: WrittenPattern, problem: Problem): Problem {
  const check: Check = (changed) => {
    const {problems, visited} = firstTrouble(changed);
    if (problems.length > 0) return {comesOut: false, visited};
    const law = proveForEveryMultiple(changed);
    return {comesOut: law.firstFailure === null, visited: visited + law.visited};
  };
  return nameSlip(pattern, problem, check, {visited: 0});
}

function nameSlip(
  pattern: WrittenPattern,
  problem: Problem,
  check: Check,
  budget: {visited: number},
): Problem {
  const rows = suspects(pattern, problem.span);
  const size = sizeOf(pattern);
  for (const distance of distances) {
    const found: Found[] = [];
    for (const {row, change} of changesIn(rows, distance)) {
      const {comesOut, visited} = check(withRow(pattern, row, change.row));
      budget.visited += visited + size;
      if (comesOut) found.push({row, change});
      if (budget.visited > mostVisited) return problem;
    }
    const likely = likeliest(pattern, found);
    if (likely.length === 0) continue;
    budget.visited += likely.length * size;
    const isSmall = likely.length > 1 && budget.visited <= mostVisited;
    const best = isSmall ? bestFitting(pattern, likely) : null;
    return named(problem, likely, best, rows[0]);
  }
  return problem;
}

/** Every step of the pattern, however deep: so much is gone over for each change. */
function sizeOf({entries}: WrittenPattern): number {
  const count = (steps: readonly Step[]): number =>
    steps.reduce((sum, step) => {
      if (step.kind === 'either') return sum + count(step.ways[0]) + count(step.ways[1]);
      return sum + ('steps' in step ? count(step.steps) : 1);
    }, 0);
  return entries.reduce((sum, entry) => sum + (entry.kind === 'row' ? count(entry.steps) : 1), 0);
}

function* changesIn(rows: readonly WrittenRow[], distance: number): Generator<Found> {
  let tried = 0;
  for (const row of rows) {
    for (const change of slipChanges(row, distance)) {
      if (tried >= mostChanges) return;
      tried += 1;
      yield {row, change};
    }
  }
}

interface Found {
  readonly row: WrittenRow;
  readonly change: SlipChange;
}

/** Counts that stand in the text before stitches left out, and those that hold for every number of repeats. */
function likeliest(pattern: WrittenPattern, found: readonly Found[]): readonly Found[] {
  const written = found.filter(({change}) => change.isWritten);
  const some = written.length > 0 ? written : found;
  if (some.length < 2 || !pattern.header.multiple) return some;
  const lawful = some.filter(({row, change}) => {
    const {firstFailure} = proveForEveryMultiple(withRow(pattern, row, change.row));
    return firstFailure === null;
  });
  return lawful.length > 0 ? lawful : some;
}

/** Of several changes that come out the only one with which the stitches stand as in the rows next to it, or null. */
function bestFitting(pattern: WrittenPattern, found: readonly Found[]): Found | null {
  if (found.length > mostFitted) return null;
  const fitting = found.filter(({row, change}) =>
    suitsNeighbours(withRow(pattern, row, change.row), change.row),
  );
  return fitting.length === 1 ? (fitting[0] ?? null) : null;
}

/** The row of the problem and those before it, the nearest first, back to one whose count is stated. */
function suspects({entries}: WrittenPattern, {start}: Span): readonly WrittenRow[] {
  const at = entries.findLastIndex(({span}) => span.start <= start && start < span.end);
  const rows: WrittenRow[] = [];
  for (let index = at; index >= 0 && rows.length < mostRowsBack; index--) {
    const entry = entries[index];
    if (entry?.kind !== 'row') continue;
    if (index < at && entry.stated.some(({kind}) => kind === 'total')) break;
    if (index === at && start < entry.label.span.end) return [];
    rows.push(entry);
  }
  return rows;
}

function withRow(pattern: WrittenPattern, row: WrittenRow, other: WrittenRow): WrittenPattern {
  return {...pattern, entries: pattern.entries.map((entry) => (entry === row ? other : entry))};
}

const mostNamed = 4;
const ifRight = 'if it is right as written, check the rest of the row and the count before it.';

function named(
  problem: Problem,
  found: readonly Found[],
  best: Found | null,
  own: WrittenRow | undefined,
): Problem {
  const wordsOf = ({row, change: {was, would}}: Found) => {
    const place = row === own ? '' : ` in \`${row.label.text}\``;
    return would === null ? `leaving out \`${was}\`${place}` : `\`${would}\` for \`${was}\`${place}`;
  };
  const chosen = best ?? (found.length === 1 ? (found[0] ?? null) : null);
  const all = [...new Set(found.filter((each) => each !== chosen).map(wordsOf))];
  const others = `${all.slice(0, mostNamed).join(', ')}${all.length > mostNamed ? ', or others' : ''}`;
  if (!chosen) return {...problem, hint: `${problem.hint} Any one of these would do: ${others}.`};
  const words = wordsOf(chosen);
  const said = `${words.charAt(0).toUpperCase()}${words.slice(1)} would make everything come out`;
  const rest =
    all.length === 0
      ? `; ${ifRight}`
      : `, and it suits the rows next to it; by the count alone so would ${others}.`;
  return {...problem, span: chosen.change.span, hint: `${said}${rest}`};
}
