import type {EdgeWork} from './at-edges.ts';
import type {Extent, RepeatStep, Step} from './row-syntax.ts';

/** A mark set by `*`, `**`, `(a)`: where it stands among the steps, and where a second one closed the passage. */
export interface Mark {
  readonly name: string;
  readonly at: number;
}

/** The steps of one row, or of one bracket, while they are read. */
export class StepList {
  readonly steps: Step[] = [];
  readonly marks: Mark[] = [];
  /** What is worked at the ends of the row, put into its place when the row is read. */
  readonly edges: EdgeWork[] = [];
  /** Index of the first step since the last `;` or mark: what `, three times` behind a comma repeats. */
  clauseStart = 0;
  /** The same of the clause before. */
  previousClauseStart = 0;
  /** Index of the first step behind `then`. */
  thenStart = 0;
  /** Index of the step behind `and`, or -1. */
  andAt = -1;
  /** Index of the first step behind `continue`, or null. */
  continuedFrom: number | null = null;
  /** The yarn was drawn through what is left. */
  isClosed = false;

  push(step: Step): void {
    this.steps.push(step);
  }

  startClause(): void {
    if (this.clauseStart !== this.steps.length) this.previousClauseStart = this.clauseStart;
    this.clauseStart = this.steps.length;
  }

  /** What a number of times was said of is done with: the next number is of what follows. */
  endClause(): void {
    this.clauseStart = this.steps.length;
    this.previousClauseStart = this.steps.length;
  }

  /** The clause that a number of times belongs to; behind `k1, p1;` the one before, but only once. */
  takeClause(): number {
    if (this.clauseStart < this.steps.length) return this.clauseStart;
    const before = this.previousClauseStart;
    this.previousClauseStart = this.steps.length;
    return before;
  }

  /** Makes one repeat of the steps from index `from`; false when there are none. */
  wrap(from: number, style: RepeatStep['style'], extent: Extent): boolean {
    const inner = this.steps.splice(from);
    const repeat = repeatOf(inner, style, extent);
    if (!repeat) return false;
    this.put(repeat, from);
    return true;
  }

  /** Makes a repeat of the steps from index `from`, or of the last of them: authors mean the one or the other. */
  wrapEither(from: number, extent: Extent): boolean {
    const last = this.steps.at(-1);
    if (!last || from > this.steps.length - 2) return this.wrap(from, 'bracket', extent);
    const inner = this.steps.splice(from);
    const whole = repeatOf(inner, 'bracket', extent);
    const single = repeatOf([last], 'bracket', extent);
    if (!whole || !single) return false;
    const ways = [[whole], [...inner.slice(0, -1), single]] as const;
    this.put({kind: 'either', doubt: 'passage times', ways, span: whole.span}, from);
    return true;
  }

  private put(step: Step, from: number): void {
    this.steps.push(step);
    this.clauseStart = Math.min(this.clauseStart, this.steps.length - 1);
    this.thenStart = Math.min(this.thenStart, this.steps.length - 1);
    while ((this.marks.at(-1)?.at ?? -1) >= from) this.marks.pop();
  }
}

/** A single stitch in a bracket is that stitch so often; null when there is nothing to repeat. */
function repeatOf(inner: readonly Step[], style: RepeatStep['style'], extent: Extent): Step | null {
  const first = inner[0];
  const last = inner.at(-1);
  if (!first || !last) return null;
  const span = {start: first.span.start, end: last.span.end};
  const only = inner.length === 1 ? first : null;
  if (only?.kind === 'work' && isOnce(only.extent) && style === 'bracket') return {...only, extent, span};
  return {kind: 'repeat', style, steps: inner, extent, span};
}

function isOnce(extent: Extent): boolean {
  return extent.kind === 'times' && extent.count.values.length === 1 && extent.count.values[0] === 1;
}
