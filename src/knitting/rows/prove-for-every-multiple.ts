import type {Problem} from '../../support/result.ts';
import {findDoubts} from './find-doubts.ts';
import {LawForAll, OnlyWhen, plainLaw} from './law.ts';
import {constant, type LinearForm} from './linear-form.ts';
import {readingsToTry, type SettledReadings} from './readings.ts';
import {type OrderedRow, orderRows} from './row-order.ts';
import type {WrittenPattern} from './row-syntax.ts';
import {settlePassages} from './settle-passages.ts';
import {workPattern} from './work-pattern.ts';
import type {WorkedPattern} from './worked-row.ts';

/** The counts of one row on `each` · n + `fixed` stitches, n pattern repeats. */
export interface RowLaw {
  readonly label: string;
  readonly in: LinearForm;
  readonly out: LinearForm;
}

export interface MultipleProof {
  /** `of` · n + `plus`: as the block states it, or as found. */
  readonly multiple: {readonly of: number; readonly plus: number} | null;
  /** The block states none; this is the smallest that works. */
  readonly isFound: boolean;
  /** The rows come out for every n ≥ `from` that leaves `rest` on division by `every`; null when for no such law. */
  readonly holds: {readonly from: number; readonly every: number; readonly rest: number} | null;
  /** The first n that does not come out, with its stitches and what is wrong there. */
  readonly firstFailure: {readonly n: number; readonly stitches: number; readonly problem: Problem} | null;
  /** In n where all n hold, else in t with n = every · t + rest. */
  readonly rows: readonly RowLaw[];
  readonly visited: number;
}

/** Beyond it a multiple is no pattern, only numbers that happen to fit. */
const largestMultiple = 5_000;
const mostTried = 60;

/**
 * Proves the rows for every number of repeats at once: counts are linear forms in n, and each repeat is a condition of
 * divisibility that is solved, not sampled. Without a stated multiple n counts stitches, and the conditions are the
 * multiple. `size` matters only for numbers given per size.
 */
export function proveForEveryMultiple(pattern: WrittenPattern, size = 0): MultipleProof {
  const {rows} = orderRows(pattern);
  const stated = pattern.header.multiple;
  const base = stated ?? {of: 1, plus: 0};
  let best: Solved | null = null;
  let visited = 0;
  for (const readings of readingsToTry(pattern.header.readings, findDoubts(pattern))) {
    const settled = settlePassages(pattern, readings);
    const solved = solve(settled === pattern ? rows : orderRows(settled).rows, base, size, readings);
    visited += solved.visited;
    if (!best || isBetter(solved, best)) best = solved;
    if (best.worked && best.every === 1) break;
  }
  if (!best) return {multiple: stated, isFound: false, holds: null, firstFailure: null, rows: [], visited};
  return stated ? report(best, base, size, visited) : found(best, visited);
}

interface Solved {
  readonly ordered: readonly OrderedRow[];
  readonly readings: SettledReadings;
  readonly every: number;
  readonly rest: number;
  /** Smallest t for which the law holds, n = every · t + rest. */
  readonly from: number;
  /** Null when some row comes out for no n. */
  readonly worked: WorkedPattern | null;
  readonly visited: number;
}

interface Base {
  readonly of: number;
  readonly plus: number;
}

function isBetter(a: Solved, b: Solved): boolean {
  if (!a.worked || !b.worked) return a.worked !== null;
  return a.every < b.every;
}

/** Narrows n down, condition by condition, until every row comes out for all that are left. */
function solve(
  rows: readonly OrderedRow[],
  {of, plus}: Base,
  size: number,
  readings: SettledReadings,
): Solved {
  let [every, rest, visited] = [1, 0, 0];
  while (every <= largestMultiple) {
    const law = new LawForAll(rest >= 1 ? 0 : 1);
    const start = {each: of * every, fixed: of * rest + plus};
    try {
      const worked = workPattern(rows, start, {law, size, readings, isPlanned: false});
      visited += worked.visited;
      const isSound = worked.problems.length === 0;
      return {ordered: rows, readings, every, rest, from: law.from, worked: isSound ? worked : null, visited};
    } catch (error) {
      if (!(error instanceof OnlyWhen)) throw error;
      rest += every * error.rest;
      every *= error.every;
    }
  }
  return {ordered: rows, readings, every, rest, from: 0, worked: null, visited};
}

function found({worked, every, rest, from}: Solved, visited: number): MultipleProof {
  const isFound = worked !== null;
  return {
    multiple: isFound ? {of: every, plus: rest} : null,
    isFound,
    holds: isFound ? {from, every: 1, rest: 0} : null,
    firstFailure: null,
    rows: worked ? lawsOf(worked) : [],
    visited,
  };
}

function report(solved: Solved, base: Base, size: number, visited: number): MultipleProof {
  const {worked, every, rest, from} = solved;
  const first = every * from + rest;
  const holds = worked ? {from: first, every, rest} : null;
  const isLawForAll = worked !== null && every === 1;
  return {
    multiple: {of: base.of, plus: base.plus},
    isFound: false,
    holds,
    firstFailure: isLawForAll ? null : firstFailure(solved, base, size),
    rows: worked ? lawsOf(worked) : [],
    visited,
  };
}

function firstFailure({ordered: rows, readings}: Solved, {of, plus}: Base, size: number) {
  for (let n = 1; n <= mostTried; n++) {
    const stitches = of * n + plus;
    const worked = workPattern(rows, constant(stitches), {law: plainLaw, size, readings, isPlanned: false});
    const problem = worked.problems[0];
    if (problem) return {n, stitches, problem};
  }
  return null;
}

function lawsOf({rows}: WorkedPattern): RowLaw[] {
  return rows.map(({label, in: before, out}) => ({label, in: before, out}));
}
